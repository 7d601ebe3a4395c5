import { dsvFormat } from 'd3';

export type Separator = ',' | ';' | '\t';

/** A table's cells, and the rows whose quotes are broken (counted from 1). */
export type Table = {
	rows: string[][];
	separator: Separator;
	broken: { row: number; reason: string }[];
};

/**
 * Reads RFC 4180 text, with comma, semicolon or tab. Row numbers are those of a spreadsheet: a
 * cell of several lines counts as one row, an empty line as an empty row, and a first line such as
 * `sep=;` as none.
 */
export function parseRows(text: string): Table {
	const marked = /^sep=([,;\t])\r?\n/.exec(text);
	const separator = (marked?.[1] as Separator | undefined) ?? findSeparator(text);
	const body = marked ? text.slice(marked[0].length) : text;
	// Rows only: the object form builds its code from text, which our content policy forbids.
	const rows = dsvFormat(separator).parseRows(body);
	return { rows, separator, broken: brokenQuotes(body, separator) };
}

/** The sign that stands most often in the first line, outside quotes. */
function findSeparator(text: string): Separator {
	const counts: Record<Separator, number> = { ',': 0, ';': 0, '\t': 0 };
	let quoted = false;
	for (const sign of text.slice(0, 65_536)) {
		if (sign === '"') quoted = !quoted;
		else if (!quoted && (sign === '\n' || sign === '\r')) break;
		else if (!quoted && sign in counts) counts[sign as Separator]++;
	}
	const separators: Separator[] = [',', ';', '\t'];
	return separators.reduce((best, next) => (counts[next] > counts[best] ? next : best));
}

/**
 * Finds quotes that the parser would read past without a word: one never closed, and text after a
 * closing one.
 */
function brokenQuotes(text: string, separator: Separator): Table['broken'] {
	const broken: Table['broken'] = [];
	let row = 1;
	let at = 0;
	while (at < text.length) {
		if (text[at] === '"') {
			const opened = row;
			at++;
			for (;;) {
				const close = text.indexOf('"', at);
				if (close < 0) {
					broken.push({
						row: opened,
						reason: 'A quote is opened and never closed; nothing after it can be read.'
					});
					return broken;
				}
				at = close + 1;
				if (text[at] !== '"') break;
				at++;
			}
			const next = text[at];
			if (next !== undefined && next !== separator && next !== '\n' && next !== '\r') {
				broken.push({ row, reason: 'Text follows a closing quote.' });
			}
		}
		// On to the end of the cell.
		while (at < text.length && text[at] !== separator && text[at] !== '\n' && text[at] !== '\r')
			at++;
		if (text[at] === '\r' && text[at + 1] === '\n') at++;
		if (text[at] === '\n' || text[at] === '\r') row++;
		at++;
	}
	return broken;
}
