import { citations, type CitationKey } from '#reference/citations.ts';
import type { Citation } from '#reference/types.ts';
import { readings } from './work-words.ts';

/** The works in the order of their authors. */
const works: readonly [CitationKey, Citation][] = (
	Object.entries(citations) as [CitationKey, Citation][]
).sort(([, a], [, b]) => a.authors.localeCompare(b.authors) || (a.year ?? 0) - (b.year ?? 0));

const signs: Record<string, string> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };
const safe = (text: string) => text.replace(/[&<>"]/g, (sign) => signs[sign]!);

/** The list items of all works, as HTML: long, and written into the page while the site is built. */
export function worksHtml(): string {
	return works
		.map(([key, { authors, year, title, where, how, note }]) => {
			const work = `${authors}${year ? ` (${year})` : ''}. ${title}. ${where}`;
			const read = `– ${readings[how]}${note ? `; ${note}` : ''}`;
			return `<li id="source-${safe(key)}">${safe(work)} <span>${safe(read)}</span></li>`;
		})
		.join('');
}
