import { normalCentralArea, normalDensity, normalLogCdf } from './normal.ts';

/**
 * The standardised value below which a given share of the normal curve lies.
 *
 * Solves Φ(z) = p by Newton's method: on Φ(z) − ½ for p near a half, on ln Φ(z) = ln p in the tails.
 *
 * @param p share, 0 ≤ p ≤ 1
 * @returns z with Φ(z) = p, relative error below 1e-12; −Infinity at 0, Infinity at 1
 * @throws RangeError when p is not within 0 to 1
 * Source: abramowitzStegun1964, 26.2.2 inverted
 * Example: normalQuantile(0.975) → 1.959963984540054
 */
export function normalQuantile(p: number): number {
	if (!(p >= 0 && p <= 1)) throw new RangeError(`p: ${p} is not within 0 to 1`);
	if (p === 0) return -Infinity;
	if (p === 1) return Infinity;
	if (Math.abs(p - 0.5) < 0.4) return centralQuantile(p - 0.5);
	return p < 0.5 ? tailQuantile(p) : -tailQuantile(1 - p);
}

function centralQuantile(area: number): number {
	let z = area / normalDensity(0);
	for (let round = 0; round < 50; round += 1) {
		const step = (normalCentralArea(z) - area) / normalDensity(z);
		z -= step;
		if (Math.abs(step) <= 1e-15 * Math.abs(z)) break;
	}
	return z;
}

function tailQuantile(p: number): number {
	const target = Math.log(p);
	let z = -Math.sqrt(-2 * target);
	for (let round = 0; round < 50; round += 1) {
		const logArea = normalLogCdf(z);
		const logSlope = (-z * z) / 2 - 0.9189385332046728 - logArea;
		const step = (logArea - target) / Math.exp(logSlope);
		z -= step;
		if (Math.abs(step) <= 1e-15 * Math.abs(z)) break;
	}
	return z;
}
