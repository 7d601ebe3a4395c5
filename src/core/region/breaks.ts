import type { Interval } from '../types.ts';

/** The window at one value of the axis. */
export type Column = { value: number; intervals: Interval[] };

/** Two columns a rounding apart, with a break between them. */
export type BreakPair = [left: Column, right: Column];

/** Columns closer than this share of the swept range count as one place. */
const closeness = 1e-15;

/**
 * Finds where the shape of the window changes between columns: how many intervals there are, and
 * what ends each of them. Halves the space between two unlike columns until nothing is left.
 * @param columns neighbours in order
 * @param columnAt works out the window at one more value
 * @returns for each break the last column before and the first column after it
 * Valid for: breaks that leave unlike columns on their two sides.
 * Source: derived.
 * Example: columns that hold up to a slope of 0.57 and not beyond give one pair around 0.57.
 */
export function findBreaks(columns: Column[], columnAt: (value: number) => Column): BreakPair[] {
	const pairs: BreakPair[] = [];
	const width = columns.at(-1)!.value - columns[0]!.value;
	for (let i = 1; i < columns.length; i++)
		narrow(columns[i - 1]!, columns[i]!, width * closeness, columnAt, pairs);
	return pairs;
}

function narrow(
	left: Column,
	right: Column,
	close: number,
	columnAt: (value: number) => Column,
	pairs: BreakPair[]
): void {
	while (!alike(left, right)) {
		const value = (left.value + right.value) / 2;
		if (right.value - left.value <= close || value <= left.value || value >= right.value) {
			pairs.push([left, right]);
			return;
		}
		const middle = columnAt(value);
		if (alike(middle, left)) left = middle;
		else if (alike(middle, right)) right = middle;
		else {
			narrow(left, middle, close, columnAt, pairs);
			left = middle;
		}
	}
}

function alike(a: Column, b: Column): boolean {
	return (
		a.intervals.length === b.intervals.length &&
		a.intervals.every((interval, i) => {
			const other = b.intervals[i]!;
			return interval.lowerLimit === other.lowerLimit && interval.upperLimit === other.upperLimit;
		})
	);
}
