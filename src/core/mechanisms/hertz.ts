import { requireAllowed } from '../units/allowed-range.ts';

/**
 * Finds the contact area of a soft ball pressed on a hard plate.
 * r³ = 3 n R/(4 E*), A = π r², E* = E/(1 − ν²) with ν = 1/2
 * @param force n, N, above 0
 * @param radius R of the ball, m, above 0
 * @param modulus E of the ball, Pa, above 0
 * @returns area, m²; it grows as n to the two thirds
 * Valid for: small dents. For a fingertip only below about 1 N: at 50 N it would be larger than the pad.
 * @throws RangeError for a field outside its range
 * Source: hertz1882
 * Example: 1 N on radius 8.5 mm with 40 kPa: 76 mm².
 */
export function hertzArea(force: number, radius: number, modulus: number): number {
	requireAllowed('force', force, { above: 0, unit: 'N' });
	requireAllowed('radius', radius, { above: 0, unit: 'm' });
	requireAllowed('modulus', modulus, { above: 0, unit: 'Pa' });
	const contactRadius = Math.cbrt((3 * force * radius) / ((4 * modulus) / 0.75));
	return Math.PI * contactRadius * contactRadius;
}

/**
 * Finds the friction ratio of a soft ball that only sticks.
 * μ = shearStrength · A/n, falling as one over the cube root of load
 * @param force n, N, above 0
 * @param o.radius of the ball, m, above 0
 * @param o.modulus of the ball, Pa, above 0
 * @param o.shearStrength of the contact, Pa, 0 or more
 * @returns ratio
 * Valid for: small dents on smooth surfaces.
 * @throws RangeError for a field outside its range
 * Source: hertz1882, adams2007
 * Example: eight times the force halves the ratio.
 */
export function hertzAdhesionRatio(
	force: number,
	o: { radius: number; modulus: number; shearStrength: number }
): number {
	requireAllowed('shearStrength', o.shearStrength, { min: 0, unit: 'Pa' });
	return (o.shearStrength * hertzArea(force, o.radius, o.modulus)) / force;
}
