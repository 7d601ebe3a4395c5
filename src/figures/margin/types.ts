/** A margin at some net loads, lightest first; a margin may be 0 or Infinity. Net mass in kg. */
export type MarginSeries = {
	/** Written on the line. */
	label: string;
	/** The person's own two curves, or another case laid over them. */
	kind: 'slip' | 'strength' | 'other';
	points: readonly { netMass: number; margin: number }[];
	dashed?: boolean;
};

/** The current load, kg, and its two margins as the core gives them. */
export type MarginPoint = { netMass: number; slipMargin: number; strengthMargin: number };
