import type { Hang } from '../types.ts';
import { lawOf } from './law-of.ts';
import type { Plan } from './plan.ts';

/**
 * Gives what the addition of a candidate is worth; the two that a plan does not have are 0.
 * @param plan the law with its addition
 * @param values the candidate's numbers
 * @returns rope angle in rad, push in N, drift as a change of the ratio's logarithm a go
 * Source: derived.
 * Example: a plan without addition gives zeros.
 */
export function additionOf(plan: Plan, values: readonly number[]) {
	const value = plan.additionAt < 0 ? 0 : values[plan.additionAt]!;
	return {
		ropeAngle: plan.addition === 'rope' ? value : 0,
		push: plan.addition === 'push' ? value : 0,
		drift: plan.addition === 'drift' ? value : 0
	};
}

/**
 * Turns a candidate's numbers into one hang for each grip, under the law of the first go.
 * @param plan the law with its addition
 * @param values the candidate's numbers, in the order of plan.parameters
 * @returns hangs in the order of the request's grips, flat hold, fixed patches
 * Valid for: checked requests.
 * Source: derived.
 * Example: hangs of the practice report have 4 and 3 fingers.
 */
export function hangsOf(plan: Plan, values: readonly number[]): Hang[] {
	const { bodyMass, hands, pad, strengthTest, grips } = plan.request;
	const { ropeAngle, push } = additionOf(plan, values);
	const friction = lawOf(plan.law, values.slice(0, plan.lawLength));
	return grips.map(({ fingers }, index) => ({
		hangingMass: bodyMass,
		ropeAngle,
		push,
		hands,
		slope: values[plan.slopeAt]!,
		friction,
		grip: {
			fingers,
			...pad,
			contact: { kind: 'fixed', padArea: values[plan.areasAt + index]! }
		},
		strength: { referenceForce: values[plan.forcesAt + index]!, ...strengthTest }
	}));
}
