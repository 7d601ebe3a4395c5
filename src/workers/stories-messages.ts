import type { CapOptions } from '#core/trials/caps.ts';
import type { Candidate } from '#core/trials/next-trial.ts';
import type { TimedOpeningLimit } from '#core/trials/hold-times.ts';
import type { TimePoint } from '#core/trials/hold-time-curve.ts';
import type { TimedOptions } from '#core/trials/timed-fit.ts';
import type { OpeningLimit } from '#core/trials/opening-limit.ts';
import type { CurvePoint } from '#core/trials/holding-curve.ts';
import type { LapseRow } from '#core/trials/lapse-sensitivity.ts';
import type { PlannedTrial, Tally, Truth } from '#core/trials/simulate-plan.ts';
import type { SlipLimit } from '#core/trials/slip-limit.ts';
import type { StoryEvidence } from '#core/trials/story-evidence.ts';
import type { StoryRanges } from '#core/trials/story-ranges.ts';
import type { Story, Trial } from '#core/trials/trial.ts';
import type { Priors } from '#core/trials/priors.ts';

/** Options that every analysis of trials shares; loads in kg. */
export type AnalysisOptions = {
	referenceLoad: number;
	bestGuess: number;
	lapse: number;
	priors?: Priors;
	/** Story of the slip stage for limits; 'rises' when left out. */
	story?: Story;
};

/** What a page may ask of the worker; `id` comes back with every answer. */
export type StoriesRequest =
	| { kind: 'stories'; id: number; trials: Trial[]; options: AnalysisOptions }
	| { kind: 'ranges'; id: number; trials: Trial[]; options: AnalysisOptions }
	| { kind: 'limits'; id: number; grips: GripTrials[]; loads: number[] }
	| {
			kind: 'next';
			id: number;
			trials: Trial[];
			options: AnalysisOptions & CapOptions;
			candidates: { load: number; ropeTerm?: number }[];
	  }
	| { kind: 'lapses'; id: number; trials: Trial[]; options: AnalysisOptions }
	| { kind: 'times'; id: number; trials: Trial[]; options: TimedOptions; loads: number[] }
	| { kind: 'power'; id: number; plan: PlannedTrial[]; options: PowerOptions }
	| { kind: 'cancel'; id: number };

/** One grip's trials with its own options. */
export type GripTrials = { grip: string; trials: Trial[]; options: AnalysisOptions };

export type PowerOptions = {
	referenceLoad: number;
	truth: Truth;
	seed: number;
	runs: number;
	/** Stories to judge among; all six when left out. */
	judged?: readonly Story[];
	withOrder?: boolean;
	bar?: number;
	priors?: Priors;
};

/** What the trials of one grip say about both limits. */
export type GripLimits = {
	grip: string;
	/** Stopped trials left out, and counted as opened. */
	opening: { leftOut: OpeningLimit; opened: OpeningLimit };
	/** Under the story asked for; undefined when nothing was tried. */
	slip: SlipLimit | undefined;
	curve: CurvePoint[];
};

export type StoriesAnswer =
	| { kind: 'stories'; id: number; evidence: StoryEvidence[] }
	| { kind: 'ranges'; id: number; ranges: StoryRanges }
	| { kind: 'limits'; id: number; limits: GripLimits[] }
	| { kind: 'next'; id: number; candidates: Candidate[] }
	| { kind: 'lapses'; id: number; rows: LapseRow[] }
	| { kind: 'times'; id: number; limit: TimedOpeningLimit; curve: TimePoint[] }
	| { kind: 'progress'; id: number; done: number; of: number; tally?: Tally }
	| { kind: 'power'; id: number; tally: Tally }
	| { kind: 'cancelled'; id: number }
	| { kind: 'failed'; id: number; message: string };
