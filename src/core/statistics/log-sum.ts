/**
 * Logarithm of a sum of numbers given by their logarithms.
 *
 * ln Σ exp(l_k) = m + ln Σ exp(l_k − m), m the largest; −Infinity for none.
 *
 * @param logs natural logarithms, −Infinity allowed
 * @returns natural logarithm of the sum
 * Source: blanchard2021
 * Example: logSum([Math.log(1), Math.log(3)]) → 1.3862943611198906
 */
export function logSum(logs: ArrayLike<number>): number {
	let most = -Infinity;
	for (let k = 0; k < logs.length; k += 1) most = Math.max(most, logs[k]!);
	if (most === -Infinity) return -Infinity;
	let sum = 0;
	for (let k = 0; k < logs.length; k += 1) sum += Math.exp(logs[k]! - most);
	return most + Math.log(sum);
}

/**
 * Shares of a whole from the logarithms of its parts.
 *
 * w_k = exp(l_k)/Σ exp(l): with evidences as parts and equal starting weights, how much each model is believed.
 *
 * @param logs natural logarithms of the parts
 * @returns shares that sum to 1, in the order given
 * Source: kassRaftery1995, equation 3 with equal prior weights
 * Example: shares([0, Math.log(3)]) → [0.25, 0.75]
 */
export function shares(logs: readonly number[]): number[] {
	const total = logSum(logs);
	return logs.map((l) => Math.exp(l - total));
}
