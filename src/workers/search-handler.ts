import { searchStories } from '#core/search/search-stories.ts';
import type { SearchProgress, StoryResult } from '#core/search/types.ts';
import type { SearchCommand, SearchReport } from './search-messages.ts';

/** Candidates between two looks at the letter box: some 15 ms of work. */
const slice = 2000;

/**
 * Runs searches in slices, one at a time, and listens for a cancel between them.
 * Knows neither worker nor clock: `post` sends a report, `later` runs a function once the messages
 * that have come meanwhile are read.
 */
export function searchHandler(
	post: (report: SearchReport) => void,
	later: (next: () => void) => void
): (command: SearchCommand) => void {
	let running: { id: number; run: Generator<SearchProgress, StoryResult[], void> } | undefined;

	function stop(): void {
		if (!running) return;
		const { id } = running;
		running = undefined;
		post({ type: 'cancelled', id });
	}

	function advance(mine: NonNullable<typeof running>): void {
		if (running !== mine) return;
		const { id, run } = mine;
		try {
			const { done, value } = run.next();
			if (done) {
				running = undefined;
				post({ type: 'done', id, results: value });
				return;
			}
			post({ type: 'progress', id, progress: value });
		} catch (error) {
			running = undefined;
			post({ type: 'failed', id, message: error instanceof Error ? error.message : String(error) });
			return;
		}
		later(() => advance(mine));
	}

	return (command) => {
		if (command.type === 'cancel') {
			if (running?.id === command.id) stop();
			return;
		}
		stop();
		const mine = { id: command.id, run: searchStories(command.request, slice) };
		running = mine;
		advance(mine);
	};
}
