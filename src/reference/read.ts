import { citations, type CitationKey } from './citations.ts';
import type { Citation, Row } from './types.ts';

/** Says whether a word is a citation key. */
export function isCitationKey(word: string): word is CitationKey {
	return Object.hasOwn(citations, word);
}

/** The work behind a key; a RangeError for a key that nobody keeps. */
export function citationOf(key: string): Citation {
	if (!isCitationKey(key)) throw new RangeError(`citation: no entry "${key}"`);
	return citations[key];
}

/** The row of a table with this key; a RangeError that names the keys there are. */
export function rowOf<T extends Row>(table: readonly T[], key: string): T {
	const row = table.find((candidate) => candidate.key === key);
	if (!row) {
		const keys = table.map((candidate) => candidate.key).join(', ');
		throw new RangeError(`key: no row "${key}", expected one of ${keys}`);
	}
	return row;
}
