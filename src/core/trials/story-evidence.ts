import { shares } from '../statistics/log-sum.ts';
import { checkTrials, type CommonOptions } from './check-trials.ts';
import type { Priors } from './priors.ts';
import { settingsOf } from './settings.ts';
import { type Story, type StoryVersion, storyVersions, type Trial } from './trial.ts';
import { openAlone, slipGivenOpen } from './two-stages.ts';

/** How well one story explains the trials. */
export type StoryEvidence = {
	story: Story;
	withOrder: boolean;
	/** Natural log of the chance of these outcomes under the story, its unknowns averaged over their starting guess. */
	logEvidence: number;
	/** Share of belief among the twelve, which start equal. */
	weight: number;
};

/**
 * How well each of the twelve stories explains why some hangs slipped and others did not.
 *
 * The slip stage alone: held and opened count as no slip, slipped as slip, stopped is not used; ln Z = ln ∫ likelihood
 * × starting guess, weight = Z/Σ Z. Trials whose cause was not seen count given the opening stage.
 *
 * @param trials loads in kg; order and rope terms as fixed when the plan was made
 * @param o referenceLoad kg, where ln load is 0; bestGuess kg, needed when a cause was not seen; lapse 0 to below 0.5
 * @returns twelve rows: six stories without, then with order
 * @throws RangeError naming field, value and range
 * Source: kassRaftery1995, equations 1 to 3
 * Example: storyEvidence([], { referenceLoad: 60 })[0]!.weight → 1/12
 */
export function storyEvidence(
	trials: readonly Trial[],
	o: CommonOptions & { priors?: Priors }
): StoryEvidence[] {
	checkTrials(trials);
	const { priors } = settingsOf(o);
	const evidence = storyEvidenceOf(trials, o);
	const logs = storyVersions.map((version) => evidence(version, priors));
	const weights = shares(logs);
	return storyVersions.map((version, k) => ({
		...version,
		logEvidence: logs[k]!,
		weight: weights[k]!
	}));
}

/**
 * Log evidence of one story at a time; the opening stage, where a cause was not seen, is fitted once.
 *
 * @param trials checked trials
 * @param o as in storyEvidence
 * @returns tells the log evidence of a story under starting guesses, which may differ in the slip stage alone
 * @throws RangeError naming field, value and range
 * Source: derived
 * Example: storyEvidenceOf([], { referenceLoad: 60 })({ story: 'constant', withOrder: false }, defaultPriors) → 0
 */
export function storyEvidenceOf(
	trials: readonly Trial[],
	o: CommonOptions & { priors?: Priors }
): (version: StoryVersion, priors: Priors) => number {
	const settings = settingsOf(o);
	const unseen = trials.some(({ outcome }) => outcome === 'unknown');
	const open = unseen ? openAlone(trials, settings) : undefined;
	return (version, priors) =>
		slipGivenOpen(trials, version, { ...settings, priors }, open).sum.logEvidence;
}
