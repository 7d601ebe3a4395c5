import type { Draft, Problem, Progress } from '../notebook/draft.ts';
import { oddTrials } from '../notebook/odd-trials.ts';
import { emptyNotebook } from '../notebook/records.ts';
import type { Notebook } from '../notebook/records.ts';
import { columns } from './columns.ts';
import { matchHeader } from './match-header.ts';
import { parseRows } from './parse-rows.ts';
import { RowReader } from './row-reader.ts';

/**
 * Reads trials from CSV text, ours or another's: rows that cannot be trials are named with the
 * reason and stay out; odd ones are flagged and come in. Nothing is written anywhere.
 *
 * `today` (2026-03-09) stands in where a file gives no day.
 */
export function readCsv(text: string, today: string, progress: Progress = () => {}): Draft {
	const problems: Problem[] = [];
	const draft: Draft = {
		format: 'csv',
		notebook: emptyNotebook(),
		problems,
		rows: 0,
		refused: 0
	};
	const { rows, broken } = parseRows(text.replace(/^\ufeff/, ''));
	const aboutFile = (severity: Problem['severity'], field: string | null, reason: string) =>
		problems.push({ severity, row: null, field, reason });

	const header = matchHeader(rows[0] ?? []);
	for (const { header: field, reason } of header.remarks) aboutFile('flagged', field, reason);
	const data = rows.slice(1);
	if (header.missing.length > 0) {
		const filled = data.filter((cells) => !isEmpty(cells)).length;
		draft.rows = filled;
		draft.refused = filled;
		if ((rows[0] ?? []).length <= 1) {
			const reason = 'Only one column was found: commas, semicolons or tabs part the cells.';
			aboutFile('refused', null, reason);
		}
		for (const name of header.missing) {
			aboutFile('refused', name, 'This column is missing; without it no row is a trial.');
		}
		return draft;
	}

	const faults = new Map(broken.map(({ row, reason }) => [row, reason]));
	const reader = new RowReader(header.found, today, draft);
	for (const [index, cells] of data.entries()) {
		if (index % 200 === 0) progress(index, data.length);
		if (isEmpty(cells)) continue;
		const row = index + 2;
		draft.rows++;
		const fault = faults.get(row);
		if (fault) {
			draft.refused++;
			problems.push({ severity: 'refused', row, field: null, reason: fault });
		} else {
			const extra = cells.slice(rows[0]!.length).filter((cell) => cell !== '').length;
			if (extra > 0) {
				const reason = `has ${extra} more ${extra === 1 ? 'cell' : 'cells'} than the header`;
				problems.push({ severity: 'flagged', row, field: null, reason });
			}
			if (!reader.read(cells, row)) draft.refused++;
		}
	}
	progress(data.length, data.length);
	keepUsed(draft.notebook);
	if (faults.has(1)) aboutFile('flagged', null, `Header: ${faults.get(1)}`);
	for (const reason of reader.assumed()) aboutFile('flagged', null, reason);
	for (const problem of oddTrials(draft.notebook, reader.rows, headerOf)) problems.push(problem);
	return draft;
}

/** A trial’s field as the header of our own files calls it. */
function headerOf(field: string): string {
	return columns.find((one) => one.part === 'trial' && one.field === field)?.header ?? field;
}

/** A person, hold, grip or session that only refused rows spoke of does not come in. */
function keepUsed(notebook: Notebook): void {
	const used = (list: Record<string, unknown>[], field: string) =>
		new Set(list.map((record) => record[field]));
	const sessions = used(notebook.trials, 'sessionId');
	notebook.sessions = notebook.sessions.filter(({ id }) => sessions.has(id));
	const people = used(notebook.sessions, 'personId');
	const holds = used(notebook.sessions, 'holdId');
	const grips = used(notebook.trials, 'gripId');
	notebook.people = notebook.people.filter(({ id }) => people.has(id));
	notebook.holds = notebook.holds.filter(({ id }) => holds.has(id));
	notebook.grips = notebook.grips.filter(({ id }) => grips.has(id));
}

function isEmpty(cells: readonly string[]): boolean {
	return cells.every((cell) => cell.trim() === '');
}
