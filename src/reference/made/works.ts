import type { CitationKey } from '../citations.ts';
import works from './works.json' with { type: 'json' };

/** Each work in two words, for a line that points to it; gathered, so that such a line costs little. */
export const shortWorks: Readonly<Record<CitationKey, string>> = works;
