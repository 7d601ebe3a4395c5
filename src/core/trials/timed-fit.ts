import { type Integral, integrate } from '../statistics/integrate.ts';
import type { LineDensity } from '../statistics/line-density.ts';
import { logChanceTable, lookUp } from '../statistics/log-chance-table.ts';
import { checkNumber, checkTrials } from './check-trials.ts';
import type { Stopped } from './open-rows.ts';
import type { Priors } from './priors.ts';
import { needGuess, type Settings, settingsOf } from './settings.ts';
import { type TimedRow, timedRows } from './timed-rows.ts';
import type { Trial } from './trial.ts';

export type TimedOptions = {
	referenceLoad: number;
	bestGuess: number;
	targetTime: number;
	stopped?: Stopped;
	priors?: Priors;
};

/**
 * The opening stage fitted to hold times.
 *
 * ln T ~ N(ln t* + σ (u − x)/s, σ²); unknowns u, ln σ and, innermost, ln s.
 *
 * @param trials loads in kg, seconds in s
 * @param o referenceLoad, bestGuess in kg; targetTime in s; stopped 'left-out' (not before its time) or 'opened'
 * @returns evidence and weighted points over (u, ln σ), ln s
 * @throws RangeError naming field, value and range
 * Source: derived; log-normal times as in kalbfleischPrentice2002, section 2.2
 * Example: fitTimes([], { referenceLoad: 60, bestGuess: 60, targetTime: 10 }).sum.mean[0] → 0
 */
export function fitTimes(trials: readonly Trial[], o: TimedOptions): Integral {
	checkTrials(trials);
	checkNumber('targetTime', o.targetTime, { above: 0 });
	const settings = settingsOf(o);
	needGuess(settings);
	const rows = timedRows(trials, o.referenceLoad, o.targetTime, o.stopped ?? 'left-out');
	return integrate(timedDensity(rows, settings), {
		step: rows.length === 0 ? 0.6 : 0.65,
		depth: rows.length === 0 ? 26 : 20
	});
}

function timedDensity(rows: readonly TimedRow[], { lnGuess, priors }: Settings): LineDensity {
	const { lnLimitSd, lnSpread, lnTimeScatter } = priors;
	const table = logChanceTable(0);
	const from = new Float64Array(rows.length);
	const until = new Float64Array(rows.length);
	let limit = 0;
	let outerPart = 0;
	const start = [lnGuess, lnTimeScatter.mean, lnSpread.mean];
	const scale = [lnLimitSd, lnTimeScatter.sd, lnSpread.sd];
	const constant = scale.reduce((sum, sd) => sum - Math.log(sd * Math.sqrt(2 * Math.PI)), 0);
	return {
		start,
		scale,
		enter([u, lnScatter]) {
			limit = u!;
			const bells = [(u! - lnGuess) / lnLimitSd, (lnScatter! - start[1]!) / scale[1]!];
			outerPart = constant - bells.reduce((sum, d) => sum + (d * d) / 2, 0);
			const scatter = Math.exp(lnScatter!);
			rows.forEach((row, k) => {
				from[k] = row.from / scatter;
				until[k] = row.until / scatter;
			});
		},
		at(lnSpreadHere) {
			const d = (lnSpreadHere - lnSpread.mean) / lnSpread.sd;
			const steepness = Math.exp(-lnSpreadHere);
			let total = outerPart - (d * d) / 2;
			for (let k = 0; k < rows.length; k += 1) {
				const middle = (limit - rows[k]!.lnLoad) * steepness;
				const [low, high] = [middle - until[k]!, middle - from[k]!];
				if (low === -Infinity) total += lookUp(table, high);
				else if (high === Infinity) total += lookUp(table, -low);
				else {
					// Φ(high) − Φ(low) from the smaller tails.
					const [big, small] = high < 0 || low + high < 0 ? [high, low] : [-low, -high];
					const most = lookUp(table, big);
					total += most + Math.log(-Math.expm1(lookUp(table, small) - most) || 1e-300);
				}
			}
			return total;
		}
	};
}
