/**
 * How uncertain a set of chances is.
 *
 * H = −Σ p ln p, in nats; a chance of 0 adds nothing.
 *
 * @param chances sum to 1, each 0 to 1
 * @returns H ≥ 0, nats
 * Source: shannon1948, section 6
 * Example: entropy([0.5, 0.5]) → 0.6931471805599453
 */
export function entropy(chances: readonly number[]): number {
	return chances.reduce((sum, p) => (p > 0 ? sum - p * Math.log(p) : sum), 0);
}

/**
 * How uncertain a yes-or-no outcome is.
 *
 * h(p) = −p ln p − (1 − p) ln(1 − p), in nats.
 *
 * @param p chance of yes, 0 to 1
 * @returns h ≥ 0, at most ln 2
 * Source: shannon1948, section 6
 * Example: binaryEntropy(0.5) → 0.6931471805599453
 */
export function binaryEntropy(p: number): number {
	if (p <= 0 || p >= 1) return 0;
	return -p * Math.log(p) - (1 - p) * Math.log1p(-p);
}

/**
 * What a yes-or-no trial is expected to teach about the unknowns it depends on.
 *
 * I = h(Σ w p) − Σ w h(p): uncertainty of the outcome less what would be left if the unknowns were known.
 *
 * @param weights belief in each state of the unknowns, sums to 1
 * @param chances chance of yes in each state, same order
 * @returns I ≥ 0, nats (rounding kept from going below 0)
 * Source: lindley1956, definition 2
 * Example: expectedInformation([0.5, 0.5], [0, 1]) → 0.6931471805599453
 */
export function expectedInformation(
	weights: ArrayLike<number>,
	chances: ArrayLike<number>
): number {
	let mean = 0;
	let left = 0;
	for (let k = 0; k < weights.length; k += 1) {
		mean += weights[k]! * chances[k]!;
		left += weights[k]! * binaryEntropy(chances[k]!);
	}
	return Math.max(0, binaryEntropy(mean) - left);
}
