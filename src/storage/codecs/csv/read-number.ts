/**
 * Reads a number as people write it: decimal point or comma, thousands in groups, a real minus
 * sign, and perhaps its unit behind it. undefined when it is no number.
 * One sign alone is the decimal sign: 62,5 is sixty-two and a half. Of both, the last is.
 */
export function readNumber(cell: string): { value: number; unit: string | null } | undefined {
	const match = /^([+\-−]?[\d.,\s\u00a0\u202f'’]*\d[.,]?(?:e[+-]?\d+)?)\s*([a-z°%²2]*)$/i.exec(
		cell.trim()
	);
	if (!match) return undefined;
	// A space or apostrophe between digits is read only where it groups thousands.
	let digits = match[1]!
		.trim()
		.replace(/(?<=\d)[\s\u00a0\u202f'’](?=\d{3}(?!\d))/g, '')
		.replace('−', '-');
	const comma = digits.lastIndexOf(',');
	const dot = digits.lastIndexOf('.');
	if (comma >= 0 && dot >= 0) {
		const thousands = comma > dot ? '.' : ',';
		const [whole, ...rest] = digits.split(comma > dot ? ',' : '.');
		if (rest.length !== 1 || !/^[+-]?\d{1,3}([.,]\d{3})+$/.test(whole!)) return undefined;
		digits = `${whole!.replaceAll(thousands, '')}.${rest[0]}`;
	} else digits = digits.replace(',', '.');
	const value = Number(digits);
	if (digits === '' || Number.isNaN(value)) return undefined;
	return { value, unit: match[2] ? match[2].toLowerCase() : null };
}
