import type { Draft, Problem, Progress } from './draft.ts';
import { migrateLists, migrations } from './migrate.ts';
import type { Migration } from './migrate.ts';
import { oddTrials } from './odd-trials.ts';
import { SCHEMA_VERSION, emptyNotebook, kinds } from './records.ts';
import type { AnyRecord, Notebook } from './records.ts';
import { validate } from './validate.ts';

export const JSON_FORMAT = 'trials-notebook';

/** Writes the whole notebook as JSON, with the version of its records; one record a line. */
export function exportJson(notebook: Notebook, exportedAt: Date): string {
	return [...jsonPieces(notebook, exportedAt)].join('');
}

/** The same record by record, so that a long notebook can be written with pauses. */
export function* jsonPieces(notebook: Notebook, exportedAt: Date): Generator<string> {
	yield `{\n\t"format": "${JSON_FORMAT}",\n\t"version": ${SCHEMA_VERSION},\n`;
	yield `\t"exportedAt": "${exportedAt.toISOString()}"`;
	for (const kind of kinds) {
		yield `,\n\t"${kind}": [`;
		for (const [place, record] of notebook[kind].entries()) {
			yield `${place > 0 ? ',' : ''}\n\t\t${JSON.stringify(record)}`;
		}
		yield notebook[kind].length > 0 ? '\n\t]' : ']';
	}
	yield '\n}\n';
}

/**
 * Reads a notebook's JSON: records that cannot be read are named and stay out, the rest is kept.
 * A file of a newer version is refused whole, since its meaning is not known here.
 */
export function readJson(
	text: string,
	progress: Progress = () => {},
	version: number = SCHEMA_VERSION,
	steps: readonly Migration[] = migrations
): Draft {
	const draft: Draft = {
		format: 'json',
		notebook: emptyNotebook(),
		problems: [],
		rows: 0,
		refused: 0
	};
	const refuse = (reason: string): Draft => {
		draft.problems.push({ severity: 'refused', row: null, field: null, reason });
		return draft;
	};
	let file: unknown;
	try {
		file = JSON.parse(text);
	} catch (error) {
		return refuse(`This is not JSON, or it was cut short: ${(error as Error).message}.`);
	}
	if (typeof file !== 'object' || file === null || Array.isArray(file)) {
		return refuse('This JSON holds no notebook.');
	}
	const found = file as Record<string, unknown>;
	if (found.format !== JSON_FORMAT) return refuse('This JSON holds no notebook of trials.');
	const from = found.version;
	if (typeof from !== 'number' || !Number.isInteger(from) || from < 1) {
		return refuse('The file does not say which version it is.');
	}
	if (from > version) {
		return refuse(
			`The file is of version ${from}; this page reads up to version ${version}. Reload the page to get the newer one, then try again.`
		);
	}
	const lists: Partial<Record<(typeof kinds)[number], unknown[]>> = {};
	for (const kind of kinds) {
		const list = found[kind];
		if (Array.isArray(list)) lists[kind] = list;
		else {
			draft.problems.push({
				severity: 'flagged',
				row: null,
				field: kind,
				reason: list === undefined ? 'The list is missing.' : 'This is not a list.'
			});
		}
	}
	readLists(migrateLists(lists, from, version, steps), draft, progress);
	return draft;
}

function readLists(
	lists: Partial<Record<(typeof kinds)[number], unknown[]>>,
	draft: Draft,
	progress: Progress
): void {
	const total = kinds.reduce((sum, kind) => sum + (lists[kind]?.length ?? 0), 0);
	const rows = new Map<string, number>();
	for (const kind of kinds) {
		const seen = new Set<string>();
		for (const [place, value] of (lists[kind] ?? []).entries()) {
			const problem = (severity: Problem['severity'], field: string, reason: string) =>
				draft.problems.push({ severity, row: place + 1, field: `${kind}.${field}`, reason });
			draft.rows++;
			if (draft.rows % 200 === 0) progress(draft.rows, total);
			const result = validate(kind, value);
			if ('faults' in result) {
				draft.refused++;
				for (const { field, reason } of result.faults) problem('refused', field, reason);
			} else if (seen.has(result.record.id)) {
				draft.refused++;
				problem('refused', 'id', 'stands twice in this list; the first is kept');
			} else {
				seen.add(result.record.id);
				if (kind === 'trials') rows.set(result.record.id, place + 1);
				(draft.notebook[kind] as AnyRecord[]).push(result.record);
				for (const field of result.unknown) {
					problem('flagged', field, 'is not known here and stays out');
				}
			}
		}
	}
	for (const problem of oddTrials(draft.notebook, rows, (field) => `trials.${field}`)) {
		draft.problems.push(problem);
	}
	progress(draft.rows, total);
}
