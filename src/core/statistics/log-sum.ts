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
export function logSum(logs: readonly number[]): number {
	const most = logs.reduce((a, b) => Math.max(a, b), -Infinity);
	if (most === -Infinity) return -Infinity;
	return most + Math.log(logs.reduce((sum, l) => sum + Math.exp(l - most), 0));
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
