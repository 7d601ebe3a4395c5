import { readFileSync } from 'node:fs';
import { readJson } from '#storage/codecs/notebook/json.ts';
import { kinds } from '#storage/codecs/notebook/records.ts';
import type { Notebook, Trial } from '#storage/codecs/notebook/records.ts';
import { put } from '#storage/stores/store.ts';
import type { Change } from '#storage/stores/store.ts';

/** The demo notebook, as something to store. */
export const sample: Notebook = readJson(readFileSync('seeds/demo-notebook.json', 'utf8')).notebook;

export const putAll = (notebook: Notebook): Change[] =>
	kinds.flatMap((kind) => (notebook[kind] as never[]).map((record) => put(kind, record)));

/** The sample with many more trials in its session. */
export function large(trials: number): Notebook {
	return {
		...sample,
		trials: Array.from({ length: trials }, (_, i): Trial => ({
			...sample.trials[i % sample.trials.length]!,
			id: `demo-many-${i}`,
			order: i + 1
		}))
	};
}
