import type { FrictionLaw } from '../types.ts';
import { requireAllowed } from '../units/allowed-range.ts';
import { lawFormula } from './laws.ts';

/**
 * Gives the largest friction ratio (friction over normal force) that a law allows at one pressure.
 * μ(p), one formula for each kind of law
 * @param law the friction law with its numbers
 * @param pressure mean pressure over the pads, Pa, above 0
 * @returns the ratio, 0 or more
 * Valid for: the pressures each law is stated for; none is measured at the pressure of a hang.
 * @throws RangeError for a pressure that is not above 0, or a number of the law out of its range
 * Source: derler2012.
 * Example: frictionRatio({ kind: 'adhesion', coefficient: 0.45, shearStrength: 42000 }, 300000) is 0.59.
 */
export function frictionRatio(law: FrictionLaw, pressure: number): number {
	const formula = lawFormula(law);
	formula.check(law);
	requireAllowed('pressure', pressure, { above: 0, unit: 'Pa' });
	return formula.ratio(law, pressure);
}
