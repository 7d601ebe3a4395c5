import type { TabulatedRow } from '#reference/types.ts';

/** All rows of one pair of surfaces, with how far they lie apart. */
export type PairGroup = { pair: string; rows: TabulatedRow[]; starting: string; sliding: string };

/** A low and a high value as text; one number where they are the same. */
export function rangeText(range: readonly [number, number] | null): string {
	if (!range) return '–';
	const [low, high] = range;
	return low === high ? String(low) : `${low} to ${high}`;
}

function spread(ranges: (readonly [number, number] | null)[]): string {
	const all = ranges.flatMap((range) => range ?? []);
	return all.length ? rangeText([Math.min(...all), Math.max(...all)]) : '–';
}

/** Groups rows by pair, whatever the order of its two names; alphabetical. */
export function groupPairs(rows: readonly TabulatedRow[]): PairGroup[] {
	const groups = new Map<string, TabulatedRow[]>();
	for (const row of rows) {
		const key = row.pair
			.toLowerCase()
			.split(/ on |\/| and /)
			.map((each) => each.trim())
			.sort()
			.join('|');
		const known = groups.get(key);
		if (known) known.push(row);
		else groups.set(key, [row]);
	}
	return [...groups.values()]
		.map((own) => ({
			pair: own[0]!.pair,
			rows: own,
			starting: spread(own.map((row) => row.starting)),
			sliding: spread(own.map((row) => row.sliding))
		}))
		.sort((a, b) => a.pair.localeCompare(b.pair));
}
