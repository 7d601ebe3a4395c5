import type { FrictionLaw, Hang, Load } from '../types.ts';
import type { NoteKey, ReasonKey } from './words.ts';

/** What a person saw in one go. */
export type Outcome =
	| { kind: 'held' }
	| { kind: 'barely' }
	| { kind: 'slipped' }
	| { kind: 'opened' }
	/** Easier than the go with this order number. */
	| { kind: 'easier'; than: number };

/** One go: which grip, net load as a multiple of body mass, and its place in the session. */
export type Observation = { grip: string; load: number; order: number; outcome: Outcome };

/** Both ends are allowed; equal ends keep a number fixed. SI units and radians. */
export type Range = { from: number; to: number };

/** A grip of the story and what is supposed about it: m² per finger, N per hand. */
export type StoryGrip = { id: string; fingers: number; padArea: Range; referenceForce: Range };

/** The stories about the friction ratio, in the order they are explained. */
export const lawStories = [
	'constant',
	'adhesion',
	'powerFalling',
	'powerRising',
	'deformation',
	'film'
] as const;
export type LawStory = (typeof lawStories)[number];

/** What may come on top of a law: nothing, a leaning rope, a steady push, a drift from go to go. */
export const additions = ['none', 'rope', 'push', 'drift'] as const;
export type Addition = (typeof additions)[number];

/** Where numbers are drawn or solved: rad, N, share of the ratio a go, and the laws' own units. */
export type SearchRanges = {
	slope: Range;
	/** Slip margin of the barely held go, from which the slope is solved. */
	barelyMargin: Range;
	ropeAngle: Range;
	push: Range;
	drift: Range;
	laws: Record<LawStory, Partial<Record<LawField, Range>>>;
};

export type LawField =
	| 'coefficient'
	| 'shearStrength'
	| 'referencePressure'
	| 'exponent'
	| 'deformation'
	| 'filmCoefficient'
	| 'breakthroughPressure'
	| 'sharpness';

/** What to search for. What is left out is completed by completeRequest. */
export type SearchRequest = {
	observations: readonly Observation[];
	grips: readonly StoryGrip[];
	seed: number;
	/** kg; default 70. */
	bodyMass?: number;
	hands?: Hang['hands'];
	pad?: Omit<Hang['grip'], 'fingers' | 'contact'>;
	strengthTest?: Omit<Hang['strength'], 'referenceForce'>;
	/** Solved candidates for each law with each addition; default 20 000. */
	candidates?: number;
	laws?: readonly LawStory[];
	additions?: readonly Addition[];
	ranges?: SearchRanges;
};

/** One number of a set-up and where it was looked for. */
export type Parameter = Range & {
	key: LawField | 'ropeAngle' | 'push' | 'drift' | 'padArea' | 'slope' | 'referenceForce';
	/** The grip it belongs to, where it belongs to one. */
	grip?: string;
	unit: '1' | 'Pa' | 'rad' | 'N' | 'm²';
	/** Drawn evenly from its range, or solved from what was seen. */
	how: 'drawn' | 'solved';
};

/** A set-up found by the search, ready for evaluateHang. */
export type FoundSetup = {
	bodyMass: number;
	/** rad */
	slope: number;
	/** The law in the first go; only a drift makes later goes differ. */
	law: FrictionLaw;
	ropeAngle: number;
	push: number;
	/** Change of the ratio's logarithm from one go to the next, about its share. */
	drift: number;
	grips: { id: string; fingers: number; padArea: number; referenceForce: number; hang: Hang }[];
	trials: {
		order: number;
		grip: string;
		/** kg */
		netMass: number;
		hang: Hang;
		load: Load;
		slipMargin: number;
		strengthMargin: number;
		met: boolean;
	}[];
	/**
	 * How far, as a share of the margin, the tightest go lies from not being as it was seen;
	 * negative where a go is not met.
	 */
	clearance: number;
};

/** How far one number of the shown set-up may move while all others stay, the slope too. */
export type Movement = Parameter & {
	value: number;
	/** Every go is still as seen between these. */
	moves: Range;
	/** Smallest and largest value among all fitting set-ups. */
	found: Range;
};

/** What the search says of one law with one addition. */
export type StoryResult = {
	law: LawStory;
	addition: Addition;
	drawn: number;
	/** Candidates for which slope could be solved. */
	solved: number;
	fitting: number;
	/**
	 * fitting/solved: how finely it must be tuned within the stated ranges. It is no probability.
	 * 0 with the verdict 'can' where only moving the closest candidate step by step made one fit.
	 */
	share: number;
} & (
	| {
			verdict: 'can';
			/** A fitting set-up to show: a middling one that fits clearly. */
			example: FoundSetup;
			/** The first other fitting set-ups; see shownFits. */
			others: FoundSetup[];
			movements: Movement[];
			notes: { key: NoteKey; sentence: string }[];
	  }
	| {
			verdict: 'cannot';
			/** Order of the go that was missed most often, and in which share of the candidates. */
			unmet: { order: number; share: number } | undefined;
			/** Share of the candidates that miss each go, as the observations are listed. */
			missed: number[];
			/** The set-up that meets most, and the orders of the goes it misses. */
			closest: { setup: FoundSetup; unmet: number[] } | undefined;
			reason: ReasonKey;
			sentence: string;
			/** The reason holds for every set-up within the ranges, not only for those tried. */
			proven: boolean;
	  }
);

/** Where a running search is. */
export type SearchProgress = {
	solved: number;
	/** How many candidates will be solved at most. */
	total: number;
	law: LawStory;
	addition: Addition;
	/** Present when a law with an addition has just been finished. */
	finished?: StoryResult;
};
