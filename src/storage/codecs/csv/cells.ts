import type { Cell } from './columns.ts';
import { guardFormulas, unguardFormulas } from './formula-guard.ts';
import { readNumber } from './read-number.ts';
import { conversionFrom } from './units.ts';
import { wordOf } from './words.ts';

export type Value = string | number | boolean | null;

/** Writes a value as the text of a cell; quotes come later. */
export function cellText(cell: Cell, value: Value): string {
	if (value === null) return '';
	if (cell.type === 'moment') return new Date(value as number).toISOString();
	if (typeof value === 'boolean') return value ? 'yes' : 'no';
	// String() gives the shortest digits that read back as the very same number.
	if (typeof value === 'number') return String(value);
	return cell.type === 'word' ? value : guardFormulas(value);
}

/** Reads a cell's text, or says why it cannot be read. An empty cell is null, or empty text. */
export function readCell(
	cell: Cell,
	field: string,
	raw: string,
	convert: (value: number) => number
): { value: Value } | { fault: string } {
	if (cell.type === 'text') return { value: unguardFormulas(raw) };
	if (cell.type === 'text-or-null') return { value: raw === '' ? null : unguardFormulas(raw) };
	const plain = raw.trim();
	if (plain === '') return { value: null };
	if (cell.type === 'day') return { value: readDay(plain) };
	if (cell.type === 'word') return { value: wordOf(field, plain) };
	if (cell.type === 'yes-no') {
		const yes = wordOf('yes-no', plain);
		return yes === 'yes' || yes === 'no' ? { value: yes === 'yes' } : fault(plain, 'yes or no');
	}
	if (cell.type === 'moment') {
		const time = Date.parse(plain);
		return Number.isNaN(time)
			? fault(plain, 'a time such as 2026-03-09T18:30:00Z')
			: { value: time };
	}
	const read = readNumber(plain);
	if (!read) return fault(plain, 'a number');
	if (read.unit === null) return { value: convert(read.value) };
	const own = cell.dimension && conversionFrom(cell.dimension, read.unit);
	return own
		? { value: own(read.value) }
		: { fault: `is in ${read.unit}, which is no unit for it` };
}

/** 9.3.2026 is day first wherever dots are used; with slashes nobody can tell, so it stays unread. */
function readDay(plain: string): string {
	const dotted = /^(\d{1,2})\.\s?(\d{1,2})\.\s?(\d{4})$/.exec(plain);
	if (dotted) {
		const [, day, month, year] = dotted;
		return `${year}-${month!.padStart(2, '0')}-${day!.padStart(2, '0')}`;
	}
	return /^\d{4}-\d{2}-\d{2}(?=[T ])/.exec(plain)?.[0] ?? plain;
}

function fault(found: string, wanted: string): { fault: string } {
	const shown = found.length > 40 ? found.slice(0, 40) + '…' : found;
	return { fault: `is “${shown}”, not ${wanted}` };
}
