import { requireAllowed } from '../units/allowed-range.ts';
import type { LawFormula, LawOf } from './law.ts';

/**
 * A slippery film (dust, powder, sweat) that pressure breaks through.
 * μ = filmCoefficient + (coefficient − filmCoefficient)(1 − exp(−(p/breakthroughPressure)^sharpness))
 * Valid for: nothing that has been measured under a finger; an assumed form, to be shown as one.
 * Source: derived from an assumed form, which no experiment shows.
 * Example: at p = 0 the ratio is filmCoefficient, far above the breakthrough it is coefficient.
 */
export const filmLaw: LawFormula<LawOf<'film'>> = {
	ratio: (law, pressure) =>
		law.filmCoefficient +
		(law.coefficient - law.filmCoefficient) * -Math.expm1(-stage(law, pressure)),
	ratioSlope(law, pressure) {
		const through = stage(law, pressure);
		return (law.coefficient - law.filmCoefficient) * law.sharpness * through * Math.exp(-through);
	},
	bendPressure: (law, share) =>
		law.breakthroughPressure * Math.pow(1 + 1 / (share * law.sharpness), 1 / law.sharpness),
	check(law) {
		requireAllowed('friction.filmCoefficient', law.filmCoefficient, { min: 0 });
		requireAllowed('friction.coefficient', law.coefficient, { min: 0 });
		requireAllowed('friction.breakthroughPressure', law.breakthroughPressure, {
			above: 0,
			unit: 'Pa'
		});
		requireAllowed('friction.sharpness', law.sharpness, { above: 0, max: 20 });
	}
};

/** How far the film is through: 0 untouched, large when gone. */
function stage(law: LawOf<'film'>, pressure: number): number {
	return Math.pow(pressure / law.breakthroughPressure, law.sharpness);
}
