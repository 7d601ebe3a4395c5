import { checkTrials } from './check-trials.ts';
import type { Priors } from './priors.ts';
import { settingsOf } from './settings.ts';
import type { Story, Trial } from './trial.ts';
import { openAlone, slipGivenOpen } from './two-stages.ts';

/**
 * How well both stages together explain the trials.
 *
 * ln Z = ln Z(opening, causes seen) + ln Z(slip | opening); with every cause seen it is the plain sum of the two
 * stages, because the likelihood factorises. Stopped trials say nothing here.
 *
 * @param trials loads in kg
 * @param o referenceLoad kg; bestGuess kg; story ('rises' when left out) and withOrder (false) of the slip stage;
 * lapse 0 to below 0.5
 * @returns natural log of the evidence
 * @throws RangeError naming field, value and range
 * Source: derived
 * Example: jointEvidence([], { referenceLoad: 60, bestGuess: 80 }) → 0
 */
export function jointEvidence(
	trials: readonly Trial[],
	o: {
		referenceLoad: number;
		bestGuess: number;
		story?: Story;
		withOrder?: boolean;
		lapse?: number;
		priors?: Priors;
	}
): number {
	checkTrials(trials);
	const settings = settingsOf(o);
	const version = { story: o.story ?? 'rises', withOrder: o.withOrder ?? false } as const;
	const open = openAlone(trials, settings);
	return open.sum.logEvidence + slipGivenOpen(trials, version, settings, open).sum.logEvidence;
}
