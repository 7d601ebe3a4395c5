import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { newTrial } from '#storage/codecs/notebook/new-records.ts';
import { StorageFault } from '#storage/stores/fault.ts';
import { memoryNotebook } from '#storage/stores/open-store.ts';
import { put } from '#storage/stores/store.ts';
import type { Change, NotebookStore } from '#storage/stores/store.ts';
import { hasDemo, loadDemo, removeDemo } from '../../../../src/state/notebook/demo.ts';
import { wholeNotebook } from '../../../../src/state/notebook/download.ts';
import { ImportState } from '../../../../src/state/notebook/import.svelte.ts';
import { NotebookState } from '../../../../src/state/notebook/notebook.svelte.ts';
import { readFile } from '#storage/import/read-file.ts';

const demo = readFileSync('seeds/demo-notebook.json', 'utf8');

async function opened(wrap: (store: NotebookStore) => NotebookStore = (store) => store) {
	const store = wrap(memoryNotebook(() => 0));
	const state = new NotebookState(async () => ({ store, fault: null }));
	await state.open();
	return { state, store };
}

const trial = (id: string, order: number) =>
	newTrial(() => id, {
		sessionId: 'demo-session',
		gripId: 'demo-grip',
		order,
		loadKg: 50,
		outcome: 'held'
	});

describe('the notebook as pages see it', () => {
	test('demo in, a trial added, undo, demo out: lists follow', async () => {
		const { state } = await opened();
		expect(state.empty).toBe(true);
		expect(await loadDemo(state, demo)).toBe('demo-session');
		expect(hasDemo(state)).toBe(true);
		expect(state.trialsOf('demo-session')).toHaveLength(35);
		expect(await state.apply('One more', [put('trials', trial('t', 28))])).toBe(true);
		expect(state.trialsOf('demo-session').at(-1)!.id).toBe('t');
		expect(state.undoable?.label).toBe('One more');
		await state.undo();
		expect(state.trialsOf('demo-session')).toHaveLength(35);
		expect(state.redoable?.label).toBe('One more');
		await state.redo();
		expect(state.trialsOf('demo-session')).toHaveLength(36);
		// What was added to the demo goes with it.
		expect(await removeDemo(state)).toBe(true);
		expect(state.empty).toBe(true);
		expect(state.trialCount).toBe(0);
	});

	test('loading the demo twice changes nothing the second time', async () => {
		const { state } = await opened();
		await loadDemo(state, demo);
		await loadDemo(state, demo);
		expect(state.recent).toHaveLength(1);
	});

	test('a change made elsewhere is seen', async () => {
		const { state, store } = await opened();
		await loadDemo(state, demo);
		await store.apply('Elsewhere', [put('trials', trial('t', 28))]);
		await expect.poll(() => state.trial('t')?.order).toBe(28);
	});

	test('a full device: nothing is lost, the change waits, is in the file, and goes in later', async () => {
		let full = false;
		const { state } = await opened((store) => ({
			...store,
			get kept() {
				return true;
			},
			apply: (...args) => {
				if (full) return Promise.reject(new StorageFault('full'));
				return store.apply(...args);
			}
		}));
		await loadDemo(state, demo);
		full = true;
		expect(await state.apply('First', [put('trials', trial('a', 28))])).toBe(false);
		expect(await state.apply('Second', [put('trials', trial('b', 29))])).toBe(false);
		expect(state.fault?.kind).toBe('full');
		expect(state.unsaved.map(({ label }) => label)).toEqual(['First', 'Second']);
		expect(state.trialsOf('demo-session')).toHaveLength(35);
		const file = await wholeNotebook(state);
		expect(file.trials.map(({ id }) => id)).toEqual(expect.arrayContaining(['a', 'b']));
		full = false;
		expect(await state.retry()).toBe(true);
		expect(state.unsaved).toEqual([]);
		expect(state.fault).toBeNull();
		expect(
			state
				.trialsOf('demo-session')
				.slice(-2)
				.map(({ id }) => id)
		).toEqual(['a', 'b']);
	});

	test('a value that is not allowed is refused, and does not wait', async () => {
		const { state } = await opened();
		await loadDemo(state, demo);
		expect(await state.apply('Bad', [put('trials', { ...trial('a', 28), loadKg: -1 })])).toBe(
			false
		);
		expect(state.fault?.kind).toBe('invalid');
		expect(state.unsaved).toEqual([]);
	});

	test('a notebook that cannot be opened says why, and may be tried again', async () => {
		let blocked = true;
		const state = new NotebookState(async () => {
			if (blocked) throw new StorageFault('blocked');
			return { store: memoryNotebook(() => 0), fault: null };
		});
		await state.open();
		expect(state.status).toBe('failed');
		expect(state.fault?.kind).toBe('blocked');
		blocked = false;
		await state.open();
		expect(state.status).toBe('ready');
	});
});

