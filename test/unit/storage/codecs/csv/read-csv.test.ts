import { describe, expect, test } from 'vitest';
import { readCsv } from '#storage/codecs/csv/read-csv.ts';
import { decodeBytes } from '#storage/codecs/csv/decode-bytes.ts';
import { readNumber } from '#storage/codecs/csv/read-number.ts';
import { readFile } from '#storage/import/read-file.ts';
import { within } from '#test/within.ts';

const today = '2026-03-09';
const read = (text: string) => readCsv(text, today);
const head = 'day,person,trial number,net load [kg],outcome\n';

describe('tables typed by hand', () => {
	test('semicolons, decimal commas, capitals, other names and units', () => {
		const draft = read('Date;Name;No;Load (lb);Result\n9.3.2026;Kim;1;132,5;Slip\n');
		expect(draft.refused).toBe(0);
		const [trial] = draft.notebook.trials;
		within(trial!.loadKg, 132.5 * 0.45359237, { relative: 1e-15 });
		expect(trial).toMatchObject({ outcome: 'slipped', order: 1, kind: 'test' });
		expect(draft.notebook.sessions[0]!.day).toBe('2026-03-09');
		expect(draft.notebook.people[0]).toMatchObject({ label: 'Kim', adult: false });
	});

	test('tabs, and a first line that names the separator', () => {
		expect(read('load\toutcome\n62.5\theld\n').notebook.trials[0]!.loadKg).toBe(62.5);
		const draft = read('sep=;\nload;outcome\n62,5;held\nx;held\n');
		expect(draft.notebook.trials[0]!.loadKg).toBe(62.5);
		expect(draft.problems.filter(({ severity }) => severity === 'refused')).toEqual([
			{
				severity: 'refused',
				row: 3,
				field: 'net load [kg]',
				reason: 'is “x”, not a number'
			}
		]);
	});

	test('a unit in the cell counts before the header’s', () => {
		const { trials } = read('load [lb],outcome\n60 kg,held\n100 lbs,held\n').notebook;
		expect(trials[0]!.loadKg).toBe(60);
		within(trials[1]!.loadKg, 45.359237, { relative: 1e-15 });
	});

	test('a column in a unit that cannot be is left out, and named', () => {
		const draft = read('net load [kg],outcome,seconds [kg]\n60,held,5\n');
		expect(draft.notebook.trials[0]!.seconds).toBeNull();
		expect(draft.problems).toContainEqual({
			severity: 'flagged',
			row: null,
			field: 'seconds [kg]',
			reason: 'is in kg, which cannot be converted; it stays out'
		});
	});

	test('missing columns: every row stays out, and the column is named', () => {
		const draft = read('day,person,outcome\n2026-03-09,Kim,held\n');
		expect(draft).toMatchObject({ rows: 1, refused: 1 });
		expect(draft.notebook.trials).toEqual([]);
		expect(draft.problems).toContainEqual({
			severity: 'refused',
			row: null,
			field: 'net load [kg]',
			reason: 'This column is missing; without it no row is a trial.'
		});
	});

	test('impossible loads and unknown words: named by row, the rest comes in', () => {
		const draft = read(
			head +
				'2026-03-09,Kim,1,0,held\n2026-03-09,Kim,2,-5,held\n2026-03-09,Kim,3,9999,held\n' +
				'2026-03-09,Kim,4,60,flew\n2026-02-30,Kim,5,60,held\n2026-03-09,Kim,6,,held\n' +
				'2026-03-09,Kim,7,60,held\n'
		);
		expect(draft).toMatchObject({ rows: 7, refused: 6 });
		expect(draft.notebook.trials.map(({ order }) => order)).toEqual([7]);
		const refused = draft.problems.filter(({ severity }) => severity === 'refused');
		expect(refused.map(({ row, field, reason }) => [row, field, reason])).toEqual([
			[2, 'net load [kg]', 'is not above 0'],
			[3, 'net load [kg]', 'is not above 0'],
			[4, 'net load [kg]', 'is above 500'],
			[5, 'outcome', 'is not held, slipped, opened, stopped or unknown'],
			[6, 'day', 'is not a day of the calendar'],
			[7, 'net load [kg]', expect.stringContaining('not')]
		]);
	});

	test('doubled numbers and negative times come in', () => {
		const draft = read(
			'trial number,load,outcome,seconds\n1,60,held,5\n1,62,slipped,-3\n,64,held,5\n'
		);
		expect(draft.refused).toBe(0);
		expect(draft.notebook.trials.map(({ order, seconds }) => [order, seconds])).toEqual([
			[1, 5],
			[1, -3],
			[1, 5]
		]);
		expect(new Set(draft.notebook.trials.map(({ id }) => id)).size).toBe(3);
	});

	test('doubled numbers, negative times and a clock set back are flagged by row', () => {
		const draft = read(
			'trial number,load,outcome,seconds,timestamp\n' +
				'1,60,held,5,2026-03-09T18:00:00Z\n2,62,slipped,-3,2026-03-09T17:00:00Z\n' +
				'\n2,64,held,5,2026-03-09T18:10:00Z\n'
		);
		expect(draft).toMatchObject({ rows: 3, refused: 0 });
		const odd = draft.problems.filter(({ row }) => row !== null);
		expect(odd.every(({ severity }) => severity === 'flagged')).toBe(true);
		expect(odd.map(({ row, field, reason }) => [row, field, reason])).toEqual([
			[3, 'trial number', 'Number 2 stands on 2 trials.'],
			[3, 'time held [s]', '-3 s held is below 0.'],
			[3, 'logged at [UTC]', 'Logged earlier than the trial before: the clock was changed.'],
			[5, 'trial number', 'Number 2 stands on 2 trials.']
		]);
	});

	test('a separator nobody can know: the one column is named', () => {
		const draft = read('load|outcome\n60|held\n');
		expect(draft).toMatchObject({ rows: 1, refused: 1 });
		const refused = draft.problems.filter(({ severity }) => severity === 'refused');
		expect(refused[0]!.reason).toMatch(/^Only one column was found/);
	});

	test('broken quotes: the row is named, and nothing is swallowed in silence', () => {
		const draft = read(
			'load,outcome,note\n60,held,"a"b\n61,held,ok\n62,held,"never closed\n63,held,x\n'
		);
		expect(draft.notebook.trials.map(({ loadKg }) => loadKg)).toEqual([61]);
		expect(draft.problems.filter(({ severity }) => severity === 'refused')).toEqual([
			{ severity: 'refused', row: 2, field: null, reason: 'Text follows a closing quote.' },
			{
				severity: 'refused',
				row: 4,
				field: null,
				reason: 'A quote is opened and never closed; nothing after it can be read.'
			}
		]);
	});

	test('a cell of several lines and empty lines keep the spreadsheet’s row numbers', () => {
		const draft = read('load,outcome,note\n60,held,"one\ntwo"\n\n0,held,x\n');
		expect(draft.rows).toBe(2);
		expect(draft.problems.find(({ severity }) => severity === 'refused')?.row).toBe(4);
	});

	test('rows that contradict each other about the person: the first counts, the row is named', () => {
		const draft = read('person,adult,load,outcome\nKim,yes,60,held\nKim,no,61,held\n');
		expect(draft.notebook.people).toHaveLength(1);
		expect(draft.notebook.people[0]!.adult).toBe(true);
		expect(draft.problems).toContainEqual({
			severity: 'flagged',
			row: 3,
			field: 'person',
			reason: 'says something else about this person than row 2; row 2 counts'
		});
	});

	test('what is assumed is said once', () => {
		const said = read('load,outcome\n60,held\n61,held\n').problems.map(({ reason }) => reason);
		expect(said).toContain('Rows without a day are taken as of 2026-03-09.');
		expect(new Set(said).size).toBe(said.length);
	});

	test('the same table read on another day brings the same marks', () => {
		const table = 'load,outcome\n60,held\n61,held\n';
		const ids = (day: string) => readCsv(table, day).notebook.trials.map(({ id }) => id);
		expect(ids('2026-03-10')).toEqual(ids('2026-03-09'));
	});

	test('refused rows leave no person behind', () => {
		expect(read('person,load,outcome\nKim,0,held\n').notebook.people).toEqual([]);
	});
});

