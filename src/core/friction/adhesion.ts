import { requireAllowed } from '../units/allowed-range.ts';
import type { LawFormula, LawOf } from './law.ts';

/**
 * Skin that also sticks: a constant shear strength over the patch adds to the constant ratio.
 * μ = coefficient + shearStrength/p
 * Valid for: smooth hard surfaces; the shear strength (Pa) belongs to the apparent patch area.
 * Source: adams2007.
 * Example: with coefficient 0.45 and shearStrength 42000 Pa the ratio at 300000 Pa is 0.59.
 */
export const adhesionLaw: LawFormula<LawOf<'adhesion'>> = {
	ratio: (law, pressure) => law.coefficient + law.shearStrength / pressure,
	ratioSlope: (law, pressure) => -law.shearStrength / pressure,
	bendPressure: () => NaN,
	check(law) {
		requireAllowed('friction.coefficient', law.coefficient, { min: 0 });
		requireAllowed('friction.shearStrength', law.shearStrength, { min: 0, unit: 'Pa' });
	}
};
