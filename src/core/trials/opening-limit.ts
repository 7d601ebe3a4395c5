import { covarianceOf } from '../statistics/lattice-sum.ts';
import { marginalOf } from '../statistics/marginal.ts';
import { checkTrials } from './check-trials.ts';
import type { Stopped } from './open-rows.ts';
import type { Priors } from './priors.ts';
import { settingsOf } from './settings.ts';
import type { Story, Trial } from './trial.ts';
import { openGivenSlip } from './two-stages.ts';

/** What the trials say about the load at which the fingers open half the time. */
export type OpeningLimit = {
	logEvidence: number;
	/** Mean of ln(limit in kg). */
	lnLimitMean: number;
	/** Standard deviation of ln limit. */
	lnLimitSd: number;
	/** The limit in kg that lies below with chance 0.05, 0.5 and 0.95. */
	quantiles: { q05: number; q50: number; q95: number };
};

/**
 * The load at which the fingers open half the time, and how sure that is.
 *
 * P(no opening) = Φ((u − x)/s); posterior of limit = reference load × exp(u), s averaged out. Uses held and opened;
 * stopped as told; trials whose cause was not seen count given the slip stage under `story`.
 *
 * @param trials loads in kg
 * @param o referenceLoad kg; bestGuess kg, centre of the starting guess; story of the slip stage ('rises' when left
 * out); lapse 0 to below 0.5; stopped 'left-out' (default) or 'opened'
 * @returns evidence (natural log), mean and sd of ln(limit in kg), quantiles in kg
 * @throws RangeError naming field, value and range
 * Source: derived
 * Example: openingLimit([], { referenceLoad: 60, bestGuess: 80 }).quantiles.q50 → 80
 */
export function openingLimit(
	trials: readonly Trial[],
	o: {
		referenceLoad: number;
		bestGuess: number;
		story?: Story;
		lapse?: number;
		stopped?: Stopped;
		priors?: Priors;
	}
): OpeningLimit {
	checkTrials(trials);
	const settings = settingsOf(o);
	const version = { story: o.story ?? 'rises', withOrder: false } as const;
	const { lattice, sum } = openGivenSlip(trials, version, settings, o.stopped);
	const marginal = marginalOf(lattice);
	const load = (share: number): number => o.referenceLoad * Math.exp(marginal.quantile(share));
	return {
		logEvidence: sum.logEvidence,
		lnLimitMean: Math.log(o.referenceLoad) + sum.mean[0]!,
		lnLimitSd: Math.sqrt(covarianceOf(lattice, sum)[0]![0]!),
		quantiles: { q05: load(0.05), q50: load(0.5), q95: load(0.95) }
	};
}
