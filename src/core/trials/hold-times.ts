import { integrate } from '../statistics/integrate.ts';
import { covarianceOf } from '../statistics/lattice-sum.ts';
import type { LineDensity } from '../statistics/line-density.ts';
import { logChanceTable, lookUp } from '../statistics/log-chance-table.ts';
import { marginalOf } from '../statistics/marginal.ts';
import { checkNumber, checkTrials } from './check-trials.ts';
import type { OpeningLimit } from './opening-limit.ts';
import type { Stopped } from './open-rows.ts';
import type { Priors } from './priors.ts';
import { needGuess, type Settings, settingsOf } from './settings.ts';
import { type TimedRow, timedRows } from './timed-rows.ts';
import type { Trial } from './trial.ts';

/** The opening limit from hold times, and how quickly it falls with the time asked for. */
export type TimedOpeningLimit = OpeningLimit & {
	/** Mean and sd of s/σ: the limit's fall in ln kg for each e-fold of time. */
	fallWithTime: { mean: number; sd: number };
};

/**
 * The load at which the fingers open half the time within the target time, from the times themselves.
 *
 * ln T ~ N(ln t* + σ (u − x)/s, σ²), so P(T > t*) = Φ((u − x)/s) as in the plain version; starting guesses as there,
 * and ln σ ~ N(ln 0.4, 0.5²), which is assumed. A limit for another time t′ is u − (s/σ) ln(t′/t*). Slipping is taken
 * not to depend on time; lapses are not modelled here.
 *
 * @param trials loads in kg, seconds in s
 * @param o referenceLoad, bestGuess in kg; targetTime in s; stopped 'left-out' (not before its time) or 'opened'
 * @returns as openingLimit (log evidence of the times as rounded by a stopwatch), and the fall with time
 * @throws RangeError naming field, value and range
 * Source: derived; log-normal times as in kalbfleischPrentice2002, section 2.2
 * Example: timedOpeningLimit([], { referenceLoad: 60, bestGuess: 80, targetTime: 10 }).quantiles.q50 → 80
 */
export function timedOpeningLimit(
	trials: readonly Trial[],
	o: {
		referenceLoad: number;
		bestGuess: number;
		targetTime: number;
		stopped?: Stopped;
		priors?: Priors;
	}
): TimedOpeningLimit {
	checkTrials(trials);
	checkNumber('targetTime', o.targetTime, { above: 0 });
	const settings = settingsOf(o);
	needGuess(settings);
	const rows = timedRows(trials, o.referenceLoad, o.targetTime, o.stopped ?? 'left-out');
	const { lattice, sum } = integrate(timedDensity(rows, settings), {
		step: rows.length === 0 ? 0.6 : 0.65,
		depth: rows.length === 0 ? 26 : 20
	});
	const marginal = marginalOf(lattice);
	const load = (share: number): number => o.referenceLoad * Math.exp(marginal.quantile(share));
	const fall = { mean: 0, square: 0 };
	for (let line = 0; line + 1 < lattice.starts.length; line += 1) {
		for (let k = lattice.starts[line]!; k < lattice.starts[line + 1]!; k += 1) {
			const here = Math.exp(lattice.inner[k]! - lattice.outerValues[2 * line + 1]!);
			fall.mean += sum.weights[k]! * here;
			fall.square += sum.weights[k]! * here * here;
		}
	}
	return {
		logEvidence: sum.logEvidence,
		lnLimitMean: Math.log(o.referenceLoad) + sum.mean[0]!,
		lnLimitSd: Math.sqrt(covarianceOf(lattice, sum)[0]![0]!),
		quantiles: { q05: load(0.05), q50: load(0.5), q95: load(0.95) },
		fallWithTime: { mean: fall.mean, sd: Math.sqrt(fall.square - fall.mean ** 2) }
	};
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
