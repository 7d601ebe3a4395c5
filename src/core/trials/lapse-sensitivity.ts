import type { CommonOptions } from './check-trials.ts';
import { type OpeningLimit, openingLimit } from './opening-limit.ts';
import type { Priors } from './priors.ts';
import { type StoryEvidence, storyEvidence } from './story-evidence.ts';
import type { Trial } from './trial.ts';

/** Answers at one share of accidents. */
export type LapseRow = { lapse: number; stories: StoryEvidence[]; limit: OpeningLimit };

/** Shares of accidental outcomes to compare. */
export const lapses = [0, 0.02, 0.05] as const;

/**
 * How much the answers change with the share of trials that end by accident.
 *
 * The lapse rate cannot be found from fewer than some sixty trials, so it is fixed and the answers at 0, 0.02 and 0.05
 * are set side by side.
 *
 * @param trials of one grip, kg
 * @param o as in storyEvidence, with a best guess; its lapse is not used
 * @returns for each lapse the stories and the opening limit
 * @throws RangeError naming field, value and range
 * Source: wichmannHill2001, section on lapses
 * Example: lapseSensitivity([], { referenceLoad: 60, bestGuess: 80 }).length → 3
 */
export function lapseSensitivity(
	trials: readonly Trial[],
	o: CommonOptions & { bestGuess: number; priors?: Priors }
): LapseRow[] {
	return lapses.map((lapse) => ({
		lapse,
		stories: storyEvidence(trials, { ...o, lapse }),
		limit: openingLimit(trials, { ...o, lapse })
	}));
}
