/** One column of a table of curves: its name, its unit in plain letters, and its cells. */
export type CurveColumn = {
	name: string;
	/** 'kg', 'mm2', 'deg', 's'; 'ratio' for a plain number; left out for words. */
	unit?: string;
	cells: readonly (number | string | undefined)[];
};

/**
 * Writes curves as CSV (RFC 4180): one header row with units, a comma between cells, CR LF after
 * each row. Numbers are plain, with a decimal point and no thousands mark; a number that is not
 * finite, and a cell that is missing, are left empty.
 *
 * @param columns - all of one length
 * @returns the file's text; letters outside ASCII are left to the names
 */
export function writeCurves(columns: readonly CurveColumn[]): string {
	const rows = columns[0]?.cells.length ?? 0;
	const short = columns.find(({ cells }) => cells.length !== rows);
	if (short) throw new RangeError(`${short.name} must have ${rows} cells`);
	const header = columns.map(({ name, unit }) => quoted(unit ? `${name} (${unit})` : name));
	const lines = Array.from({ length: rows }, (_, row) =>
		columns.map(({ cells }) => written(cells[row]))
	);
	return [header, ...lines].map((cells) => cells.join(',') + '\r\n').join('');
}

function written(cell: number | string | undefined): string {
	if (cell === undefined) return '';
	return typeof cell === 'string' ? quoted(cell) : plain(cell);
}

/** Twelve digits and never an exponent, so that every table program reads the same number. */
function plain(value: number): string {
	if (!Number.isFinite(value)) return '';
	const text = String(Number(value.toPrecision(12)));
	return text.includes('e') ? value.toFixed(20).replace(/\.?0+$/, '') : text;
}

/** Quotes where the format asks for it. */
function quoted(text: string): string {
	return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
