import { requireAllowed } from '../units/allowed-range.ts';
import type { LawFormula, LawOf } from './law.ts';

/**
 * Friction as a power of load: on a fixed patch the limit grows as N^exponent.
 * μ = coefficient · (p/referencePressure)^(exponent − 1)
 * Valid for: the range of pressures it was fitted to; exponent 0 to 2, 1 is the constant law.
 * Source: comaish1971.
 * Example: with coefficient 0.64 the ratio at the reference pressure is 0.64 for every exponent.
 */
export const powerLaw: LawFormula<LawOf<'power'>> = {
	ratio: (law, pressure) =>
		law.coefficient * Math.pow(pressure / law.referencePressure, law.exponent - 1),
	ratioSlope: (law, pressure) => (law.exponent - 1) * powerLaw.ratio(law, pressure),
	bendPressure: () => NaN,
	check(law) {
		requireAllowed('friction.coefficient', law.coefficient, { min: 0 });
		requireAllowed('friction.referencePressure', law.referencePressure, { above: 0, unit: 'Pa' });
		requireAllowed('friction.exponent', law.exponent, { min: 0, max: 2 });
	}
};
