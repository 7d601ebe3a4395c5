import { csvFormatRow } from 'd3';
import type { AnyRecord, Notebook } from '../notebook/records.ts';
import { cellText } from './cells.ts';
import type { Value } from './cells.ts';
import { columns } from './columns.ts';
import type { Part } from './columns.ts';

/**
 * Writes trials as CSV: RFC 4180 with a header, comma and CRLF; one row a trial, with everything
 * about its session, person, hold and grip. Starts with a byte-order mark, without which
 * common spreadsheets take UTF-8 for something else. Plans, and records without a trial, need JSON.
 */
export function exportCsv(notebook: Notebook): string {
	return [...csvLines(notebook)].join('');
}

/** The same line by line, so that a long notebook can be written with pauses. */
export function* csvLines(notebook: Notebook): Generator<string> {
	const byId = <T extends { id: string }>(list: T[]) => new Map(list.map((one) => [one.id, one]));
	const people = byId(notebook.people);
	const holds = byId(notebook.holds);
	const grips = byId(notebook.grips);
	const sessions = byId(notebook.sessions);
	yield '\ufeff' + line(columns.map(({ header }) => header));
	for (const trial of ordered(notebook)) {
		const session = sessions.get(trial.sessionId);
		const parts: Record<Part, AnyRecord | undefined> = {
			trial,
			session,
			person: session && people.get(session.personId),
			hold: session && holds.get(session.holdId),
			grip: grips.get(trial.gripId)
		};
		yield line(
			columns.map(({ part, field, cell }) => {
				const record = parts[part] as Record<string, Value> | undefined;
				return record ? cellText(cell, record[field] ?? null) : '';
			})
		);
	}
}

function line(cells: string[]): string {
	return csvFormatRow(cells) + '\r\n';
}

/** Trials by day of their session, session, and number. */
function ordered(notebook: Notebook) {
	const place = new Map(
		[...notebook.sessions]
			.sort((a, b) => compare(a.day, b.day) || compare(a.id, b.id))
			.map(({ id }, index) => [id, index])
	);
	return [...notebook.trials].sort(
		(a, b) =>
			(place.get(a.sessionId) ?? Infinity) - (place.get(b.sessionId) ?? Infinity) ||
			a.order - b.order ||
			compare(a.id, b.id)
	);
}

function compare(a: string, b: string): number {
	return a < b ? -1 : a > b ? 1 : 0;
}
