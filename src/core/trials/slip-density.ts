import type { LineDensity } from '../statistics/line-density.ts';
import { logChanceTable } from '../statistics/log-chance-table.ts';
import type { Priors } from './priors.ts';
import { rowSum } from './row-sum.ts';
import { sessionSum } from './session-sum.ts';
import type { SlipRow } from './slip-rows.ts';
import { termsOf } from './slip-terms.ts';
import type { StoryVersion } from './trial.ts';

const halfLogTwoPi = 0.5 * Math.log(2 * Math.PI);

/** Sums the log chances of all rows at one line of the lattice. */
export type RowSum = {
	/** Fixes each row's predictor but for the margin. */
	enter(base: Float64Array): void;
	/** Log likelihood at a margin. */
	at(margin: number): number;
	spaced?(step: number): void;
};

/**
 * Likelihood of the slip stage times its starting guesses, for one story.
 *
 * P(no slip) = λ + (1 − 2λ) Φ(a + c x + g o − q r); innermost a; c = ± c₀ exp(t − exp(−t)) so that the edge at 0
 * is met smoothly (double-exponential map); q = exp(v). Several sessions: each shifts a by its own N(0, 0.7²),
 * integrated out.
 *
 * @param rows from slipRows
 * @param version story and whether the order counts
 * @param priors starting guesses
 * @param lapse λ, 0 to below 0.5
 * @param exact true to compute every ln Φ anew instead of reading the table (for benches)
 * @returns the density, outer unknowns (t)(v)(g) as the story has them, then a
 * Source: derived; map takahasiMori1974
 * Example: integrate(slipDensity([], { story: 'constant', withOrder: false }, defaultPriors, 0)).sum.logEvidence → 0
 */
export function slipDensity(
	rows: readonly SlipRow[],
	version: StoryVersion,
	priors: Priors,
	lapse: number,
	exact = false
): LineDensity {
	const terms = termsOf(version, priors);
	const base = new Float64Array(rows.length);
	const table = logChanceTable(lapse);
	const severalSessions = new Set(rows.map((row) => row.session)).size > 1;
	const sum: RowSum = severalSessions
		? sessionSum(rows, table, priors.sessionSd)
		: rowSum(rows, table, exact);
	const { mean, sd, lnLoad = 0 } = priors.margin;
	let outerPart = 0;
	let centre = mean;
	return {
		start: [...terms.start, mean],
		scale: [...terms.scale, sd],
		enter(outer) {
			const { load, rope, order, logPrior } = terms.at(outer);
			centre = mean - load * lnLoad;
			outerPart = logPrior - halfLogTwoPi - Math.log(sd);
			for (let k = 0; k < rows.length; k += 1) {
				const row = rows[k]!;
				base[k] = load * row.lnLoad - rope * row.ropeTerm + order * row.order;
			}
			sum.enter(base);
		},
		at(margin) {
			const d = (margin - centre) / sd;
			return outerPart - (d * d) / 2 + sum.at(margin);
		},
		spaced: (step) => sum.spaced?.(step)
	};
}
