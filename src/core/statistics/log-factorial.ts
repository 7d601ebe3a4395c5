const table = [0, 0];

/**
 * Natural logarithm of a factorial.
 *
 * ln n! = Σ ln k, kept for small n; Stirling's series above 256.
 *
 * @param n whole number, 0 or more
 * @returns ln n!
 * Source: abramowitzStegun1964, 6.1.41
 * Example: logFactorial(5) → 4.787491742782046
 */
export function logFactorial(n: number): number {
	if (n > 256) {
		const x = n + 1;
		return (
			(x - 0.5) * Math.log(x) -
			x +
			0.5 * Math.log(2 * Math.PI) +
			1 / (12 * x) -
			1 / (360 * x ** 3) +
			1 / (1260 * x ** 5)
		);
	}
	for (let k = table.length; k <= n; k += 1) table[k] = table[k - 1]! + Math.log(k);
	return table[n]!;
}

/**
 * Natural logarithm of the number of ways to choose k of n.
 *
 * ln C(n, k) = ln n! − ln k! − ln (n − k)!
 *
 * @param n whole number, 0 or more
 * @param k whole number, 0 to n
 * @returns ln C(n, k)
 * Source: abramowitzStegun1964, 3.1.2
 * Example: logChoose(4, 2) → 1.791759469228055
 */
export function logChoose(n: number, k: number): number {
	return logFactorial(n) - logFactorial(k) - logFactorial(n - k);
}
