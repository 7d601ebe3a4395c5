import type { CitationKey } from '#reference/citations.ts';
import { textbookCitations } from '#reference/citations/textbooks.ts';
import type { Status } from '#reference/types.ts';
import { fieldLabels, fieldUnits, isRange, quantityText } from './value-text.ts';

/** One fact, claim or number of the reference tables, ready to be read. */
export type Entry = {
	id: string;
	what: string;
	/** Its number or finding; empty where the words say it all. */
	value: string;
	/** Everything else that the row says: conditions, people, remarks. */
	details: readonly string[];
	status: Status;
	source: readonly CitationKey[];
};

/** Entries under one heading, and a line on where they are used. */
export type Group = { heading: string; used?: string; entries: readonly Entry[] };

type Loose = Record<string, unknown>;

/** Fields that name a row, the best first; some tables need two. */
const naming = ['what', 'name', 'idea', 'text', 'use', 'surface', 'pair', 'contact', 'people'];
const alsoNaming = ['test', 'grip', 'measure', 'finger', 'joint', 'tendon', 'key'];
/** Fields that add to the name, because the table has a row for each. */
const qualifying = ['sex', 'state', 'condition', 'grip', 'finger', 'joint', 'tendon'];
/** Fields that are not for reading: pointers, or said elsewhere. */
const silent = new Set([
	...['key', 'source', 'status', 'unit', 'where', 'line', 'boardKey', 'expressibleInHang', 'field'],
	...['value', 'range', 'spread', 'parameters', 'hypothesis', 'start', 'mean']
]);

const isRow = (value: unknown): value is Loose =>
	typeof value === 'object' && value !== null && 'source' in value && 'status' in value;

/** Every row that a reference module shows, with the numbers that a row carries as rows of their own. */
export function entriesOf(exports: Loose): Entry[] {
	return Object.entries(exports).flatMap(([name, table]) =>
		(Array.isArray(table) ? table : [table])
			.filter(isRow)
			.flatMap((row) => [
				entryOf(name, row),
				...(Array.isArray(row.parameters) ? row.parameters.filter(isRow) : []).map((inner) =>
					entryOf(name, { ...inner, key: `${String(row.key)}-${String(inner.field)}` }, nameOf(row))
				)
			])
	);
}

function entryOf(table: string, row: Loose, owner?: string): Entry {
	const named = nameOf(row);
	return {
		id: `${table}-${String(row.key)}`,
		what: owner ? `${owner}: ${named}` : named,
		value: valueOf(row),
		details: detailsOf(row),
		status: row.status as Status,
		source: row.source as readonly CitationKey[]
	};
}

function nameField(row: Loose): string {
	return [...naming, ...alsoNaming].find((field) => typeof row[field] === 'string') ?? 'key';
}

function nameOf(row: Loose): string {
	const field = nameField(row);
	const [work] = row.source as readonly CitationKey[];
	// A row about a book is called by the book.
	if ('licence' in row && work && work in textbookCitations) {
		return textbookCitations[work as keyof typeof textbookCitations].title;
	}
	const more = qualifying.filter(
		(other) => other !== field && typeof row[other] === 'string' && row[other] !== 'not stated'
	);
	return [row[field], ...more.map((other) => row[other])].map(String).join(', ');
}

function valueOf(row: Loose): string {
	const unit = typeof row.unit === 'string' ? row.unit : '1';
	const value = row.value ?? row.start ?? row.mean;
	const parts: string[] = [];
	if (typeof value === 'number') parts.push(quantityText(value, unit));
	if (typeof row.spread === 'number') parts.push(`± ${quantityText(row.spread, unit)}`);
	// A curve's range is where it holds, not a value.
	if (isRange(row.range) && !('terms' in row)) {
		const range = quantityText(row.range, unit);
		parts.push(parts.length > 0 ? `(${range})` : range);
	} else if (typeof row.range === 'string') parts.push(row.range);
	return parts.join(' ');
}

function detailsOf(row: Loose): string[] {
	const field = nameField(row);
	const holds = 'terms' in row && isRange(row.range) ? [`for ${quantityText(row.range, '1')}`] : [];
	const said = Object.entries(row).flatMap(([name, value]) => {
		if (silent.has(name) || name === field || qualifying.includes(name)) return [];
		const text = textOf(name, value, typeof row.unit === 'string' ? row.unit : '1');
		if (text === '') return [];
		// What stands as a sentence of its own needs no name before it.
		const free = ['note', 'conditions', 'finding', 'standing', 'reply', 'support', 'remarks'];
		return [(free.includes(name) ? text : `${labelOf(name)}: ${text}`).replace(/\.$/, '')];
	});
	return [...holds, ...said];
}

function labelOf(name: string): string {
	return fieldLabels[name] ?? name.replace(/([A-Z])/g, (letter) => ` ${letter.toLowerCase()}`);
}

function textOf(name: string, value: unknown, unit: string): string {
	if (value === null || value === undefined || value === '') return '';
	if (typeof value === 'string') return value;
	if (typeof value === 'boolean') return value ? 'yes' : 'no';
	if (typeof value === 'number' || isRange(value)) {
		return quantityText(value, fieldUnits[name] ?? (inRowUnit.has(name) ? unit : '1'));
	}
	if (Array.isArray(value)) return value.map((one) => textOf(name, one, unit)).join(', ');
	return Object.entries(value)
		.map(([inner, one]) =>
			// Shares are plain numbers by finger; a finger's name is also the name of one of its bones.
			/^(shares|spread)$/.test(name)
				? `${inner} ${textOf('share', one, '1')}`
				: `${labelOf(inner)} ${textOf(inner, one, unit)}`
		)
		.join(', ');
}

/** Number fields that share their row's unit; the others are counts and plain numbers. */
const inRowUnit = new Set(['mean', 'p5', 'p50', 'p95', 'men', 'women']);
