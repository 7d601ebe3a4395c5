/** Pairs of yes-or-no outcomes, counted. */
export type PairedTable = { both: number; onlyFirst: number; onlySecond: number; neither: number };

/**
 * Counts paired outcomes: what one and the same person did under two conditions.
 * @param pairs outcome under the first and under the second condition, true for held
 * @returns the four counts; only the two in which the outcomes differ tell the conditions apart
 * Source: fagerland2013 (table 1, for the layout).
 * Example: [[true, false], [true, true]]: both 1, onlyFirst 1.
 */
export function pairedTable(pairs: readonly (readonly [boolean, boolean])[]): PairedTable {
	const table: PairedTable = { both: 0, onlyFirst: 0, onlySecond: 0, neither: 0 };
	for (const [first, second] of pairs) {
		if (first && second) table.both += 1;
		else if (first) table.onlyFirst += 1;
		else if (second) table.onlySecond += 1;
		else table.neither += 1;
	}
	return table;
}
