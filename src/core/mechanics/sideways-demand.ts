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
