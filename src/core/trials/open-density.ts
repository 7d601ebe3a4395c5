import type { LineDensity } from '../statistics/line-density.ts';
import { logChanceTable, lookUp } from '../statistics/log-chance-table.ts';
import type { OpenRow } from './open-rows.ts';
import type { Settings } from './settings.ts';

/**
 * Likelihood of the opening stage times its starting guesses.
 *
 * P(no opening) = λ + (1 − 2λ) Φ((u − x)/s), u = ln(limit/reference load) ~ N(ln(best guess/reference load), 0.3²),
 * ln s ~ N(ln 0.08, 0.5²); outer unknown u, innermost ln s.
 *
 * @param rows from openRows
 * @param settings starting guesses, best guess, lapse
 * @returns the density over (u, ln s)
 * Source: derived
 * Example: integrate(openDensity([], settings)).sum.logEvidence → 0
 */
export function openDensity(rows: readonly OpenRow[], settings: Settings): LineDensity {
	const { lnGuess, lapse, priors } = settings;
	const { lnLimitSd, lnSpread } = priors;
	const table = logChanceTable(lapse);
	const reach = new Float64Array(rows.length);
	let outerPart = 0;
	return {
		start: [lnGuess, lnSpread.mean],
		scale: [lnLimitSd, lnSpread.sd],
		enter([u]) {
			const d = (u! - lnGuess) / lnLimitSd;
			outerPart = -(d * d) / 2 - Math.log(2 * Math.PI * lnLimitSd * lnSpread.sd);
			for (let k = 0; k < rows.length; k += 1)
				reach[k] = rows[k]!.held ? u! - rows[k]!.lnLoad : rows[k]!.lnLoad - u!;
		},
		at(lnSpreadHere) {
			const d = (lnSpreadHere - lnSpread.mean) / lnSpread.sd;
			const steepness = Math.exp(-lnSpreadHere);
			let total = outerPart - (d * d) / 2;
			for (let k = 0; k < rows.length; k += 1)
				total += rows[k]!.count * lookUp(table, reach[k]! * steepness);
			return total;
		}
	};
}
