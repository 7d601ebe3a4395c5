import type { PreparedHang } from './prepare-hang.ts';

/**
 * Finds the patch of one finger, together with the slope it lies on.
 * a = min(areaLimit, areaCoefficient · n^areaExponent), n = (V cos σ − H sin σ)/fingers,
 * σ = slope + slopePerArea · a
 * @param prepared the hang
 * @param vertical load on this hand, N
 * @param horizontal load on this hand, N, positive away from the wall
 * @returns area per finger, m²; 0 for a growing patch where the pull leads off the hold
 * Valid for: fingertip pads. The solution is unique: a^(1/exponent) bends up, the normal force
 * over the patch bends down, and at no patch the first is the smaller.
 * Source: derived.
 * Example: a fixed patch of 250 mm² stays 250 mm² at every load.
 */
export function patchArea(prepared: PreparedHang, vertical: number, horizontal: number): number {
	const { areaLimit, areaExponent, slopePerArea } = prepared;
	if (areaExponent === 0) return areaLimit;
	const tipNormal = vertical * prepared.tipCosine - horizontal * prepared.tipSine;
	const onTip = Math.min(areaLimit, grownArea(prepared, tipNormal));
	return slopePerArea === 0 || onTip === 0
		? onTip
		: settledArea(prepared, vertical, horizontal, onTip);
}

/** Area that a normal force on the hand would make, not counting the limit, m². */
function grownArea(prepared: PreparedHang, normal: number): number {
	if (!(normal > 0)) return 0;
	return (
		prepared.areaCoefficient * Math.pow(normal / prepared.hang.grip.fingers, prepared.areaExponent)
	);
}

/** Newton's method on a − grownArea(a) from a first guess, kept inside a bracket. */
function settledArea(
	prepared: PreparedHang,
	vertical: number,
	horizontal: number,
	guess: number
): number {
	const { slopePerArea, areaExponent, areaLimit } = prepared;
	let low = 0;
	let high = areaLimit;
	let area = guess;
	for (let step = 0; step < 100; step++) {
		const slope = prepared.hang.slope + slopePerArea * area;
		const cosine = Math.cos(slope);
		const sine = Math.sin(slope);
		const normal = vertical * cosine - horizontal * sine;
		const grown = grownArea(prepared, normal);
		if (area === areaLimit && grown >= areaLimit) return areaLimit;
		if (area > grown) high = area;
		else low = area;
		const tangential = vertical * sine + horizontal * cosine;
		const rate = 1 + (areaExponent * grown * slopePerArea * tangential) / normal;
		let next = area - (area - grown) / rate;
		if (next >= areaLimit && high === areaLimit && area < areaLimit) next = areaLimit;
		else if (!(normal > 0 && next >= low && next <= high)) next = (low + high) / 2;
		// The error left after a step is about the square of the step.
		if (Math.abs(next - area) <= 1e-8 * area) return next;
		area = next;
	}
	return area;
}
