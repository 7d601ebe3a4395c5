import { requireAllowed } from '../units/allowed-range.ts';

/**
 * Finds the pull on the anchor of a pulley from its two strands.
 * R = √(T₁² + T₂² + 2 T₁ T₂ cos φ)
 * @param o.bodyStrand T₁, tension of the strand to the body, N, 0 or more
 * @param o.weightStrand T₂, tension of the strand to the counterweight, N, 0 or more
 * @param o.angle φ between the strands, rad, 0 (side by side) to π
 * @returns force on the anchor, N
 * Valid for: a still hang; a load that is dropped on pulls up to twice as hard.
 * @throws RangeError for a field outside its range
 * Source: openstaxUniversityPhysics, ch. 2.2 (adding forces).
 * Example: two plumb strands of 100 N pull with 200 N.
 */
export function anchorForce(o: {
	bodyStrand: number;
	weightStrand: number;
	angle: number;
}): number {
	const { bodyStrand, weightStrand, angle } = o;
	requireAllowed('bodyStrand', bodyStrand, { min: 0, unit: 'N' });
	requireAllowed('weightStrand', weightStrand, { min: 0, unit: 'N' });
	requireAllowed('angle', angle, { min: 0, max: Math.PI, unit: 'rad' });
	return Math.hypot(bodyStrand + weightStrand * Math.cos(angle), weightStrand * Math.sin(angle));
}
