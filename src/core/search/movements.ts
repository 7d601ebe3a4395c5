import type { Plan } from './plan.ts';
import { roundingClearance } from './thresholds.ts';
import type { Movement, Range } from './types.ts';
import { emptyWeighing, weighAsIs } from './weigh.ts';

/** Steps from a value to the end of its range: gaps narrower than a step may be missed. */
const steps = 64;

/**
 * Says how far each number of a fitting set-up may move while all others stay, the slope too.
 * @param plan the law with its addition
 * @param values all numbers of the fitting set-up
 * @param found smallest and largest value of each number among all fitting set-ups
 * @returns for each parameter its value, and the stretch around it, within its range, in which every
 * go is still as seen; ends to a 10⁻⁶ of the range
 * Valid for: one number at a time. Together they may move less or more. It is no probability.
 * Source: derived.
 * Example: a number that is kept fixed moves from itself to itself.
 */
export function movementsOf(
	plan: Plan,
	values: readonly number[],
	found: readonly Range[]
): Movement[] {
	return plan.parameters.map((parameter, index) => {
		const value = values[index]!;
		return {
			...parameter,
			value,
			moves: {
				from: reach(plan, values, index, parameter.from),
				to: reach(plan, values, index, parameter.to)
			},
			found: { ...found[index]! }
		};
	});
}

/** The farthest value towards an end up to which the set-up keeps fitting. */
function reach(plan: Plan, values: readonly number[], index: number, end: number): number {
	const moved = [...values];
	const weighing = emptyWeighing();
	const start = values[index]!;
	const fits = (value: number) => {
		moved[index] = value;
		return weighAsIs(plan, moved, weighing).least > roundingClearance;
	};
	let inside = start;
	let outside = start;
	for (let step = 1; step <= steps && outside === inside; step++) {
		outside = step === steps ? end : start + ((end - start) * step) / steps;
		if (fits(outside)) inside = outside;
	}
	for (let halving = 0; halving < 14 && outside !== inside; halving++) {
		const middle = (inside + outside) / 2;
		if (fits(middle)) inside = middle;
		else outside = middle;
	}
	return inside;
}
