const rootTwoPi = Math.sqrt(2 * Math.PI);
const seriesReach = 2.5;

/**
 * Height of the standard normal curve.
 *
 * φ(z) = exp(−z²/2)/√(2π), with z² split at a multiple of 1/16 so that far tails keep all digits.
 *
 * @param z standardised value, no unit, any finite number
 * @returns φ(z) ≥ 0, no unit
 * Source: abramowitzStegun1964, 26.2.1
 * Example: normalDensity(0) → 0.3989422804014327
 */
export function normalDensity(z: number): number {
	const near = Math.round(z * 16) / 16;
	return (Math.exp((-near * near) / 2) * Math.exp((-(z - near) * (z + near)) / 2)) / rootTwoPi;
}

/**
 * Area under the standard normal curve between 0 and z.
 *
 * Φ(z) − ½ = φ(z) Σ z^(2k+1)/(2k+1)!!, good near 0, where Φ − ½ itself would lose its digits.
 *
 * @param z standardised value, no unit, |z| ≤ 3 for full accuracy
 * @returns Φ(z) − ½, with the sign of z
 * Source: abramowitzStegun1964, 26.2.11
 * Example: normalCentralArea(1) → 0.3413447460685429
 */
export function normalCentralArea(z: number): number {
	let term = z;
	let sum = z;
	for (let k = 3; Math.abs(term) > 1e-18 * Math.abs(sum); k += 2) {
		term *= (z * z) / k;
		sum += term;
	}
	return normalDensity(z) * sum;
}

/**
 * Mills' ratio: the upper tail of the standard normal curve divided by its height.
 *
 * R(z) = (1 − Φ(z))/φ(z); below 2.5 from the series, above by Laplace's continued fraction
 * 1/(z + 1/(z + 2/(z + 3/(z + …)))).
 *
 * @param z standardised value, no unit, z ≥ −37
 * @returns R(z) > 0, no unit
 * Source: abramowitzStegun1964, 26.2.14
 * Example: millsRatio(0) → 1.2533141373155001
 */
export function millsRatio(z: number): number {
	if (z < -seriesReach) return (1 - normalDensity(z) * millsRatio(-z)) / normalDensity(z);
	if (z < seriesReach) return (0.5 - normalCentralArea(z)) / normalDensity(z);
	const depth = z < 4 ? 160 : z < 10 ? 60 : 16;
	let tail = z;
	for (let k = depth; k >= 1; k -= 1) tail = z + k / tail;
	return 1 / tail;
}

/**
 * Chance that a standard normal value lies below z.
 *
 * Φ(z), to a relative error of 1e-13 wherever it is not below the smallest double.
 *
 * @param z standardised value, no unit
 * @returns Φ(z), 0 to 1
 * Source: abramowitzStegun1964, 26.2.2
 * Example: normalCdf(1.959963984540054) → 0.975
 */
export function normalCdf(z: number): number {
	if (z < -seriesReach) return normalDensity(z) * millsRatio(-z);
	if (z <= seriesReach) return 0.5 + normalCentralArea(z);
	return 1 - normalDensity(z) * millsRatio(z);
}

/**
 * Natural logarithm of the chance that a standard normal value lies below z.
 *
 * ln Φ(z) = −z²/2 − ln √(2π) + ln R(−z) in the lower tail, ln(1 − φ(z) R(z)) above 0; never ln of a rounded Φ.
 *
 * @param z standardised value, no unit, any size
 * @returns ln Φ(z) ≤ 0, relative error below 1e-13
 * Source: abramowitzStegun1964, 26.2.2 and 26.2.14
 * Example: normalLogCdf(-40) → -804.6084420137538
 */
export function normalLogCdf(z: number): number {
	if (z > 0) return Math.log1p(-normalDensity(z) * millsRatio(z));
	if (z > -seriesReach) return Math.log(0.5 + normalCentralArea(z));
	return (-z * z) / 2 - Math.log(rootTwoPi) + Math.log(millsRatio(-z));
}
