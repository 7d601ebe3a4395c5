import { frictionScatter } from '#core/trials/friction-scatter.ts';
import { defaultPriors } from '#core/trials/priors.ts';
import type { AnalysisOptions } from '#workers/stories-messages.ts';
import type { Analysed } from './analysed.ts';

/** Share of goes that end by accident: fixed, since so few trials cannot show it. Judgement. */
export const lapse = 0.02;
/** Points of the curve between its ends. */
const curvePoints = 57;

/** What repeated tilts say of the scatter of friction; undefined where there are not two of a series. */
export function scatterOf({ tilts }: Pick<Analysed, 'tilts'>) {
	return tilts.some(({ length }) => length > 1) ? frictionScatter(tilts) : undefined;
}

/** How the trials are analysed: repeated tilts take the place of the starting guess of friction's scatter. */
export function optionsOf(
	of: Pick<Analysed, 'referenceLoad' | 'bestGuess' | 'tilts'>
): AnalysisOptions {
	const { referenceLoad, bestGuess } = of;
	const scatter = scatterOf(of);
	return {
		...{ referenceLoad, bestGuess, lapse },
		...(scatter && { priors: { ...defaultPriors, lnRopeEffect: scatter.lnRopeEffect } })
	};
}

/** Loads at which the curve is computed, kg: from 0.8 × the lightest to 1.1 × the heaviest tried. */
export function curveLoads({ trials }: Tried): { from: number; to: number; loads: number[] } {
	const tried = trials.map(({ load }) => load);
	const [from, to] = [0.8 * Math.min(...tried), 1.1 * Math.max(...tried)];
	const loads = Array.from({ length: curvePoints }, (_, k) =>
		// The ends exactly, so that rounding does not put them outside.
		k === 0 ? from : k === curvePoints - 1 ? to : from + ((to - from) * k) / (curvePoints - 1)
	);
	return { from, to, loads };
}

type Tried = { trials: readonly { load: number }[] };
