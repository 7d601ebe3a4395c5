import { loadAtNetMass } from '../mechanics/load-at-net-mass.ts';
import { additionOf, hangsOf } from './hangs-of.ts';
import { scaledLaw } from './law-of.ts';
import type { Plan } from './plan.ts';
import { roundingClearance } from './thresholds.ts';
import type { FoundSetup } from './types.ts';
import { driftFactor, emptyWeighing, weighAsIs } from './weigh.ts';

/**
 * Writes a candidate out as hangs and loads that evaluateHang takes as they are.
 * @param plan the law with its addition
 * @param values all numbers of the candidate
 * @returns the set-up; under a drift each go has a law of its own
 * Source: derived.
 * Example: evaluateHang(setup.trials[0].hang, setup.trials[0].load).slipMargin is that go's.
 */
export function foundSetup(plan: Plan, values: readonly number[]): FoundSetup {
	const { request, trials, areasAt, forcesAt, slopeAt } = plan;
	const hangs = hangsOf(plan, values);
	const weighing = weighAsIs(plan, values, emptyWeighing());
	const { ropeAngle, push, drift } = additionOf(plan, values);
	return {
		bodyMass: request.bodyMass,
		slope: values[slopeAt]!,
		law: hangs[0]!.friction,
		ropeAngle,
		push,
		drift,
		grips: request.grips.map(({ id, fingers }, index) => ({
			id,
			fingers,
			padArea: values[areasAt + index]!,
			referenceForce: values[forcesAt + index]!,
			hang: hangs[index]!
		})),
		trials: trials.map(({ observation, grip, netMass, later }, index) => {
			const hang = hangs[grip]!;
			return {
				order: observation.order,
				grip: observation.grip,
				netMass,
				hang:
					drift === 0
						? hang
						: { ...hang, friction: scaledLaw(hang.friction, driftFactor(drift, later)) },
				load: loadAtNetMass(netMass, hang),
				slipMargin: weighing.slip[index]!,
				strengthMargin: weighing.strength[index]!,
				met: weighing.clearance[index]! > roundingClearance
			};
		}),
		clearance: weighing.least
	};
}
