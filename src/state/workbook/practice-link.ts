/** What a practice link carries; a seed makes the same problem on every machine. */
export type PracticeLink = { family: string; arrangement: number | undefined; seed: number };

export const practiceVersion = 1;
const largestSeed = 999_999;

/** A whole number from 1 that a seed may be; undefined for anything else. */
export function readSeed(text: string): number | undefined {
	const seed = Number(text.trim());
	return /^\d{1,6}$/.test(text.trim()) && seed >= 1 && seed <= largestSeed ? seed : undefined;
}

export function writePractice({ family, arrangement, seed }: PracticeLink): string {
	const query = new URLSearchParams({ v: String(practiceVersion), family, seed: String(seed) });
	if (arrangement !== undefined) query.set('a', String(arrangement));
	return query.toString();
}

/**
 * Reads a practice link.
 *
 * @param query - what follows the question mark
 * @param families - ids there are
 * @returns the link; undefined for an empty query; a sentence for each thing that was not as written
 */
export function readPractice(
	query: string,
	families: readonly string[]
): { link: PracticeLink | undefined; notes: string[] } {
	const given = new URLSearchParams(query);
	const notes: string[] = [];
	if ([...given.keys()].length === 0) return { link: undefined, notes };
	if (Number(given.get('v')) > practiceVersion)
		notes.push('This link was written by a newer version of this page; reload to get it.');
	const wanted = given.get('family') ?? '';
	const family = families.includes(wanted) ? wanted : families[0]!;
	if (family !== wanted) notes.push(`The link’s family “${wanted}” is not known here.`);
	const seed = readSeed(given.get('seed') ?? '');
	if (seed === undefined)
		notes.push('The link’s problem number is no whole number from 1 to 999999; number 1 is shown.');
	const a = given.get('a');
	const arrangement = a !== null && /^\d{1,2}$/.test(a) ? Number(a) : undefined;
	return { link: { family, arrangement, seed: seed ?? 1 }, notes };
}
