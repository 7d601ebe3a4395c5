/** Letters as people type them: no case, no accents, a plain hyphen and apostrophe. */
export function plainLetters(text: string): string {
	return text
		.toLowerCase()
		.normalize('NFD')
		.replace(/\p{M}/gu, '')
		.replace(/[‐-―−]/g, '-')
		.replace(/[’‘]/g, "'");
}

/** Says whether every word looked for is in a text (in plain letters). */
export function matches(text: string, words: readonly string[]): boolean {
	return words.every((word) => text.includes(word));
}

/** The words of what was typed. */
export function wordsOf(typed: string): string[] {
	return plainLetters(typed)
		.split(/\s+/)
		.filter((word) => word !== '');
}
