import { afterEach, describe, expect, test } from 'vitest';
import type { Kind } from '#storage/codecs/notebook/records.ts';
import type { Backend, Transaction } from '#storage/stores/backend.ts';
import { deletionOf, demoDeletion, everyDeletion } from '#storage/stores/deletion.ts';
import { StorageFault, faultFrom } from '#storage/stores/fault.ts';
import { memoryBackend } from '#storage/stores/memory-backend.ts';
import { MOST_OPERATIONS, notebookStore } from '#storage/stores/notebook-store.ts';
import { askToKeep, keeping } from '#storage/stores/persistence.ts';
import { put, remove } from '#storage/stores/store.ts';
import type { NotebookStore, Notice } from '#storage/stores/store.ts';
import { large, putAll, sample } from './sample.ts';

let clock = 0;
const opened: NotebookStore[] = [];
const open = (backend: Backend = memoryBackend(), channel: BroadcastChannel | null = null) => {
	const store = notebookStore(backend, channel, () => ++clock);
	opened.push(store);
	return store;
};
afterEach(() => {
	for (const store of opened.splice(0)) store.close();
});

const filled = async (backend?: Backend) => {
	const store = open(backend);
	await store.apply('Loaded the demo', putAll(sample));
	return store;
};
const trial = sample.trials[10]!;
const kindOf = (promise: Promise<unknown>) =>
	promise.then(
		() => 'resolved',
		(error: unknown) => (error instanceof StorageFault ? error.kind : error)
	);

/** A backend whose writes fail, after a number of them, as a browser’s do. */
function failing(inner: Backend, at: keyof Transaction, after: number, error: unknown): Backend {
	let count = 0;
	return {
		...inner,
		run: (mode, work) =>
			inner.run(mode, (tx) =>
				work({
					...tx,
					[at]: (...args: unknown[]) => {
						if (++count > after) return Promise.reject(error);
						return (tx[at] as (...args: unknown[]) => Promise<unknown>)(...args);
					}
				})
			)
	};
}

