/**
 * What counts as what was seen, as margins without unit. Margin is the smaller of slip and strength.
 * Chosen for this search, not measured: a hand feels no difference smaller than a few percent.
 */
export const thresholds = {
	/** Slipped: the slip margin is below this. */
	slippedBelow: 0.98,
	/** Held: the margin is at least this. */
	heldFrom: 1,
	/** Barely held: the margin lies between heldFrom and this. */
	barelyTo: 1.1,
	/** Easier: the slip margin is at least this many times the other go's, and no finger opens. */
	easierBy: 1.02,
	/** The fingers opened: the strength margin is below this, and the slip margin at least heldFrom. */
	openedBelow: 0.98
} as const;

/** A go must be met by more than this, as a share of the margin: more than rounding, no physics. */
export const roundingClearance = 1e-9;

/** How many fitting set-ups are kept to choose the shown one from, and how many are handed back. */
export const keptFits = 2000;
export const shownFits = 5;
