import { requireAllowed } from '../units/allowed-range.ts';

const slopeRange = { above: -Math.PI / 2, below: Math.PI / 2, unit: 'rad' };

/**
 * Finds the friction ratio needed when an assist rope leans.
 * demand = tan(σ + φ), tan φ = s/(1 − s) · tan ε
 * @param slope σ of the hold below the horizontal, rad, between −π/2 and π/2
 * @param assistShare s, the share of the weight the rope takes off, 0 up to below 1
 * @param lean ε of the rope from straight up, rad, between −π/2 and π/2, positive away from the wall
 * @returns ratio of friction to normal force needed; Infinity where the pull leads off the hold
 * Sign: a rope that leads away from the wall asks for more, toward the wall for less.
 * Valid for: a still hang that touches nothing but hold and rope.
 * @throws RangeError for a field outside its range
 * Source: derived.
 * Example: slope 33°, half assist, lean 5°: 0.7813.
 */
export function ropeLeanDemand(slope: number, assistShare: number, lean: number): number {
	requireAllowed('slope', slope, slopeRange);
	requireAllowed('assistShare', assistShare, { min: 0, below: 1 });
	requireAllowed('lean', lean, slopeRange);
	const tilt = Math.atan((assistShare / (1 - assistShare)) * Math.tan(lean));
	return slope + tilt < Math.PI / 2 ? Math.tan(slope + tilt) : Infinity;
}

/**
 * Finds by how much the rope must lean for a hang with a constant ratio to start slipping.
 * tan ε = m/(M − m) · tan(atan μ − σ)
 * @param o.slope σ, rad, between −π/2 and π/2
 * @param o.ratio friction ratio μ the hold gives, above 0
 * @param o.hangingMass M, body and added mass, kg, above 0
 * @param o.netMass m that the hands carry, kg, above 0 and below hangingMass
 * @returns lean from straight up, rad; positive away from the wall. Negative: it slips even plumb,
 * and the rope must lead toward the wall by this much to hold
 * Valid for: one steady lean; flat hold.
 * @throws RangeError for a field outside its range
 * Source: derived.
 * Example: slope 31°, ratio 0.64, 55 of 70 kg: 5.9° (0.10328 rad).
 */
export function leanToSlip(o: {
	slope: number;
	ratio: number;
	hangingMass: number;
	netMass: number;
}): number {
	requireAllowed('slope', o.slope, slopeRange);
	requireAllowed('ratio', o.ratio, { above: 0 });
	requireAllowed('hangingMass', o.hangingMass, { above: 0, unit: 'kg' });
	requireAllowed('netMass', o.netMass, { above: 0, below: o.hangingMass, unit: 'kg' });
	const spare = Math.atan(o.ratio) - o.slope;
	// More than a quarter turn to spare: no lean of a rope that lifts can use it up.
	if (spare >= Math.PI / 2) return Math.PI / 2;
	return Math.atan((o.netMass / (o.hangingMass - o.netMass)) * Math.tan(spare));
}
