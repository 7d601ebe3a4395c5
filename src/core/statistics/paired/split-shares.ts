/**
 * Lists how often each split of some pairs comes by chance when both sides are alike.
 * share of k = C(n, k)/2ⁿ
 * @param pairs n, pairs that differ, whole number, 0 to 1000
 * @returns n + 1 shares, for 0 to n pairs on the first side; they sum to 1
 * Valid for: pairs that are independent of one another.
 * @throws RangeError for a number outside its range
 * Source: conover1999, from memory: the binomial of the sign test.
 * Example: binomialHalf(2) is [0.25, 0.5, 0.25].
 */
export function binomialHalf(pairs: number): number[] {
	if (!(Number.isInteger(pairs) && pairs >= 0 && pairs <= 1000)) {
		throw new RangeError(
			`pairs must be a whole number at least 0 and at most 1000, but is ${pairs}`
		);
	}
	// Built up pair by pair, so that no factorial overflows.
	let shares = [1];
	for (let n = 1; n <= pairs; n++) {
		shares = Array.from({ length: n + 1 }, (_, k) => ((shares[k - 1] ?? 0) + (shares[k] ?? 0)) / 2);
	}
	return shares;
}
