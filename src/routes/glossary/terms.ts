import { frictionTerms } from './friction-terms.ts';
import { hangTerms } from './hang-terms.ts';
import { limitTerms } from './limit-terms.ts';

/** One word as this site uses it. Symbols are those of the working on Explore. */
export type Term = {
	/** Part of its address: lower case and hyphens. */
	id: string;
	word: string;
	symbol?: string;
	/** Its unit on screen; 'ratio' for a number without one. */
	unit?: string;
	meaning: string;
	/** Other entries that help. */
	see?: readonly string[];
};

export type TermGroup = { name: string; terms: readonly Term[] };

export const glossary: readonly TermGroup[] = [...hangTerms, ...frictionTerms, ...limitTerms];
