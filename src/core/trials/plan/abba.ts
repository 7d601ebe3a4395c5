import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import type { Row } from './blocks.ts';
import type { Condition } from './types.ts';

/**
 * Orders two conditions as ABBA, BAAB, ABBA, …: within each four a steady drift cancels.
 *
 * The seed says which of the two comes first.
 *
 * @param conditions exactly two
 * @param quads how many fours, whole, 1 or more
 * @param seed whole number
 * @returns 4 × quads rows
 * @throws RangeError when there are not exactly two conditions
 * Valid for: comparing two conditions; the person can guess what comes next
 * Source: derived
 * Example: one quad of A and B → A B B A, or B A A B
 */
export function abba(conditions: readonly Condition[], quads: number, seed: number): Row[] {
	if (conditions.length !== 2) {
		throw new RangeError(
			`conditions are ${conditions.length}; ABBA compares exactly 2 (a load, side or grip against another)`
		);
	}
	const first = uniformInt(xoroshiro128plus(seed), 0, 1);
	return Array.from({ length: quads }, (_, quad): Row[] => {
		const a = conditions[(first + quad) % 2]!;
		const b = conditions[(first + quad + 1) % 2]!;
		return [a, b, b, a].map((condition) => ({ kind: 'test', block: quad + 1, ...condition }));
	}).flat();
}
