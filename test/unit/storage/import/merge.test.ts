import { describe, expect, test } from 'vitest';
import { exportCsv } from '#storage/codecs/csv/export-csv.ts';
import { exportJson } from '#storage/codecs/notebook/json.ts';
import { emptyNotebook } from '#storage/codecs/notebook/records.ts';
import { mergeChanges, planMerge } from '#storage/import/merge.ts';
import { answer } from '#storage/import/messages.ts';
import type { Reply } from '#storage/import/messages.ts';
import { readFile } from '#storage/import/read-file.ts';
import { memoryNotebook } from '#storage/stores/open-store.ts';
import { put } from '#storage/stores/store.ts';
import { large, putAll, sample } from '../stores/sample.ts';

const bytes = (text: string) => new TextEncoder().encode(text);
const read = (text: string) => readFile(bytes(text), '2026-03-09');
const typed = 'person,grip,load,outcome\nKim,Open,60,held\nKim,Open,62,slipped\n';

describe('merging', () => {
	test('wipe, then import of either format, gives the notebook back', async () => {
		for (const text of [exportJson(sample, new Date(0)), exportCsv(sample)]) {
			const store = memoryNotebook();
			const merge = await planMerge(await store.notebook(), read(text));
			expect([merge.same, merge.differing, merge.refused]).toEqual([0, [], 0]);
			await store.apply('Imported', mergeChanges(merge, 'keep'));
			const found = await store.notebook();
			expect(found.trials).toEqual(sample.trials);
			expect(found.sessions).toEqual(sample.sessions);
		}
	});

	test('the same file twice brings nothing twice, a table typed by hand too', async () => {
		for (const text of [exportJson(sample, new Date(0)), exportCsv(sample), typed]) {
			const store = memoryNotebook();
			const changes = async () =>
				mergeChanges(await planMerge(await store.notebook(), read(text)), 'take');
			await store.apply('Once', await changes());
			const once = await store.notebook();
			expect(once.trials.length).toBeGreaterThan(1);
			expect(await changes()).toEqual([]);
		}
	});

	test('where both sides differ, one’s own stays unless told otherwise', async () => {
		const mine = { ...sample.trials[4]!, note: 'mine' };
		const here = { ...sample, trials: sample.trials.map((t) => (t.id === mine.id ? mine : t)) };
		const merge = await planMerge(here, read(exportJson(sample, new Date(0))));
		expect(merge.differing).toEqual([
			{ kind: 'trials', id: mine.id, mine, theirs: sample.trials[4] }
		]);
		expect(mergeChanges(merge, 'keep')).toEqual([]);
		expect(mergeChanges(merge, 'take')).toEqual([put('trials', sample.trials[4]!)]);
	});

	test('names in a table mean the person and grip of that name here, if there is one', async () => {
		const kim = { id: 'p1', label: 'Kim', bodyMassKg: 60, adult: true };
		const merge = await planMerge({ ...emptyNotebook(), people: [kim] }, read(typed));
		expect(merge.fresh.filter(({ kind }) => kind === 'people')).toEqual([]);
		expect(merge.fresh.find(({ kind }) => kind === 'sessions')!.record).toMatchObject({
			personId: 'p1'
		});
		expect(merge.problems.map(({ reason }) => reason)).toContain(
			'“Kim” is taken to be the one already here.'
		);
		const two = { ...emptyNotebook(), people: [kim, { ...kim, id: 'p2' }] };
		const unsure = await planMerge(two, read(typed));
		expect(unsure.fresh.filter(({ kind }) => kind === 'people')).toHaveLength(1);
	});

	test('what belongs to nothing stays out, named, unless it is here already', async () => {
		const file = exportJson({ ...sample, sessions: [] }, new Date(0));
		const merge = await planMerge(emptyNotebook(), read(file));
		expect(merge.refused).toBe(sample.trials.length);
		expect(merge.problems[0]).toMatchObject({
			severity: 'refused',
			reason: 'belongs to sessionId demo-session, which is neither in the file nor here'
		});
		const here = { ...sample, trials: [] };
		expect((await planMerge(here, read(file))).refused).toBe(0);
	});

	test('every change of a merge fits the store at once', async () => {
		const store = memoryNotebook();
		await store.apply('Own', putAll({ ...sample, trials: [] }));
		const merge = await planMerge(await store.notebook(), read(exportCsv(large(50))));
		const operation = await store.apply('Imported', mergeChanges(merge, 'keep'));
		expect(operation!.count).toBe(50);
		await store.undo();
		expect(await store.list('trials')).toEqual([]);
	});
});

test('the worker’s answers: progress, pieces, and how it ended', () => {
	const replies: Reply[] = [];
	const text = exportCsv(large(1200)) + 'x\r\n';
	answer(
		{ kind: 'read', id: 3, bytes: bytes(text).buffer as ArrayBuffer, today: '2026-03-09' },
		(reply) => replies.push(reply)
	);
	expect(replies.every(({ id }) => id === 3)).toBe(true);
	const trials = replies.flatMap((reply) =>
		reply.kind === 'records' && reply.list === 'trials' ? [reply.records.length] : []
	);
	expect(trials).toEqual([500, 500, 200]);
	expect(replies.filter(({ kind }) => kind === 'progress').length).toBeGreaterThan(5);
	expect(replies.at(-1)).toEqual({ kind: 'done', id: 3, format: 'csv', rows: 1201, refused: 1 });
});
