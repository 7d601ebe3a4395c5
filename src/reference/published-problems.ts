import rows from './published-problems.json' with { type: 'json' };

/** How a printed answer compares with the value recomputed from the same givens. */
export type Comparison =
	| 'agrees'
	| 'formula_matches'
	| 'rounded_intermediate'
	| 'no_published_answer'
	| 'source_error'
	| 'companion_error';

/** One asked quantity of a published problem: numbers only, the wording is ours. */
export type PublishedProblem = {
	/** Problem number of this project; parts share it. */
	id: string;
	/** What is asked. */
	part: string;
	title: string;
	/** Citation key. */
	source: string;
	/** Place in the source. */
	locator: string;
	/** Whether the numbers were seen in the source or are from memory. */
	seen: string;
	/** Family of the workbook, and its givens in SI and radians. */
	family: string;
	given: Record<string, number>;
	ask: string;
	/** Unit in which the answer is printed, and its factor to SI. */
	unit: string;
	toSi: number;
	/** The printed answer as it stands; empty when the source prints none. */
	printed: string;
	comparison: Comparison;
	/** How a printed answer is rounded or wrong. */
	remark: string;
};

/** Published friction problems with their printed answers; each row names its source. */
export const publishedProblems: PublishedProblem[] = rows.map(({ verdict, given, ...rest }) => ({
	...rest,
	given: Object.fromEntries(Object.entries(given).filter(([, value]) => value !== undefined)),
	comparison: verdict as Comparison
}));
