import type { BenchKind, ForceUnit } from './bench-rows.ts';

/** All inputs of the bench page. */
export type Bench = { kind: BenchKind; unit: ForceUnit; area: string; text: string };

export const benchVersion = 1;
export const emptyBench: Bench = { kind: 'pairs', unit: 'N', area: '250', text: '' };
/** Longer data make links that programs cut off. */
export const longestLinkText = 2000;

/** Writes the bench data as a query; undefined where the rows are too long for a link. */
export function writeBench({ kind, unit, area, text }: Bench): string | undefined {
	if (text.length > longestLinkText) return undefined;
	return new URLSearchParams({ v: String(benchVersion), kind, unit, area, rows: text }).toString();
}

/** Reads a bench link; undefined for an empty query. What is not known is left at its start. */
export function readBench(query: string): Bench | undefined {
	const given = new URLSearchParams(query);
	if ([...given.keys()].length === 0) return undefined;
	const kind = (['pairs', 'tilts', 'loaded'] as const).find((each) => each === given.get('kind'));
	const unit = (['N', 'kg'] as const).find((each) => each === given.get('unit'));
	return {
		kind: kind ?? emptyBench.kind,
		unit: unit ?? emptyBench.unit,
		area: (given.get('area') ?? emptyBench.area).slice(0, 20),
		text: (given.get('rows') ?? '').slice(0, longestLinkText)
	};
}
