import { citations, type CitationKey } from '#reference/citations.ts';
import type { Citation, Reading, Status } from '#reference/types.ts';

export const marks: Record<Status, string> = {
	seen: 'read in its source',
	derived: 'worked out from read values',
	memory: 'from memory',
	assumed: 'assumed, not measured',
	'common practice': 'common practice, no source'
};

export const readings: Record<Reading, string> = {
	seen: 'read',
	'abstract seen': 'abstract or excerpt read',
	'seen second-hand': 'read through another source',
	'title seen': 'title seen only',
	memory: 'from memory'
};

/** The works in the order of their authors. */
export const works: readonly [CitationKey, Citation][] = (
	Object.entries(citations) as [CitationKey, Citation][]
).sort(([, a], [, b]) => a.authors.localeCompare(b.authors) || (a.year ?? 0) - (b.year ?? 0));

/** A work in two words, for a line that points to it. */
export function shortWork(key: CitationKey): string {
	const { authors, year }: Citation = citations[key];
	const first = authors.split(/,| and | & /)[0]!.trim();
	return year === null ? first : `${first} ${year}`;
}
