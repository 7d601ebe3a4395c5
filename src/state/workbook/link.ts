/** The version that problem links are written in. Older ones are read for ever. */
export const problemVersion = 1;

/** What a problem's link carries: arrangement, asked quantity, and the givens as typed. */
export type ProblemLink = { arrangement?: number; ask?: string; texts: Record<string, string> };

const longest = 40;

/**
 * Writes a problem as the query of a link: `v=1`, the arrangement `a`, the asked quantity, and each
 * given as it was typed; a number without a unit is in the field's own unit (degrees for angles).
 */
export function writeProblem({ arrangement, ask, texts }: ProblemLink): string {
	const query = new URLSearchParams({ v: String(problemVersion) });
	if (arrangement !== undefined) query.set('a', String(arrangement));
	if (ask !== undefined && ask !== '') query.set('ask', ask);
	for (const [id, text] of Object.entries(texts)) if (text.trim() !== '') query.set(id, text);
	return query.toString();
}

/**
 * Reads a problem's link.
 *
 * @param query - what follows the question mark
 * @returns the problem; undefined for an empty query; a sentence for each thing that was not as written
 */
export function readProblem(query: string): { link: ProblemLink | undefined; notes: string[] } {
	const given = new URLSearchParams(query);
	const notes: string[] = [];
	if ([...given.keys()].length === 0) return { link: undefined, notes };
	const version = given.get('v');
	if (version === null || !/^\d+$/.test(version))
		notes.push('This link does not say which version wrote it; it is read as version 1.');
	else if (Number(version) > problemVersion)
		notes.push(
			'This link was written by a newer version of this page. What is known here is used; reload the page to get the newest version.'
		);
	const texts: Record<string, string> = {};
	for (const [id, text] of given) {
		if (['v', 'a', 'ask'].includes(id)) continue;
		if (text.length > longest) notes.push(`“${id}” in the link is too long and is left out.`);
		else texts[id] = text;
	}
	const link: ProblemLink = { texts };
	const arrangement = given.get('a');
	if (arrangement !== null) {
		if (/^\d{1,3}$/.test(arrangement)) link.arrangement = Number(arrangement);
		else notes.push('The arrangement in the link is not a number; the first one is shown.');
	}
	const ask = given.get('ask');
	if (ask !== null) link.ask = ask;
	return { link, notes };
}
