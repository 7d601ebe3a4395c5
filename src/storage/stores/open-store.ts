import { StorageFault, faultFrom } from './fault.ts';
import { idbBackend } from './idb-backend.ts';
import type { IdbOptions } from './idb-backend.ts';
import { memoryBackend } from './memory-backend.ts';
import { notebookStore } from './notebook-store.ts';
import type { NotebookStore } from './store.ts';

export const NOTEBOOK_NAME = 'trials-notebook';

/** Opens the notebook kept on this device. Rejects with a StorageFault, whose words tell what to do. */
export async function openNotebook(
	now: () => number = Date.now,
	options: IdbOptions = { name: NOTEBOOK_NAME }
): Promise<NotebookStore> {
	let backend;
	try {
		backend = await idbBackend(options);
	} catch (error) {
		throw faultFrom(error);
	}
	const channel =
		typeof BroadcastChannel === 'undefined' ? null : new BroadcastChannel(options.name);
	return notebookStore(backend, channel, now);
}

/** A notebook in memory: nothing of it outlives the page. */
export function memoryNotebook(now: () => number = Date.now): NotebookStore {
	return notebookStore(memoryBackend(), null, now);
}

/**
 * Opens the notebook, or, where the browser keeps nothing, one in memory with the reason to show.
 * Other faults (blocked, newer, damaged) still reject: there is a notebook, and a blank one in its
 * place would frighten its owner.
 */
export async function openNotebookOrMemory(
	now: () => number = Date.now,
	options?: IdbOptions
): Promise<{ store: NotebookStore; fault: StorageFault | null }> {
	try {
		return { store: await openNotebook(now, options), fault: null };
	} catch (error) {
		const fault = faultFrom(error);
		if (fault.kind !== 'unavailable') throw fault;
		return { store: memoryNotebook(now), fault };
	}
}