describe('encodings', () => {
	const table = 'load,outcome,note\n60,held,Grödner Fels\n';
	const utf16 = (bigEndian: boolean, mark: boolean) => {
		const text = (mark ? '\ufeff' : '') + table;
		const bytes = new Uint8Array(text.length * 2);
		const view = new DataView(bytes.buffer);
		for (let i = 0; i < text.length; i++) view.setUint16(2 * i, text.charCodeAt(i), !bigEndian);
		return bytes;
	};
	const note = (bytes: Uint8Array) => readFile(bytes, today).notebook.trials[0]?.note;

	test('UTF-16, either way round, with and without a mark', () => {
		for (const big of [true, false]) {
			for (const mark of [true, false]) {
				expect(note(utf16(big, mark))).toBe('Grödner Fels');
			}
		}
	});

	test('Latin-1 is read, and the report asks to check the accents', () => {
		const bytes = Uint8Array.from(table, (sign) => sign.charCodeAt(0));
		expect(note(bytes)).toBe('Grödner Fels');
		expect(readFile(bytes, today).problems[0]!.reason).toMatch(/not UTF-8.*accents/);
		expect(decodeBytes(new TextEncoder().encode(table)).note).toBeNull();
	});

	test('a spreadsheet’s own file, and an empty one, say what to do', () => {
		const zip = Uint8Array.of(0x50, 0x4b, 3, 4, 20, 0);
		expect(readFile(zip, today).problems[0]!.reason).toMatch(/Save it as CSV/);
		expect(readFile(new Uint8Array(), today).problems[0]!.reason).toBe('The file is empty.');
	});
});

test('numbers as people write them', () => {
	const values = Object.entries({
		'62.5': 62.5,
		'62,5': 62.5,
		' 62,5 kg ': 62.5,
		'1.234,5': 1234.5,
		'1,234.5': 1234.5,
		'1 234,5': 1234.5,
		'−3': -3,
		'1e-7': 1e-7,
		'.5': 0.5,
		'5.': 5
	});
	for (const [cell, value] of values) expect(readNumber(cell)?.value).toBe(value);
	for (const cell of [
		'60 5',
		'1.2.3',
		'',
		'x',
		'--1',
		'1,2,3',
		'NaN',
		'Infinity',
		'0x10',
		'12,34.5'
	]) {
		expect(readNumber(cell)).toBeUndefined();
	}
});