describe('the notebook’s store', () => {
	test('what is applied is there, whole', async () => {
		const store = await filled();
		expect(await store.notebook()).toEqual(sample);
		expect(await store.get('trials', trial.id)).toEqual(trial);
		expect((await store.trialsOf('demo-session')).map(({ order }) => order)).toEqual(
			sample.trials.map(({ order }) => order)
		);
		expect(await store.get('trials', 'none')).toBeUndefined();
	});

	test('what is handed out is a copy', async () => {
		const store = await filled();
		(await store.get('trials', trial.id))!.note = 'scribbled';
		expect((await store.get('trials', trial.id))!.note).toBe(trial.note);
	});

	test('undo and redo walk back and forth through every kind of change', async () => {
		const store = await filled();
		await store.apply('Edited', [put('trials', { ...trial, note: 'changed' })]);
		await store.apply('Deleted', [remove('trials', trial.id)]);
		const states = [];
		states.push(await store.notebook());
		expect((await store.undo()).label).toBe('Deleted');
		expect((await store.get('trials', trial.id))!.note).toBe('changed');
		await store.undo();
		expect(await store.notebook()).toEqual(sample);
		await store.undo();
		expect((await store.notebook()).trials).toEqual([]);
		expect(await kindOf(store.undo())).toBe('nothing-to-undo');
		for (let i = 0; i < 3; i++) await store.redo();
		expect(await store.notebook()).toEqual(states[0]);
		expect(await kindOf(store.redo())).toBe('nothing-to-undo');
	});

	test('something new ends what could be done again', async () => {
		const store = await filled();
		await store.apply('One', [put('trials', { ...trial, note: 'one' })]);
		await store.undo();
		await store.apply('Two', [put('trials', { ...trial, note: 'two' })]);
		expect(await kindOf(store.redo())).toBe('nothing-to-undo');
		expect((await store.undo()).label).toBe('Two');
	});

	test('one operation by name: undone if it still stands, refused if changed since', async () => {
		const store = await filled();
		const first = await store.apply('One', [put('trials', { ...trial, note: 'one' })]);
		const other = { ...sample.trials[3]!, note: 'other' };
		await store.apply('Other', [put('trials', other)]);
		await store.undo(first!.seq);
		expect((await store.get('trials', trial.id))!.note).toBe('');
		expect((await store.get('trials', other.id))!.note).toBe('other');
		await store.redo(first!.seq);
		await store.apply('Two', [put('trials', { ...trial, note: 'two' })]);
		expect(await kindOf(store.undo(first!.seq))).toBe('changed-since');
		expect((await store.get('trials', trial.id))!.note).toBe('two');
	});

	test('nothing different, nothing done', async () => {
		const store = await filled();
		expect(await store.apply('Again', putAll(sample))).toBeNull();
		expect(await store.operations()).toHaveLength(1);
	});

	test('deleting a person takes along what is theirs, and one undo brings it all back', async () => {
		const store = await filled();
		const deletion = deletionOf(sample, [{ kind: 'people', id: 'demo-person' }]);
		expect(deletion.map(({ kind }) => kind).filter((kind) => kind === 'trials')).toHaveLength(
			sample.trials.length
		);
		await store.apply('Deleted a person', deletion);
		const left = await store.notebook();
		expect([left.people, left.sessions, left.trials, left.plans]).toEqual([[], [], [], []]);
		expect(left.grips).toHaveLength(1);
		await store.undo();
		expect(await store.notebook()).toEqual(sample);
	});

	test('the demo goes in one operation, and leaves what is one’s own', async () => {
		const store = await filled();
		const own = { ...sample.people[0]!, id: 'mine' };
		await store.apply('Added', [put('people', own)]);
		await store.apply('Removed the demo', demoDeletion(await store.notebook()));
		const left = await store.notebook();
		expect(left.people).toEqual([own]);
		expect(Object.values(left).flat()).toHaveLength(1);
		await store.apply('Emptied', everyDeletion(left));
		expect(Object.values(await store.notebook()).flat()).toEqual([]);
	});

	test('nothing is left dangling, also when another tab deleted meanwhile', async () => {
		const store = await filled();
		expect(await kindOf(store.apply('x', [remove('sessions', 'demo-session')]))).toBe('referenced');
		expect(await kindOf(store.apply('x', [remove('grips', 'demo-grip')]))).toBe('referenced');
		await store.apply('x', deletionOf(sample, [{ kind: 'sessions', id: 'demo-session' }]));
		expect(await kindOf(store.apply('x', [put('trials', trial)]))).toBe('missing-reference');
		expect(await store.notebook()).toMatchObject({ sessions: [], trials: [] });
	});

	test('what breaks the schema is refused before anything is written', async () => {
		const store = await filled();
		const bad = { ...trial, id: 'new', loadKg: -1 };
		const mixed = [put('trials', { ...trial, note: 'x' }), put('trials', bad)];
		await expect(store.apply('x', mixed)).rejects.toThrow(/trials loadKg is not above 0/);
		const twice = [put('trials', trial), remove('trials', trial.id)];
		expect(await kindOf(store.apply('x', twice))).toBe('invalid');
		expect(await store.notebook()).toEqual(sample);
	});

	test('history can be forgotten, and old operations are', async () => {
		const store = await filled();
		await store.forgetHistory();
		expect(await store.operations()).toEqual([]);
		expect(await kindOf(store.undo())).toBe('nothing-to-undo');
		for (let i = 0; i < MOST_OPERATIONS + 5; i++) {
			await store.apply(`${i}`, [put('trials', { ...trial, note: `${i}` })]);
		}
		const kept = await store.operations(5000);
		expect(kept).toHaveLength(MOST_OPERATIONS);
		expect(kept[0]!.label).toBe(`${MOST_OPERATIONS + 4}`);
	});

	test('20,000 records go in and out as one operation, with progress', async () => {
		const store = open();
		const many = large(20_000);
		const seen: number[] = [];
		await store.apply('Imported', putAll(many), { progress: (done) => seen.push(done) });
		expect(seen.length).toBeGreaterThan(50);
		expect((await store.list('trials')).length).toBe(20_000);
		await store.undo();
		expect(await store.list('trials')).toEqual([]);
	});
});

