import { requireAllowed } from '../units/allowed-range.ts';

/** How a pad spreads under its own load: a(n) = min(padLimit, padCoefficient · n^exponent). */
export type PadGrowth = { padCoefficient: number; exponent: number; padLimit: number };

/**
 * Finds the patch of one pad under its load.
 * a(n) = min(padLimit, padCoefficient · n^exponent)
 * @param force n, normal force on one pad, N, above 0
 * @param growth padCoefficient, m²/N^exponent, above 0; exponent 0 to 2; padLimit, m², above 0
 * @returns area, m²
 * Valid for: the end of one finger; measured to a few newtons, carried on beyond.
 * @throws RangeError for a field outside its range
 * Source: xydas1999, tomlinson2009, liu2018
 * Example: 110 mm² at 1 N and exponent 0.32 give 230 mm² at 10 N.
 */
export function grownPadArea(force: number, growth: PadGrowth): number {
	requireAllowed('force', force, { above: 0, unit: 'N' });
	requireAllowed('padCoefficient', growth.padCoefficient, { above: 0, unit: 'm²/N^exponent' });
	requireAllowed('exponent', growth.exponent, { min: 0, max: 2 });
	requireAllowed('padLimit', growth.padLimit, { above: 0, unit: 'm²' });
	return Math.min(growth.padLimit, growth.padCoefficient * Math.pow(force, growth.exponent));
}

/**
 * Finds the friction ratio of a sticky pad that spreads under its load.
 * μ = coefficient + shearStrength · a(n)/n
 * @param force n, normal force on one pad, N, above 0
 * @param o.coefficient ratio without sticking, 0 or more
 * @param o.shearStrength over the whole pad, Pa, 0 or more
 * @param o.growth how the pad spreads
 * @returns ratio
 * Sign: falls with load unless the exponent is 1 or more; less steeply than on a fixed patch.
 * Valid for: smooth surfaces; at hang loads an extrapolation.
 * @throws RangeError for a field outside its range
 * Source: adams2007, dzidek2017
 * Example: with exponent 1 the ratio does not change with load.
 */
export function growingAdhesionRatio(
	force: number,
	o: { coefficient: number; shearStrength: number; growth: PadGrowth }
): number {
	requireAllowed('coefficient', o.coefficient, { min: 0 });
	requireAllowed('shearStrength', o.shearStrength, { min: 0, unit: 'Pa' });
	return o.coefficient + (o.shearStrength * grownPadArea(force, o.growth)) / force;
}
