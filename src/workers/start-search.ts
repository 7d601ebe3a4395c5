/** Starts the search worker. It stands beside the worker, for Vite finds a worker by a relative path. */
export function startSearchWorker(): Worker {
	return new Worker(new URL('./search.worker.ts', import.meta.url), { type: 'module' });
}