describe('faults', () => {
	const quota = new DOMException('full', 'QuotaExceededError');

	for (const [at, after] of [
		['write', 0],
		['write', 2],
		['addChanges', 1],
		['putOperation', 0],
		['forget', 0]
	] as [keyof Transaction, number][]) {
		test(`no room at ${at} ${after + 1}: nothing of the change is kept`, async () => {
			const inner = memoryBackend();
			const good = await filled(inner);
			const bad = open(failing(inner, at, after, quota));
			const notices: Notice[] = [];
			bad.subscribe((notice) => notices.push(notice));
			const many = large(1000).trials.map((record) => put('trials', record));
			expect(await kindOf(bad.apply('x', many))).toBe('full');
			expect(await good.notebook()).toEqual(sample);
			expect(await good.operations()).toHaveLength(1);
			expect(notices).toEqual([]);
		});
	}

	test('an aborted undo leaves all as it was', async () => {
		const inner = memoryBackend();
		const good = await filled(inner);
		const abort = new DOMException('aborted', 'AbortError');
		const bad = open(failing(inner, 'putOperation', 0, abort));
		expect(await kindOf(bad.undo())).toBe('aborted');
		expect(await good.notebook()).toEqual(sample);
		expect((await good.operations())[0]!.undone).toBe(false);
	});

	test('cancelling keeps nothing', async () => {
		const store = await filled();
		const cancel = new AbortController();
		const many = large(2000).trials.map((record) => put('trials', record));
		const progress = (done: number) => void (done >= 500 && cancel.abort());
		expect(await kindOf(store.apply('x', many, { progress, signal: cancel.signal }))).toBe(
			'cancelled'
		);
		expect(await store.notebook()).toEqual(sample);
	});

	test('what browsers throw becomes one of our kinds, with advice', () => {
		const kinds: Record<string, string> = {
			QuotaExceededError: 'full',
			VersionError: 'newer-schema',
			SecurityError: 'unavailable',
			AbortError: 'aborted',
			UnknownError: 'damaged',
			SomethingNew: 'aborted'
		};
		for (const [name, kind] of Object.entries(kinds)) {
			const fault = faultFrom(new DOMException('why', name));
			expect(fault.kind).toBe(kind);
			expect(fault.message).toMatch(/\(why\)$/);
		}
		expect(faultFrom(quota).message).toMatch(/Download the notebook/);
	});
});

describe('two tabs', () => {
	test('each is told of the other’s committed changes, and of its own', async () => {
		const backend = memoryBackend();
		const one = open(backend, new BroadcastChannel('two-tabs'));
		const other = open(backend, new BroadcastChannel('two-tabs'));
		const here: Notice[] = [];
		one.subscribe((notice) => here.push(notice));
		const there = new Promise<Notice>((resolve) => other.subscribe(resolve));
		await one.apply('Added', [put('people', sample.people[0]!)]);
		const touched = [{ kind: 'people' as Kind, id: 'demo-person' }];
		expect(here).toEqual([{ touched, from: 'here' }]);
		expect(await there).toEqual({ touched, from: 'elsewhere' });
		expect(await other.get('people', 'demo-person')).toEqual(sample.people[0]);
		await other.undo();
		expect(await one.get('people', 'demo-person')).toBeUndefined();
	});

	test('a channel closed meanwhile does not make a committed change look lost', async () => {
		const channel = new BroadcastChannel('closed');
		const store = open(memoryBackend(), channel);
		channel.close();
		expect(await kindOf(store.apply('Added', [put('people', sample.people[0]!)]))).toBe('resolved');
	});

	test('a listener that fails does not either, and its error is not swallowed', async () => {
		const store = open();
		store.subscribe(() => {
			throw new Error('listener');
		});
		const listeners = process.listeners('uncaughtException');
		process.removeAllListeners('uncaughtException');
		const thrown = new Promise((resolve) => process.once('uncaughtException', resolve));
		try {
			expect(await kindOf(store.apply('Added', [put('people', sample.people[0]!)]))).toBe(
				'resolved'
			);
			expect(await thrown).toMatchObject({ message: 'listener' });
		} finally {
			for (const listener of listeners) process.on('uncaughtException', listener);
		}
	});

	test('a listener that has left hears nothing', async () => {
		const store = open();
		const heard: Notice[] = [];
		store.subscribe((notice) => heard.push(notice))();
		await store.apply('Added', [put('people', sample.people[0]!)]);
		expect(heard).toEqual([]);
	});
});

test('asking the browser to keep the notebook', async () => {
	const manager = {
		persisted: async () => false,
		persist: async () => true,
		estimate: async () => ({ usage: 5, quota: 10 })
	};
	expect(await askToKeep(manager)).toBe(true);
	expect(await askToKeep({ ...manager, persist: async () => false })).toBe(false);
	expect(await askToKeep({})).toBeNull();
	expect(await keeping(manager)).toEqual({ persistent: false, used: 5, quota: 10 });
	expect(await keeping({})).toEqual({ persistent: null, used: null, quota: null });
});
