import { columns, required } from './columns.ts';
import type { Column } from './columns.ts';
import { conversionFrom } from './units.ts';
import { unguardFormulas } from './formula-guard.ts';

/** A column found in a file: where, and how its numbers become the notebook's. */
export type Found = { column: Column; at: number; convert: (value: number) => number };

export type Header = {
	found: Found[];
	/** Things to say about single columns, by header. */
	remarks: { header: string; reason: string }[];
	/** Columns without which nothing can be read. */
	missing: string[];
};

/** Finds out which of a file's columns hold what, by name and unit, in any order. */
export function matchHeader(cells: readonly string[]): Header {
	const names = new Map<string, Column>();
	for (const column of columns) {
		for (const name of [split(column.header).name, ...(column.also ?? [])]) {
			// Our own names come first, so another column's second name never takes one away.
			if (!names.has(name)) names.set(name, column);
		}
	}
	for (const column of columns) names.set(split(column.header).name, column);

	const found: Found[] = [];
	const remarks: Header['remarks'] = [];
	for (const [at, cell] of cells.entries()) {
		const header = unguardFormulas(cell).replace(/^\ufeff/, '');
		if (header.trim() === '') continue;
		const { name, unit } = split(header);
		const column = names.get(name) ?? names.get(split(header.trim()).name);
		const say = (reason: string) => remarks.push({ header, reason });
		if (!column) say('is no column we know; it stays out');
		else if (found.some((other) => other.column === column)) {
			say('stands twice; the first is read');
		} else {
			const dimension = column.cell.type === 'number' ? column.cell.dimension : undefined;
			const convert = unit && dimension ? conversionFrom(dimension, unit) : same;
			if (convert) found.push({ column, at, convert });
			else say(`is in ${unit}, which cannot be converted; it stays out`);
		}
	}
	const missing = required
		.filter((field) => !found.some(({ column }) => column.field === field))
		.map((field) => columns.find((column) => column.field === field)!.header);
	return { found, remarks, missing };
}

const same = (value: number): number => value;

/** Takes the unit off a header: "Net load (lb)", "net load [lb]" and "net_load_lb" alike. */
function split(header: string): { name: string; unit: string | null } {
	const plain = header
		.trim()
		.toLowerCase()
		.replace(/[_\s]+/g, ' ');
	const bracket = /^(.*?)\s*[[(]\s*([^\])]*?)\s*[\])]$/.exec(plain);
	if (bracket) return { name: bracket[1]!, unit: bracket[2] || null };
	const behind = /^(.*\S)[ ,/]+(kg|kgf|lb|lbs|lbf|n|deg|°|mm|cm|mm2|mm²|cm2|s|sec|min)$/.exec(
		plain
	);
	return behind
		? { name: behind[1]!.replace(/[ ,/]+$/, ''), unit: behind[2]! }
		: { name: plain, unit: null };
}
