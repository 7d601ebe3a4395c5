import { emptyNotebook, kinds } from '../codecs/notebook/records.ts';
import type { AnyRecord, Kind, Notebook, Records, Trial } from '../codecs/notebook/records.ts';
import { validate } from '../codecs/notebook/validate.ts';
import type { Backend, Transaction } from './backend.ts';
import { StorageFault, faultFrom } from './fault.ts';
import { pause } from './pause.ts';
import type { ApplyOptions, Change, NotebookStore, Notice, Operation } from './store.ts';
import { CHUNK, nextToWalk, replay, writeChanges } from './write-changes.ts';

/** A line to the other tabs: what BroadcastChannel is. */
export type Channel = {
	postMessage(message: unknown): void;
	onmessage: ((event: MessageEvent) => void) | null;
	close(): void;
};

/** Operations that stay undoable; older ones are forgotten. */
export const MOST_OPERATIONS = 1000;
/** Above this many touched records a notice says only that much moved. */
const MOST_TOUCHED = 500;
/** Records read at once: few enough that unpacking them never holds up the page. */
const PAGE = 250;

/** The notebook over any backend: the same rules in memory and in the browser’s database. */
export function notebookStore(
	backend: Backend,
	channel: Channel | null,
	now: () => number
): NotebookStore {
	const listeners = new Set<(notice: Notice) => void>();
	const tell = (notice: Notice) => {
		for (const listener of [...listeners]) {
			try {
				listener(notice);
			} catch (error) {
				// The change is committed: a listener's failing must not make it look lost.
				queueMicrotask(() => {
					throw error;
				});
			}
		}
	};
	if (channel) {
		channel.onmessage = ({ data }) => {
			const touched = (data as { touched: Notice['touched'] }).touched;
			tell({ touched, from: 'elsewhere' });
		};
	}
	const announce = (changes: readonly { kind: Kind; id: string }[]) => {
		const touched =
			changes.length > MOST_TOUCHED ? null : changes.map(({ kind, id }) => ({ kind, id }));
		try {
			channel?.postMessage({ touched });
		} catch {
			// The store was closed meanwhile; what was committed stays so, and other tabs read it later.
		}
		tell({ touched, from: 'here' });
	};

	async function run<T>(
		mode: 'readonly' | 'readwrite',
		work: (tx: Transaction) => Promise<T>
	): Promise<T> {
		try {
			return await backend.run(mode, work);
		} catch (error) {
			throw faultFrom(error);
		}
	}

	async function walk(seq: number | undefined, way: 'undo' | 'redo'): Promise<Operation> {
		const { operation, changes } = await run('readwrite', async (tx) => {
			const operation = seq !== undefined ? await tx.operation(seq) : await nextToWalk(tx, way);
			if (!operation || operation.undone === (way === 'undo')) {
				throw new StorageFault('nothing-to-undo');
			}
			return { operation, changes: await replay(tx, operation, way) };
		});
		announce(changes);
		return { ...operation, undone: way === 'undo', abandoned: false };
	}

	return {
		kept: backend.kept,
		get: (kind, id) => run('readonly', async (tx) => (await tx.get(kind, [id]))[0]),
		list: (kind) => run('readonly', (tx) => everyPage(tx, kind)),
		trialsOf: (sessionId) =>
			run('readonly', async (tx) => {
				const all: Trial[] = [];
				for (let last: Trial | null = null; ;) {
					const page: Trial[] = await tx.trialsOf(sessionId, last, PAGE);
					for (const trial of page) all.push(trial);
					if (page.length < PAGE) return all;
					last = page.at(-1)!;
				}
			}),
		notebook: () =>
			run('readonly', async (tx) => {
				const notebook: Notebook = emptyNotebook();
				for (const kind of kinds) {
					(notebook[kind] as AnyRecord[]) = await everyPage(tx, kind);
				}
				return notebook;
			}),
		async apply(label, changes, options = {}) {
			const checked = await check(changes, options);
			const done = await run('readwrite', async (tx) => {
				const written = await writeChanges(tx, checked, { label, at: now() }, options);
				if (written) await tx.forget(written.operation.seq - MOST_OPERATIONS);
				return written;
			});
			if (done) announce(done.logged);
			return done?.operation ?? null;
		},
		operations: (limit = 50) => run('readonly', (tx) => tx.operations(limit)),
		undo: (seq) => walk(seq, 'undo'),
		redo: (seq) => walk(seq, 'redo'),
		forgetHistory: () => run('readwrite', (tx) => tx.forget(Number.MAX_SAFE_INTEGER)),
		subscribe(listener) {
			listeners.add(listener);
			return () => void listeners.delete(listener);
		},
		close() {
			listeners.clear();
			channel?.close();
			backend.close();
		}
	};
}

/** Checks every record before anything is written, with pauses so that the page stays awake. */
async function check(changes: readonly Change[], { signal }: ApplyOptions): Promise<Change[]> {
	const seen = new Set<string>();
	const checked: Change[] = [];
	for (const [i, change] of changes.entries()) {
		if (i > 0 && i % CHUNK === 0) await pause();
		if (signal?.aborted) throw new StorageFault('cancelled');
		const key = `${change.kind} ${change.id}`;
		if (seen.has(key)) throw new StorageFault('invalid', `${key} stands twice in one change`);
		seen.add(key);
		if (change.record === null) checked.push(change);
		else {
			const result = validate(change.kind, change.record);
			if ('faults' in result) {
				const { field, reason } = result.faults[0]!;
				throw new StorageFault('invalid', `${change.kind} ${field} ${reason}`);
			}
			if (result.record.id !== change.id) throw new StorageFault('invalid', `${key} is misnamed`);
			checked.push({ ...change, record: result.record } as Change);
		}
	}
	return checked;
}

async function everyPage<K extends Kind>(tx: Transaction, kind: K): Promise<Records[K][]> {
	const all: Records[K][] = [];
	for (let after: string | null = null; ;) {
		const page: Records[K][] = await tx.page(kind, after, PAGE);
		for (const record of page) all.push(record);
		if (page.length < PAGE) return all;
		after = page.at(-1)!.id;
	}
}
