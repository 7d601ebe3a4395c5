import { planMerge, mergeChanges } from '#storage/import/merge.ts';
import type { Merge } from '#storage/import/merge.ts';
import { readInWorker } from '#storage/import/read-in-worker.ts';
import type { Draft } from '#storage/codecs/notebook/draft.ts';
import { StorageFault } from '#storage/stores/fault.ts';
import type { NotebookState } from './notebook.svelte.ts';

type Read = (
	file: Blob,
	today: string,
	options: { progress: (done: number, total: number) => void; signal: AbortSignal }
) => Promise<Draft>;

/** Bringing in a file: read in a worker, looked at, and only then written, all of it or nothing. */
export class ImportState {
	phase = $state<'idle' | 'reading' | 'preview' | 'writing' | 'done' | 'stopped'>('idle');
	file = $state('');
	done = $state(0);
	total = $state(0);
	merge = $state.raw<Merge | null>(null);
	rows = $state(0);
	written = $state(0);
	message = $state('');
	#notebook: NotebookState;
	#read: Read;
	#abort: AbortController | undefined;

	constructor(notebook: NotebookState, read: Read = readInWorker) {
		this.#notebook = notebook;
		this.#read = read;
	}

	async read(file: File, today: string): Promise<void> {
		this.#start('reading', file.name);
		const { signal } = this.#abort!;
		try {
			const draft = await this.#read(file, today, { progress: this.#progress, signal });
			this.rows = draft.rows;
			const existing = await this.#notebook.store.notebook();
			const merge = await planMerge(existing, draft);
			if (signal.aborted) return;
			this.merge = merge;
			this.phase = 'preview';
		} catch (error) {
			// A newer reading has taken over, or the person cancelled and was told so.
			if (!signal.aborted) this.#stop(error, 'The file could not be read: ');
		}
	}

	/** Writes what the preview showed. `keep` leaves records alone that differ here. */
	async write(differing: 'keep' | 'take'): Promise<void> {
		if (!this.merge) return;
		const changes = mergeChanges(this.merge, differing);
		this.#start('writing', this.file);
		const { signal } = this.#abort!;
		try {
			await this.#notebook.store.apply(`Brought in ${this.file}`, changes, {
				progress: this.#progress,
				signal
			});
			this.written = changes.length;
			this.phase = 'done';
		} catch (error) {
			this.#stop(error, '');
		}
	}

	/** Stops. What is being written may have been written already: then the writing says so. */
	cancel(): void {
		this.#abort?.abort();
		if (this.phase !== 'writing') this.#stop(new StorageFault('cancelled'), '');
	}

	#progress = (done: number, total: number): void => {
		this.done = done;
		this.total = total;
	};

	#start(phase: 'reading' | 'writing', file: string): void {
		this.#abort?.abort();
		this.#abort = new AbortController();
		Object.assign(this, { phase, file, done: 0, total: 0, message: '' });
		if (phase === 'reading') this.merge = null;
	}

	#stop(error: unknown, before: string): void {
		this.merge = null;
		this.phase = 'stopped';
		this.message =
			error instanceof StorageFault ? error.message : `${before}${(error as Error).message}`;
	}
}
