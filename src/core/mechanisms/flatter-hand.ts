import { requireAllowed } from '../units/allowed-range.ts';

/**
 * Finds the patch of one finger when the hand lies flatter the more it is loaded.
 * a(n) = a_ref · min(largestFactor, (n/n_ref)^exponent)
 * @param force n, normal force on one finger, N, above 0
 * @param o.padArea a_ref at the reference force, m², above 0
 * @param o.referenceForce n_ref, N, above 0
 * @param o.exponent 0 or more; above 1 the patch outgrows the load
 * @param o.largestFactor most that the patch can grow, 1 or more
 * @returns area, m²
 * Sign: with sticky skin a heavier hang is easier only while the patch grows faster than the load;
 * where pressure helps, it is harder.
 * Valid for: small changes of posture. A hand laid on two phalanges is outside the strength model.
 * @throws RangeError for a field outside its range
 * Source: derived; that the contact grows with posture: bourne2011, warman2009
 * Example: 250 mm² at 70 N with exponent 1.3 is 307 mm² at 82 N.
 */
export function flatterHandArea(
	force: number,
	o: { padArea: number; referenceForce: number; exponent: number; largestFactor: number }
): number {
	requireAllowed('force', force, { above: 0, unit: 'N' });
	requireAllowed('padArea', o.padArea, { above: 0, unit: 'm²' });
	requireAllowed('referenceForce', o.referenceForce, { above: 0, unit: 'N' });
	requireAllowed('exponent', o.exponent, { min: 0 });
	requireAllowed('largestFactor', o.largestFactor, { min: 1 });
	return o.padArea * Math.min(o.largestFactor, Math.pow(force / o.referenceForce, o.exponent));
}