/** Counts what is read from the store: work, not time. */
function counting(store: NotebookStore) {
	const reads = { records: 0, lists: 0 };
	const counted: NotebookStore = {
		...store,
		get kept() {
			return store.kept;
		},
		get: (kind, id) => {
			reads.records++;
			return store.get(kind, id);
		},
		list: (kind) => {
			reads.lists++;
			return store.list(kind);
		}
	};
	return { counted, reads };
}

test('with 5,000 trials, logging one reads one record and no list', async () => {
	const { counted, reads } = counting(memoryNotebook(() => 0));
	const { state } = await opened(() => counted);
	await loadDemo(state, demo);
	const many: Change[] = Array.from({ length: 5000 }, (_, i) =>
		put('trials', trial(`many-${i}`, 100 + i))
	);
	await state.apply('Many', many);
	expect(state.trialsOf('demo-session')).toHaveLength(5035);
	Object.assign(reads, { records: 0, lists: 0 });
	await state.apply('One', [put('trials', trial('one', 9999))]);
	expect(state.trialsOf('demo-session').at(-1)!.id).toBe('one');
	expect(reads).toEqual({ records: 1, lists: 0 });
});

describe('bringing in a file', () => {
	const read = async (file: Blob, today: string) =>
		readFile(new Uint8Array(await file.arrayBuffer()), today);

	test('looks first, writes on demand, and finds everything the same the second time', async () => {
		const { state } = await opened();
		const bringing = new ImportState(state, read);
		await bringing.read(new File([demo], 'demo.json'), '2026-01-01');
		expect(bringing.phase).toBe('preview');
		expect(state.empty).toBe(true);
		await bringing.write('keep');
		expect(bringing.phase).toBe('done');
		await expect.poll(() => state.trialCount).toBe(35);
		await bringing.read(new File([demo], 'demo.json'), '2026-01-01');
		expect(bringing.merge?.fresh).toEqual([]);
		expect(bringing.merge?.same).toBe(40);
	});

	test('cancelled while reading: no preview comes late', async () => {
		const { state } = await opened();
		const bringing = new ImportState(state, read);
		const reading = bringing.read(new File([demo], 'demo.json'), '2026-01-01');
		bringing.cancel();
		await reading;
		expect(bringing.phase).toBe('stopped');
		expect(bringing.merge).toBeNull();
		expect(state.empty).toBe(true);
	});

	test('cancelled while writing: nothing is kept; too late: it says that it is in', async () => {
		const { state } = await opened();
		const bringing = new ImportState(state, read);
		await bringing.read(new File([demo], 'demo.json'), '2026-01-01');
		const writing = bringing.write('keep');
		bringing.cancel();
		await writing;
		const stored = await state.store.list('trials');
		expect(bringing.phase).toBe(stored.length === 0 ? 'stopped' : 'done');
		expect(stored).toHaveLength(0);
	});

	test('a file that cannot be read says so', async () => {
		const { state } = await opened();
		const bringing = new ImportState(state, () => Promise.reject(new Error('no worker')));
		await bringing.read(new File(['x'], 'x.csv'), '2026-01-01');
		expect(bringing.message).toBe('The file could not be read: no worker');
	});
});
