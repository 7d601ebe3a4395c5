import type { LoadPath } from '../strength/along-load.ts';
import type { PreparedHang } from '../strength/prepare-hang.ts';
import { standardGravity } from '../units/gravity.ts';

/** On a rounded hold under a growing patch the gaps have no known shape: look at this many stretches. */
const roundedStretches = 3;

/** No other cut this near, as a share, to where the pull leads off: the limits may jump there. */
const leastApart = 1e-9;

/**
 * Cuts a stretch of net mass so that on every piece both gaps are smooth and bend one way only.
 * Cuts: where the patch meets its limit, where the law's friction limit changes its bend (see
 * bendPressure), and where the pull begins to lead off the hold.
 * @param prepared the hang
 * @param path horizontal force against net mass
 * @param from lower end, kg
 * @param to upper end, kg, on the same side of the hanging mass
 * @returns the cuts in order with from and to at the ends, and the mass where the pull leads off
 * (NaN where it does not within the stretch)
 * Valid for: the bend is exact on a flat hold or for a fixed patch; a growing patch on a rounded
 * hold is cut into shorter pieces instead.
 * Source: derived.
 * Example: constant law, fixed patch, plumb rope on a slope: just from and to.
 */
export function knots(
	prepared: PreparedHang,
	path: LoadPath,
	from: number,
	to: number
): { at: number[]; leadsOffAt: number } {
	const { areaCoefficient, areaExponent, areaLimit, formula, law } = prepared;
	const at = [from];
	const leadsOffAt = massAtPadForce(prepared, path, 0);
	const leadsOff = leadsOffAt > from && leadsOffAt < to;
	if (leadsOff) at.push(leadsOffAt);
	const add = (mass: number) => {
		const apart = !(Math.abs(mass - leadsOffAt) < leastApart * mass);
		if (mass > from && mass < to && apart) at.push(mass);
	};
	add(massAtPadForce(prepared, path, formula.bendPressure(law, 1) * areaLimit));
	if (areaExponent > 0) {
		add(massAtPadForce(prepared, path, Math.pow(areaLimit / areaCoefficient, 1 / areaExponent)));
		const share = 1 - areaExponent;
		const bend = formula.bendPressure(law, share) * areaCoefficient;
		add(massAtPadForce(prepared, path, Math.pow(bend, 1 / share)));
		if (prepared.slopePerArea > 0)
			for (let i = 1; i < roundedStretches; i++) add(from + ((to - from) * i) / roundedStretches);
	}
	at.sort((a, b) => a - b);
	at.push(to);
	return { at, leadsOffAt: leadsOff ? leadsOffAt : NaN };
}

/** The net mass at which each pad is pressed with a force n, N: its patch and slope are then known. */
function massAtPadForce(prepared: PreparedHang, path: LoadPath, padForce: number): number {
	const { hang, slopePerArea, areaCoefficient, areaExponent, areaLimit } = prepared;
	const area = Math.min(areaLimit, areaCoefficient * Math.pow(padForce, areaExponent));
	const slope = hang.slope + slopePerArea * area;
	const cosine = Math.cos(slope);
	const sine = Math.sin(slope);
	const pressing = padForce * hang.grip.fingers * hang.hands;
	return (pressing + path.start * sine) / (standardGravity * cosine - path.rate * sine);
}
