import { requireAllowed } from '../units/allowed-range.ts';
import type { LawFormula, LawOf } from './law.ts';

/**
 * Skin that sticks and is also ploughed by a rough surface: the ratio falls, then rises.
 * μ = coefficient + shearStrength/p + deformation · (p/referencePressure)^(1/3)
 * The ratio is least at p* = [3 shearStrength · referencePressure^(1/3) / deformation]^(3/4).
 * Valid for: rough surfaces; least supported on slick holds. shearStrength in Pa.
 * Source: derived, from the classical 1/3 power of a sphere pressed into a soft solid
 * (greenwoodTabor1958, from memory).
 * Example: with shearStrength 0 and coefficient 0 eight times the pressure doubles the ratio.
 */
export const deformationLaw: LawFormula<LawOf<'deformation'>> = {
	ratio: (law, pressure) => law.coefficient + sticking(law, pressure) + ploughing(law, pressure),
	ratioSlope: (law, pressure) => ploughing(law, pressure) / 3 - sticking(law, pressure),
	bendPressure: (law, share) =>
		Math.pow(
			((1 - share) * law.shearStrength * Math.cbrt(law.referencePressure)) /
				(law.deformation * (1 / 3 + share / 9)),
			3 / 4
		),
	check(law) {
		requireAllowed('friction.coefficient', law.coefficient, { min: 0 });
		requireAllowed('friction.shearStrength', law.shearStrength, { min: 0, unit: 'Pa' });
		requireAllowed('friction.deformation', law.deformation, { min: 0 });
		requireAllowed('friction.referencePressure', law.referencePressure, { above: 0, unit: 'Pa' });
	}
};

function sticking(law: LawOf<'deformation'>, pressure: number): number {
	return law.shearStrength / pressure;
}

function ploughing(law: LawOf<'deformation'>, pressure: number): number {
	return law.deformation * Math.cbrt(pressure / law.referencePressure);
}
