import { covarianceOf } from '../statistics/lattice-sum.ts';
import { marginalOf } from '../statistics/marginal.ts';
import type { OpeningLimit } from './opening-limit.ts';
import { fitTimes, type TimedOptions } from './timed-fit.ts';
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
export function timedOpeningLimit(trials: readonly Trial[], o: TimedOptions): TimedOpeningLimit {
	const { lattice, sum } = fitTimes(trials, o);
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
