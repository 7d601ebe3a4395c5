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
	const { areaLimit, slopePerArea } = prepared;
	if (prepared.areaExponent === 0) return Math.min(areaLimit, prepared.areaCoefficient);
	const atTip = grownArea(prepared, pressing(prepared, vertical, horizontal, 0));
	if (slopePerArea === 0 || atTip === 0) return Math.min(areaLimit, atTip);
	const atLimit = grownArea(prepared, pressing(prepared, vertical, horizontal, areaLimit));
	if (atLimit >= areaLimit) return areaLimit;
	return settledArea(prepared, vertical, horizontal, Math.min(areaLimit, atTip));
}

/** Normal force on the hand when the patch has this area, N. */
function pressing(prepared: PreparedHang, vertical: number, horizontal: number, area: number) {
	const slope = prepared.hang.slope + prepared.slopePerArea * area;
	return vertical * Math.cos(slope) - horizontal * Math.sin(slope);
}

/** Area a normal force on the hand would make, not counting the limit, m². */
function grownArea(prepared: PreparedHang, normal: number): number {
	if (!(normal > 0)) return 0;
	return (
		prepared.areaCoefficient * Math.pow(normal / prepared.hang.grip.fingers, prepared.areaExponent)
	);
}

/** Newton's method on a − grownArea(pressing(a)), kept inside a bracket. */
function settledArea(
	prepared: PreparedHang,
	vertical: number,
	horizontal: number,
	start: number
): number {
	const { slopePerArea, areaExponent } = prepared;
	let low = 0;
	let high = prepared.areaLimit;
	let area = start;
	for (let step = 0; step < 100; step++) {
		const slope = prepared.hang.slope + slopePerArea * area;
		const normal = pressing(prepared, vertical, horizontal, area);
		const grown = grownArea(prepared, normal);
		if (area > grown) high = area;
		else low = area;
		const tangential = vertical * Math.sin(slope) + horizontal * Math.cos(slope);
		const rate = 1 + (areaExponent * grown * slopePerArea * tangential) / normal;
		let next = area - (area - grown) / rate;
		if (!(normal > 0 && next > low && next < high)) next = (low + high) / 2;
		if (Math.abs(next - area) <= 2e-16 * area) return next;
		area = next;
	}
	return area;
}
