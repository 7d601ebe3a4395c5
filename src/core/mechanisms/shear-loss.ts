import { requireAllowed } from '../units/allowed-range.ts';

/** The largest loss of real contact under sideways pull that has been reported. */
export const largestShearLoss = 0.3;

/**
 * Finds the friction ratio when a sideways pull shrinks small contacts more than large ones.
 * μ = coefficient · (1 − loss(p)), loss(p) = min(0.3, loss · (p/p_ref)^(−1/2))
 * (the relative loss of a contact spot goes as one over the root of its area, and that as pressure)
 * @param pressure p, mean over the patch, Pa, above 0
 * @param o.coefficient ratio without loss, 0 or more
 * @param o.loss share of real contact lost at the reference pressure, 0 to 0.3
 * @param o.referencePressure p_ref, Pa, above 0
 * @returns ratio
 * Sign: a heavier hang on the same patch loses relatively less, so the ratio rises a little.
 * Valid for: the start of a slide only. The 0.3 is published; the growth of spots with pressure is
 * an assumption, and whether a bigger patch helps is not settled.
 * @throws RangeError for a field outside its range
 * Source: sahli2018
 * Example: loss 0.1 at 114 kPa is 0.05 at 456 kPa.
 */
export function shearLossRatio(
	pressure: number,
	o: { coefficient: number; loss: number; referencePressure: number }
): number {
	requireAllowed('pressure', pressure, { above: 0, unit: 'Pa' });
	requireAllowed('coefficient', o.coefficient, { min: 0 });
	requireAllowed('loss', o.loss, { min: 0, max: largestShearLoss });
	requireAllowed('referencePressure', o.referencePressure, { above: 0, unit: 'Pa' });
	const loss = Math.min(largestShearLoss, o.loss * Math.sqrt(o.referencePressure / pressure));
	return o.coefficient * (1 - loss);
}
