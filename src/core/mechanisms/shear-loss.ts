import { requireAllowed } from '../units/allowed-range.ts';

/** The largest loss of real contact under sideways pull that has been reported. */
export const largestShearLoss = 0.3;

/**
 * Finds the friction ratio when a sideways pull shrinks small contacts more than large ones.
 * μ = coefficient · (1 − loss(n)), loss(n) = min(0.3, loss · (n/n_ref)^(−1/2))
 * (the relative loss goes as one over the root of real contact, and real contact as load)
 * @param force n, normal force on one pad, N, above 0
 * @param o.coefficient ratio without loss, 0 or more
 * @param o.loss share of real contact lost at the reference force, 0 to 0.3
 * @param o.referenceForce n_ref, N, above 0
 * @returns ratio
 * Sign: a heavier hang loses relatively less, so the ratio rises a little.
 * Valid for: the start of a slide only; the use of the loss by load is an assumption.
 * @throws RangeError for a field outside its range
 * Source: sahli2018
 * Example: loss 0.1 at 40 N is 0.05 at 160 N.
 */
export function shearLossRatio(
	force: number,
	o: { coefficient: number; loss: number; referenceForce: number }
): number {
	requireAllowed('force', force, { above: 0, unit: 'N' });
	requireAllowed('coefficient', o.coefficient, { min: 0 });
	requireAllowed('loss', o.loss, { min: 0, max: largestShearLoss });
	requireAllowed('referenceForce', o.referenceForce, { above: 0, unit: 'N' });
	const loss = Math.min(largestShearLoss, o.loss * Math.sqrt(o.referenceForce / force));
	return o.coefficient * (1 - loss);
}
