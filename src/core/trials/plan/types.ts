import type { CapTrial } from './caps.ts';

/** Where the rope leads: away from the wall, toward it, or straight up (or no rope at all). */
export type RopeSide = 'away' | 'toward' | 'plumb';

/** How the plan orders its trials. */
export type Design = 'shuffled' | 'abba' | 'up-and-down';

/** What one hang of the plan asks for: a grip, a net load in kg, and where the rope leads. */
export type Condition = { grip: string; load: number; ropeSide: RopeSide };

/** Loads for one grip, and what caps them. Loads in kg. */
export type GripChoice = {
	/** Name or id of the grip. */
	grip: string;
	/** Net loads to try, kg. */
	loads: number[];
	/** The person's own maximum, kg: never exceeded. */
	ownMaximum: number;
	/** Best guess of the load at which the fingers open, kg. */
	bestGuess: number;
	/** Trials with this grip so far, oldest first; left-out ones and warm-ups too. */
	history: CapTrial[];
};

/** Everything a plan is made from. */
export type PlanChoice = {
	/** Whole number that fixes every shuffle. */
	seed: number;
	design: Design;
	grips: GripChoice[];
	ropeSides: RopeSide[];
	/** Blocks (shuffled), ABBA quads, or trials (up-and-down). */
	repeats: number;
	/** The hang repeated at start, middle and end; null for none. */
	check: Condition | null;
	/** Step of the up-and-down design as a share of the load, for example 0.06. */
	step: number;
	/** Smallest change of load the plates allow, kg, for the warm-up ladder. */
	increment: number;
	targetSeconds: number;
	restSeconds: number;
	/** Time to chalk, load and get on, s a hang. */
	setupSeconds: number;
	/** The session these trials belong to, as numbered in the histories. */
	session: number;
	/** Whether the person is marked adult. */
	adult: boolean;
};

/** One line of the plan. */
export type PlannedTrial = {
	/** 1 … planned number; null for a warm-up, which is not analysed. */
	number: number | null;
	kind: 'warm-up' | 'check' | 'test';
	/** Block or quad, counted from 1; null outside blocks. */
	block: number | null;
	grip: string;
	/** Net load, kg; null where the trial before decides it (up-and-down). */
	load: number | null;
	ropeSide: RopeSide;
	/** Order term; null for a warm-up. */
	order: number | null;
};

/** How far load and rope side are tangled with order in a plan: Pearson correlations. */
export type Tangle = {
	load: number;
	ropeSide: number;
	/** The same within each grip, since each grip is looked at alone. */
	grips: { grip: string; load: number; ropeSide: number }[];
};

/** A plan as kept: what it was made from, its lines, and what was fixed when it was made. */
export type Plan = {
	choice: PlanChoice;
	trials: PlannedTrial[];
	/** Trials after the warm-up. */
	plannedNumber: number;
	/** Mean of the rope term over the planned trials; null where the slope is not known. */
	meanRopeTerm: number | null;
	tangle: Tangle;
	/** Shuffles looked at. */
	shuffles: number;
	/** Whether correlations under 0.1 were promised for a plan of this size. */
	promised: boolean;
	durationSeconds: number;
};
