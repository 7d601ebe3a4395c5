import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import type { Row } from './blocks.ts';
import { shuffled } from './shuffle.ts';
import type { RopeSide } from './types.ts';

/**
 * Lays out the paper up-and-down sheet: a first load, and lines whose load the one before decides.
 *
 * @param start grip, first net load in kg, and the rope sides, which are shuffled in turns
 * @param trials how many lines, whole, 1 or more
 * @param seed whole number
 * @returns rows; load is null from the second on
 * Source: dixonMood1948
 * Example: six trials from 40 kg → six rows, 40 kg in the first
 */
export function upAndDownRows(
	start: { grip: string; load: number; ropeSides: readonly RopeSide[] },
	trials: number,
	seed: number
): Row[] {
	const random = xoroshiro128plus(seed);
	const sides: RopeSide[] = [];
	while (sides.length < trials) sides.push(...shuffled(start.ropeSides, random));
	return Array.from({ length: trials }, (_, i): Row => ({
		kind: 'test',
		block: null,
		grip: start.grip,
		load: i === 0 ? start.load : null,
		ropeSide: sides[i]!
	}));
}

/**
 * Gives the next load of an up-and-down series: held → one step up, opened → one step down.
 *
 * A stopped hang counts as opened. A slip, or a failure whose cause was not seen, says nothing
 * about the fingers: the load is repeated. Never above the cap.
 *
 * @param last net load, kg, above 0, and outcome of the trial before
 * @param step share of the load, above 0 and below 1, for example 0.06
 * @param cap heaviest load allowed now, kg, from `loadCap`
 * @returns next net load, kg
 * @throws RangeError when the step is not between 0 and 1
 * Source: dixonMood1948
 * Example: held at 50 kg, step 0.06, cap 60 → 53 kg
 */
export function nextUpAndDown(
	last: { load: number; outcome: 'held' | 'slipped' | 'opened' | 'stopped' | 'unknown' },
	step: number,
	cap: number
): number {
	if (!(step > 0 && step < 1)) throw new RangeError(`step is ${step}; it must be from 0 to 1`);
	const next =
		last.outcome === 'held'
			? last.load * (1 + step)
			: last.outcome === 'opened' || last.outcome === 'stopped'
				? last.load / (1 + step)
				: last.load;
	return Math.min(next, cap);
}
