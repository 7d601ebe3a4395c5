import { binomialHalf } from './split-shares.ts';

/** How often chance alone gives a split at least as lopsided, and the same with half the weight on the split itself. */
export type SplitChance = { exact: number; middle: number };

/**
 * Finds how often pairs would split at least this lopsidedly if both sides were alike: the exact
 * sign test, which for paired yes-or-no outcomes is McNemar's exact test.
 * exact = min(1, 2 Σ_{k ≤ fewer} C(n, k)/2ⁿ), n = more + fewer; middle = exact − C(n, fewer)/2ⁿ,
 * and 1 − C(n, fewer)/2ⁿ⁺¹ where both counts are equal
 * @param more pairs that came out one way, whole number, 0 to 500
 * @param fewer pairs that came out the other way, whole number, 0 to 500; the two may be swapped
 * @returns both chances, 0 to 1; exact errs on the careful side, middle less so
 * Valid for: pairs that are independent of one another; pairs that came out alike are left aside.
 * @throws RangeError for a count outside its range
 * Source: fagerland2013 (supplement, equations 1 and 2).
 * Example: 7 against 1: exact 0.0703125, middle 0.0390625.
 */
export function splitChance(more: number, fewer: number): SplitChance {
	for (const [field, value] of Object.entries({ more, fewer })) {
		if (!(Number.isInteger(value) && value >= 0 && value <= 500)) {
			throw new RangeError(
				`${field} must be a whole number at least 0 and at most 500, but is ${value}`
			);
		}
	}
	const shares = binomialHalf(more + fewer);
	const least = Math.min(more, fewer);
	const tail = shares.slice(0, least + 1).reduce((sum, share) => sum + share, 0);
	const here = shares[least]!;
	if (more === fewer) return { exact: 1, middle: 1 - here / 2 };
	const exact = Math.min(1, 2 * tail);
	return { exact, middle: exact - here };
}

/**
 * Finds how many pairs must differ, all the same way, before chance alone does so more rarely
 * than asked.
 * smallest n with 2/2ⁿ < chance
 * @param chance how rare it has to be, above 0 and at most 1
 * @returns number of pairs that differ
 * @throws RangeError for a chance outside its range
 * Source: derived.
 * Example: one in twenty: 6 pairs.
 */
export function fewestOneSided(chance: number): number {
	if (!(chance > 0 && chance <= 1)) {
		throw new RangeError(`chance must be a number above 0 and at most 1, but is ${chance}`);
	}
	let pairs = 1;
	while (2 ** (1 - pairs) >= chance) pairs += 1;
	return pairs;
}
