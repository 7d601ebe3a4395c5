import { requireAllowed } from '../units/allowed-range.ts';

/**
 * Finds the friction ratio when skin is pressed into grains or ridges, up to a plateau.
 * μ = coefficient + interlock · (1 − exp(−p/p_i))
 * @param pressure p, mean over the patch, Pa, above 0
 * @param o.coefficient ratio without interlock, 0 or more
 * @param o.interlock most that interlock adds, 0 or more
 * @param o.penetrationPressure p_i, Pa, above 0
 * @returns ratio
 * Sign: rises with load on the same patch, then stays; the same at the same pressure; a smaller
 * patch helps.
 * Valid for: coarse textures whose grains do not break; an assumed form with no published p_i.
 * @throws RangeError for a field outside its range
 * Source: derived from an assumed form; that ridges and grains interlock: tomlinson2009, tomlinson2013
 * Example: at p = p_i 63 % of the interlock is there.
 */
export function interlockRatio(
	pressure: number,
	o: { coefficient: number; interlock: number; penetrationPressure: number }
): number {
	requireAllowed('pressure', pressure, { above: 0, unit: 'Pa' });
	requireAllowed('coefficient', o.coefficient, { min: 0 });
	requireAllowed('interlock', o.interlock, { min: 0 });
	requireAllowed('penetrationPressure', o.penetrationPressure, { above: 0, unit: 'Pa' });
	return o.coefficient + o.interlock * -Math.expm1(-pressure / o.penetrationPressure);
}
