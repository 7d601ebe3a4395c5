import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { flagsOf } from '#storage/codecs/notebook/flags.ts';
import { exportJson, readJson } from '#storage/codecs/notebook/json.ts';
import { migrateRecord, migrations } from '#storage/codecs/notebook/migrate.ts';
import type { Migration } from '#storage/codecs/notebook/migrate.ts';
import { SCHEMA_VERSION, emptyNotebook } from '#storage/codecs/notebook/records.ts';
import type { Trial } from '#storage/codecs/notebook/records.ts';

const demo = readFileSync('seeds/demo-notebook.json', 'utf8');
const notebook = readJson(demo).notebook;

describe('JSON', () => {
	test('a newer version is refused whole, and says what to do', () => {
		const newer = demo.replace('"version": 1', '"version": 7');
		const draft = readJson(newer);
		expect(draft.notebook).toEqual(emptyNotebook());
		expect(draft.problems[0]!.reason).toMatch(/version 7; this page reads up to version 1.*Reload/);
	});

	test('cut short, another JSON, no version', () => {
		const reason = (text: string) => readJson(text).problems[0]!.reason;
		expect(reason(demo.slice(0, 500))).toMatch(/cut short/);
		expect(reason('{"a":1}')).toMatch(/holds no notebook/);
		expect(reason('[1]')).toMatch(/holds no notebook/);
		expect(reason('{"format":"trials-notebook"}')).toMatch(/which version/);
	});

	test('broken records are named by list, place and field; the others are kept', () => {
		const file = JSON.parse(demo);
		file.trials[3].loadKg = -1;
		file.trials[5].outcome = 7;
		file.trials[6] = null;
		file.trials[8].id = file.trials[9].id;
		delete file.people[0].adult;
		file.holds[0].colour = 'red';
		delete file.plans;
		const draft = readJson(JSON.stringify(file));
		expect(draft.notebook.trials).toHaveLength(31);
		expect(draft.refused).toBe(5);
		expect(draft.problems.map(({ row, field, reason }) => [row, field, reason])).toEqual([
			[null, 'plans', 'The list is missing.'],
			[1, 'people.adult', 'is missing'],
			[1, 'holds.colour', 'is not known here and stays out'],
			[4, 'trials.loadKg', 'is not above 0'],
			[6, 'trials.outcome', 'is not held, slipped, opened, stopped or unknown'],
			[7, 'trials.record', expect.stringContaining('null')],
			[10, 'trials.id', 'stands twice in this list; the first is kept']
		]);
	});

	test('a field called __proto__ changes nothing', () => {
		const file = demo.replace(
			'"people": [',
			'"people": [{"__proto__": {"adult": true}, "id": "x"},'
		);
		expect(readJson(file).refused).toBe(1);
		expect(({} as Record<string, unknown>).adult).toBeUndefined();
	});
});

describe('migrations', () => {
	test('there is a step from every older version, and a fixture would be needed for each', () => {
		expect(migrations.map(({ from }) => from)).toEqual(
			Array.from({ length: SCHEMA_VERSION - 1 }, (_, i) => i + 1)
		);
	});

	// No older version was ever kept: the frame is tried with invented steps to versions 2 and 3.
	const steps: Migration[] = [
		{
			from: 1,
			record: (kind, old) =>
				kind === 'trials' ? { ...old, loadKg: (old.loadKg as number) / 2 } : old
		},
		{
			from: 2,
			record: (kind, old) => (kind === 'people' ? { ...old, label: `${old.label}!` } : old)
		}
	];

	test('steps are taken in turn, from whichever version a record has', () => {
		const trial = { loadKg: 60 };
		expect(migrateRecord('trials', trial, 1, 3, steps)).toEqual({ loadKg: 30 });
		expect(migrateRecord('trials', trial, 2, 3, steps)).toEqual({ loadKg: 60 });
		expect(trial.loadKg).toBe(60);
		expect(() => migrateRecord('trials', trial, 1, 4, steps)).toThrow(/from version 3/);
	});

	test('an older file is brought up on reading', () => {
		const draft = readJson(exportJson(notebook, new Date(0)), undefined, 3, steps);
		expect(draft.problems).toEqual([]);
		expect(draft.notebook.trials[0]!.loadKg).toBe(notebook.trials[0]!.loadKg / 2);
		expect(draft.notebook.people[0]!.label).toBe(`${notebook.people[0]!.label}!`);
	});
});

describe('flags', () => {
	const base = notebook.trials.find(({ kind }) => kind === 'test')!;
	const flags = (...changes: Partial<Trial>[]) =>
		flagsOf(
			{ targetSeconds: 5 },
			changes.map((change, i) => ({ ...base, id: `t${i}`, order: i + 1, loggedAt: i, ...change }))
		).map(({ trialId, code }) => `${trialId} ${code}`);

	test('nothing odd, nothing said', () => expect(flags({}, {})).toEqual([]));

	test('doubled and odd numbers, negative times, a clock set back', () => {
		expect(flags({ order: 1 }, { order: 1 })).toEqual(['t0 order-doubled', 't1 order-doubled']);
		expect(flags({ order: 0 }, { order: 1.5 })).toEqual(['t0 order-odd', 't1 order-odd']);
		expect(flags({ order: 0, kind: 'warm-up' })).toEqual([]);
		expect(flags({ seconds: -1, outcome: 'slipped' })).toEqual(['t0 seconds-negative']);
		expect(flags({ loggedAt: 10 }, { loggedAt: 5 }, { loggedAt: 6 })).toEqual(['t1 clock-back']);
	});

	test('outcome, time, reason and rope that do not fit', () => {
		expect(flags({ seconds: 3, outcome: 'held' })).toEqual(['t0 held-short']);
		expect(flags({ outcome: 'stopped', stopReason: null })).toEqual(['t0 reason-missing']);
		expect(flags({ outcome: 'held', stopReason: 'pain' })).toEqual(['t0 reason-unasked']);
		expect(flags({ ropeDegrees: 5, ropeSide: null })).toEqual(['t0 rope-side-missing']);
	});
});
