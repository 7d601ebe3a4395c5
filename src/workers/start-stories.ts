/** Starts the worker that fits stories and limits; beside it, since the bundler reads this address literally. */
export function startStories(): Worker {
	return new Worker(new URL('./stories.worker.ts', import.meta.url), { type: 'module' });
}
