import { requireAllowed } from '../units/allowed-range.ts';

/**
 * Finds the part of the friction ratio that goes into deforming a soft body with round grains.
 * μ_def = deformation · (p/p_ref)^(1/3)
 * @param pressure p, mean over the patch, Pa, above 0
 * @param deformation that part at the reference pressure, 0 or more
 * @param referencePressure p_ref, Pa, above 0
 * @returns part of the ratio
 * Sign: rises with load on the same patch; the same at the same pressure; a smaller patch helps.
 * Valid for: rough surfaces. On skin usually 0.02 to 0.1 (from memory).
 * @throws RangeError for a field outside its range
 * Source: greenwoodTabor1958
 * Example: eight times the pressure doubles it.
 */
export function hysteresisPart(
	pressure: number,
	deformation: number,
	referencePressure: number
): number {
	requireAllowed('pressure', pressure, { above: 0, unit: 'Pa' });
	requireAllowed('deformation', deformation, { min: 0 });
	requireAllowed('referencePressure', referencePressure, { above: 0, unit: 'Pa' });
	return deformation * Math.cbrt(pressure / referencePressure);
}

/**
 * Finds the load on one pad at which a sticky and deforming contact has its least friction ratio.
 * n* = [3 τ A n_ref^(1/3)/μ_d]^(3/4), from μ = α + τ A/n + μ_d (n/n_ref)^(1/3)
 * @param o.shearStrength τ over the whole pad, Pa, 0 or more
 * @param o.padArea A, m², above 0
 * @param o.deformation μ_d at the reference force, above 0
 * @param o.referenceForce n_ref on one pad, N, above 0
 * @returns force on one pad, N; lighter and heavier loads both have a higher ratio
 * Valid for: a fixed patch. The dip is shallow: a few percent for each doubling.
 * @throws RangeError for a field outside its range
 * Source: derived.
 * Example: 3 kPa, 350 mm², 0.1 at 40 N: 33.4 N.
 */
export function forceOfLeastRatio(o: {
	shearStrength: number;
	padArea: number;
	deformation: number;
	referenceForce: number;
}): number {
	requireAllowed('shearStrength', o.shearStrength, { min: 0, unit: 'Pa' });
	requireAllowed('padArea', o.padArea, { above: 0, unit: 'm²' });
	requireAllowed('deformation', o.deformation, { above: 0 });
	requireAllowed('referenceForce', o.referenceForce, { above: 0, unit: 'N' });
	return Math.pow(
		(3 * o.shearStrength * o.padArea * Math.cbrt(o.referenceForce)) / o.deformation,
		3 / 4
	);
}
