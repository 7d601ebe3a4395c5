import { requireAllowed } from '../units/allowed-range.ts';

/**
 * Finds the friction ratio needed when the hands are pulled outward and to one side as well.
 * N = V cos σ − H sin σ, Q = V sin σ + H cos σ, demand = √(Q² + S²)/N
 * @param o.slope σ of the hold below the horizontal, rad, between −π/2 and π/2
 * @param o.vertical V, force down on the hands, N, above 0
 * @param o.outward H, force away from the wall, N, negative toward it (default 0)
 * @param o.sideways S, force along the wall, N; its sign does not matter (default 0)
 * @returns ratio of friction to normal force; Infinity where the pull leads off the hold
 * Sign: on a slope a small sideways pull counts in the second order only, an outward one in the first.
 * Valid for: friction alike in all directions, hands loaded alike, a hold that is flat sideways. On
 * an incut edge (Q < 0) a stop carries Q, so S alone has to be rubbed.
 * @throws RangeError for a field outside its range
 * Source: derived.
 * Example: slope 30°, V 500 N, S 50 N: 0.58881, where a plumb pull needs 0.57735.
 */
export function sidewaysDemand(o: {
	slope: number;
	vertical: number;
	outward?: number;
	sideways?: number;
}): number {
	const { slope, vertical, outward = 0, sideways = 0 } = o;
	requireAllowed('slope', slope, { above: -Math.PI / 2, below: Math.PI / 2, unit: 'rad' });
	requireAllowed('vertical', vertical, { above: 0, unit: 'N' });
	requireAllowed('outward', outward, { unit: 'N' });
	requireAllowed('sideways', sideways, { unit: 'N' });
	const normal = vertical * Math.cos(slope) - outward * Math.sin(slope);
	if (normal <= 0) return Infinity;
	const tangential = vertical * Math.sin(slope) + outward * Math.cos(slope);
	return Math.hypot(Math.max(0, tangential), sideways) / normal;
}

/**
 * Finds the sideways pull at which a constant ratio starts to slip, nothing leading outward.
 * S = V cos σ · √(μ² − tan² σ)
 * @param o.slope σ, rad, 0 to below π/2
 * @param o.vertical V, force down on the hands, N, above 0
 * @param o.ratio friction ratio μ the hold gives, above 0
 * @returns S, N; 0 where the hold slips without any sideways pull
 * Valid for: as sidewaysDemand.
 * @throws RangeError for a field outside its range
 * Source: derived.
 * Example: slope 30°, V 500 N, ratio 0.64: 119.6 N.
 */
export function sidewaysToSlip(o: { slope: number; vertical: number; ratio: number }): number {
	const { slope, vertical, ratio } = o;
	requireAllowed('slope', slope, { min: 0, below: Math.PI / 2, unit: 'rad' });
	requireAllowed('vertical', vertical, { above: 0, unit: 'N' });
	requireAllowed('ratio', ratio, { above: 0 });
	const spare = ratio ** 2 - Math.tan(slope) ** 2;
	return vertical * Math.cos(slope) * Math.sqrt(Math.max(0, spare));
}
