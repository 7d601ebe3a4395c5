import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { exportCsv } from '#storage/codecs/csv/export-csv.ts';
import { guardFormulas, unguardFormulas } from '#storage/codecs/csv/formula-guard.ts';
import { parseRows } from '#storage/codecs/csv/parse-rows.ts';
import type { Draft } from '#storage/codecs/notebook/draft.ts';
import { exportJson } from '#storage/codecs/notebook/json.ts';
import { kinds } from '#storage/codecs/notebook/records.ts';
import { flagsOf } from '#storage/codecs/notebook/flags.ts';
import type { AnyRecord, Notebook } from '#storage/codecs/notebook/records.ts';
import { readFile } from '#storage/import/read-file.ts';
import { notebooks } from './notebooks.ts';

/** Through bytes and back, as a file goes. */
const read = (text: string) => readFile(new TextEncoder().encode(text), '2000-01-01');

const byId = (notebook: Notebook) =>
	Object.fromEntries(
		kinds.map((kind) => [
			kind,
			[...(notebook[kind] as AnyRecord[])].sort((a, b) => (a.id < b.id ? -1 : 1))
		])
	);

/** What a table of trials can carry: the trials, and what they belong to. */
function ofTrials(notebook: Notebook): Notebook {
	const sessions = notebook.sessions.filter(({ id }) =>
		notebook.trials.some(({ sessionId }) => sessionId === id)
	);
	const grips = notebook.grips.filter(({ id }) =>
		notebook.trials.some(({ gripId }) => gripId === id)
	);
	return {
		...notebook,
		plans: [],
		sessions,
		grips,
		people: notebook.people.filter(({ id }) => sessions.some(({ personId }) => personId === id)),
		holds: notebook.holds.filter(({ id }) => sessions.some(({ holdId }) => holdId === id))
	};
}

/** The only things to be said about a file of our own: what was odd before it was written. */
const oddIn = ({ sessions, trials }: Notebook) =>
	sessions
		.flatMap((session) =>
			flagsOf(
				session,
				trials.filter(({ sessionId }) => sessionId === session.id)
			)
		)
		.map(({ text }) => `flagged: ${text}`)
		.sort();
const said = ({ problems }: Draft) =>
	problems.map(({ severity, reason }) => `${severity}: ${reason}`).sort();

describe('export, then import, is the identity on notebooks with hostile text', () => {
	test('JSON: the whole notebook', () => {
		fc.assert(
			fc.property(notebooks, (notebook) => {
				const draft = read(exportJson(notebook, new Date(0)));
				expect(said(draft)).toEqual(oddIn(notebook));
				expect(byId(draft.notebook)).toEqual(byId(notebook));
			}),
			{ numRuns: 500 }
		);
	});

	test('CSV: every trial with its session, person, hold and grip', () => {
		fc.assert(
			fc.property(notebooks, (notebook) => {
				const draft = read(exportCsv(notebook));
				expect(said(draft)).toEqual(oddIn(notebook));
				expect(draft.rows).toBe(notebook.trials.length);
				expect(byId(draft.notebook)).toEqual(byId(ofTrials(notebook)));
			}),
			{ numRuns: 500 }
		);
	});

	test('no cell of an exported table starts a formula, whichever separator a reader takes', () => {
		fc.assert(
			fc.property(notebooks, (notebook) => {
				const { rows } = parseRows(exportCsv(notebook).slice(1));
				for (const cell of rows.flat()) {
					for (const part of cell.split(/[;\t\r\n]/)) {
						// A number may be negative: that is a value, no formula.
						if (Number.isFinite(Number(part)) && part.trim() !== '') continue;
						expect(part).not.toMatch(/^[ \u00a0]*[=+\-@＝＋－＠]/);
					}
				}
			}),
			{ numRuns: 300 }
		);
	});

	test('guarding is undone exactly, for any text', () => {
		fc.assert(
			fc.property(fc.string({ unit: fc.constantFrom(...'\'=+-@; \t\r\n"a＝\u00a0,') }), (text) => {
				expect(unguardFormulas(guardFormulas(text))).toBe(text);
			}),
			{ numRuns: 20_000 }
		);
	});

	test('reading never throws, whatever the bytes', () => {
		fc.assert(
			fc.property(fc.uint8Array({ maxLength: 400 }), (bytes) => {
				const draft = readFile(bytes, '2026-03-09');
				expect(draft.rows).toBeGreaterThanOrEqual(draft.refused);
			}),
			{ numRuns: 2000 }
		);
	});
});
