import type { CitationKey } from '#reference/citations.ts';

/**
 * The published problems' sources are citation keys: a test of the reference room holds them to it,
 * so the long list of works need not be fetched here.
 */
export function isCitationKey(word: string): word is CitationKey {
	return word !== '';
}
