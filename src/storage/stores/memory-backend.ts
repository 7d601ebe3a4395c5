import { kinds } from '../codecs/notebook/records.ts';
import type { AnyRecord, Kind, Records, Trial } from '../codecs/notebook/records.ts';
import type { Backend, Transaction } from './backend.ts';
import type { LoggedChange, Operation } from './store.ts';

/** The notebook in memory: the twin for tests, and for browsers that let a page keep nothing. */
export function memoryBackend(): Backend {
	const records = Object.fromEntries(
		kinds.map((kind) => [kind, new Map<string, AnyRecord>()])
	) as Record<Kind, Map<string, AnyRecord>>;
	const operations = new Map<number, Operation>();
	const changes = new Map<string, LoggedChange[]>();
	let last = 0;
	// Transactions wait for one another, as a browser's do.
	let queue: Promise<unknown> = Promise.resolve();

	/** Writes to a map, and notes how to take it back. */
	function write<K, V>(back: (() => void)[], map: Map<K, V>, key: K, value: V | undefined): void {
		const before = map.get(key);
		back.push(() => (before === undefined ? map.delete(key) : map.set(key, before)));
		if (value === undefined) map.delete(key);
		else map.set(key, structuredClone(value));
	}

	function open(back: (() => void)[]): Transaction {
		return {
			async get<K extends Kind>(kind: K, ids: readonly string[]) {
				return ids.map((id) => structuredClone(records[kind].get(id)) as Records[K] | undefined);
			},
			async page<K extends Kind>(kind: K, after: string | null, count: number) {
				const ids = [...records[kind].keys()].filter((id) => after === null || id > after).sort();
				return ids
					.slice(0, count)
					.map((id) => structuredClone(records[kind].get(id)) as Records[K]);
			},
			async trialsOf(sessionId, after, count) {
				const found = ([...records.trials.values()] as Trial[])
					.filter((trial) => trial.sessionId === sessionId)
					.sort(byNumber);
				const from = after ? found.findIndex((trial) => byNumber(trial, after) > 0) : 0;
				return from < 0 ? [] : structuredClone(found.slice(from, from + count));
			},
			async referring({ kind, field }, id) {
				const list = [...records[kind].values()] as unknown as Record<string, unknown>[];
				return list.filter((record) => record[field] === id).length;
			},
			async write(list) {
				for (const { kind, id, record } of list) {
					write(back, records[kind], id, (record as AnyRecord | null) ?? undefined);
				}
			},
			async operations(count, below = Infinity) {
				const found = [...operations.values()].filter(({ seq }) => seq < below);
				return structuredClone(found.sort((a, b) => b.seq - a.seq).slice(0, count));
			},
			async operation(seq) {
				return structuredClone(operations.get(seq));
			},
			async addOperation(operation) {
				const seq = ++last;
				write(back, operations, seq, { ...operation, seq });
				return seq;
			},
			async putOperation(operation) {
				write(back, operations, operation.seq, operation);
			},
			async addChanges(seq, page, list) {
				write(back, changes, `${seq} ${page}`, [...list]);
			},
			async changes(seq, page) {
				return structuredClone(changes.get(`${seq} ${page}`));
			},
			async forget(upTo) {
				for (const seq of [...operations.keys()].filter((number) => number <= upTo)) {
					for (let page = 0; changes.has(`${seq} ${page}`); page++) {
						write(back, changes, `${seq} ${page}`, undefined);
					}
					write(back, operations, seq, undefined);
				}
			}
		};
	}

	return {
		kept: false,
		run(_mode, work) {
			const turn = queue.then(async () => {
				const back: (() => void)[] = [];
				try {
					return await work(open(back));
				} catch (error) {
					for (const step of back.reverse()) step();
					throw error;
				}
			});
			queue = turn.catch(() => {});
			return turn;
		},
		close() {}
	};
}

function byNumber(one: Trial, other: Trial): number {
	return one.order - other.order || (one.id < other.id ? -1 : one.id > other.id ? 1 : 0);
}
