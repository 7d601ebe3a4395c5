import { citations, type CitationKey } from './citations.ts';
import type { Citation } from './types.ts';

export { rowOf } from './row-of.ts';

/** Says whether a word is a citation key. */
export function isCitationKey(word: string): word is CitationKey {
	return Object.hasOwn(citations, word);
}

/** The work behind a key; a RangeError for a key that nobody keeps. */
export function citationOf(key: string): Citation {
	if (!isCitationKey(key)) throw new RangeError(`citation: no entry "${key}"`);
	return citations[key];
}
