/** Hands the storage room to the browser tests; built and served by storage.spec.ts only. */
import demo from '#seeds/demo-notebook.json';
import { exportCsv } from '#storage/codecs/csv/export-csv.ts';
import { exportJson, readJson } from '#storage/codecs/notebook/json.ts';
import type { Migration } from '#storage/codecs/notebook/migrate.ts';
import { kinds } from '#storage/codecs/notebook/records.ts';
import type { Notebook, Trial } from '#storage/codecs/notebook/records.ts';
import { mergeChanges, planMerge } from '#storage/import/merge.ts';
import { readInWorker } from '#storage/import/read-in-worker.ts';
import { StorageFault } from '#storage/stores/fault.ts';
import { openNotebook, openNotebookOrMemory } from '#storage/stores/open-store.ts';
import { put, remove } from '#storage/stores/store.ts';
import type { Change, NotebookStore, Notice } from '#storage/stores/store.ts';

export const NAME = 'storage-test';

const sample: Notebook = readJson(JSON.stringify(demo)).notebook;

/** An invented step to a version 2, in which every label ends in a mark. */
const steps: Migration[] = [
	{
		from: 1,
		record: (kind, old) => (kind === 'people' ? { ...old, label: `${old.label}!` } : old)
	}
];

const tools = {
	sample,
	store: undefined as NotebookStore | undefined,
	notices: [] as Notice[],
	put,
	remove,
	exportCsv,
	exportJson,
	mergeChanges,
	planMerge,
	readInWorker,
	openNotebookOrMemory,
	async open(version = 1): Promise<string> {
		try {
			tools.store = await openNotebook(Date.now, { name: NAME, version, steps });
			tools.store.subscribe((notice) => tools.notices.push(notice));
			return 'open';
		} catch (error) {
			return tools.kindOf(error);
		}
	},
	kindOf: (error: unknown): string => (error instanceof StorageFault ? error.kind : String(error)),
	/** How a promise ended: 'resolved', or the kind of fault. */
	outcome: (promise: Promise<unknown>): Promise<string> =>
		promise.then(() => 'resolved', tools.kindOf),
	all: (notebook: Notebook): Change[] =>
		kinds.flatMap((kind) => (notebook[kind] as never[]).map((record) => put(kind, record))),
	many: (count: number): Trial[] =>
		Array.from({ length: count }, (_, i) => ({
			...sample.trials[i % sample.trials.length]!,
			id: `demo-many-${i}`,
			order: i + 1
		})),
	/** Holds the database open at a version, deaf to those who want to change it. */
	hold: (version: number): Promise<string> =>
		new Promise((resolve) => {
			const request = indexedDB.open(NAME, version);
			request.onsuccess = () => resolve('held');
			request.onerror = () => resolve(String(request.error));
		})
};

export type Tools = typeof tools;

(globalThis as unknown as { tools: Tools }).tools = tools;
