import { requireAllowed } from '../units/allowed-range.ts';
import type { LawFormula, LawOf } from './law.ts';

/**
 * The textbook law: the friction ratio is one number, whatever the pressure.
 * μ = coefficient
 * Valid for: dry skin on ordinary hard surfaces, and short contacts, within the scatter.
 * Source: derler2012.
 * Example: constantLaw.ratio({ kind: 'constant', coefficient: 0.64 }, 3e5) is 0.64.
 */
export const constantLaw: LawFormula<LawOf<'constant'>> = {
	ratio: (law) => law.coefficient,
	ratioSlope: () => 0,
	bendPressure: () => NaN,
	check(law) {
		requireAllowed('friction.coefficient', law.coefficient, { min: 0 });
	}
};
