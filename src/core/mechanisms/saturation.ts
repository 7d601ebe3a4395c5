import { requireAllowed } from '../units/allowed-range.ts';

/**
 * Finds the friction ratio when real contact fills up as pressure rises.
 * μ = coefficient · (p_s/p)(1 − exp(−p/p_s)): the constant law at low pressure, one over p at high
 * @param pressure p, mean over the patch, Pa, above 0
 * @param o.coefficient ratio at low pressure, 0 or more
 * @param o.saturationPressure p_s at which real contact fills up, Pa, above 0 or Infinity for never
 * @returns ratio
 * Sign: falls with load on the same patch; does not change at the same pressure; a bigger patch helps.
 * Valid for: both ends as published for elastomers; the way between them is an assumed form.
 * @throws RangeError for a field outside its range
 * Source: lubricants2018
 * Example: at p = p_s the ratio is 63 % of the coefficient.
 */
export function saturationRatio(
	pressure: number,
	o: { coefficient: number; saturationPressure: number }
): number {
	requireAllowed('pressure', pressure, { above: 0, unit: 'Pa' });
	requireAllowed('coefficient', o.coefficient, { min: 0 });
	if (o.saturationPressure === Infinity) return o.coefficient;
	requireAllowed('saturationPressure', o.saturationPressure, { above: 0, unit: 'Pa' });
	const filled = pressure / o.saturationPressure;
	return (o.coefficient * -Math.expm1(-filled)) / filled;
}

/**
 * Finds which share of the patch really touches, from the friction it gives.
 * A_r/A = μ p/τ
 * @param ratio friction ratio μ, 0 or more
 * @param pressure p, mean over the patch, Pa, above 0
 * @param realShearStrength τ of real nanoscale contact, Pa, above 0
 * @returns share of the patch, without unit
 * Valid for: friction that is all sticking. Never mix τ of real contact (megapascals) with that of
 * the whole pad (kilopascals).
 * @throws RangeError for a field outside its range
 * Source: persson2013, kovalev2014
 * Example: ratio 0.5 at 40 kPa and 13 MPa: 0.0015.
 */
export function realContactShare(
	ratio: number,
	pressure: number,
	realShearStrength: number
): number {
	requireAllowed('ratio', ratio, { min: 0 });
	requireAllowed('pressure', pressure, { above: 0, unit: 'Pa' });
	requireAllowed('realShearStrength', realShearStrength, { above: 0, unit: 'Pa' });
	return (ratio * pressure) / realShearStrength;
}
