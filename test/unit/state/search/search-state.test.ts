import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { SearchState } from '#state/search/search.svelte.ts';
import { firstSight } from '#storage/codecs/setup.ts';
import { searchHandler } from '#workers/search-handler.ts';
import type { SearchCommand, SearchReport } from '#workers/search-messages.ts';

/** A worker on this thread: the real handler, one slice a turn. */
class NearWorker {
	onmessage: ((event: { data: SearchReport }) => void) | undefined;
	stopped = false;
	#handle = searchHandler(
		(data) => {
			if (!this.stopped) this.onmessage?.({ data });
		},
		(next) => setTimeout(next, 0)
	);
	postMessage(command: SearchCommand) {
		this.#handle(command);
	}
	terminate() {
		this.stopped = true;
	}
}

beforeEach(() => vi.stubGlobal('Worker', NearWorker));
afterEach(() => vi.unstubAllGlobals());

const small = () => {
	const search = new SearchState();
	search.change({ candidates: 200 });
	return search;
};
const ended = (search: SearchState) => vi.waitUntil(() => search.status !== 'running', 50_000);

test('a search runs to its end, and its answers go out of date when the statement changes', async () => {
	const search = small();
	search.start(firstSight);
	expect(search.status).toBe('running');
	await ended(search);
	expect(search.status).toBe('done');
	expect(search.results).toHaveLength(24);
	expect(search.outdated(firstSight)).toBe(false);
	expect(search.outdated({ ...firstSight, body: 60 })).toBe(true);
	search.changeGo('go1', { load: 0.9 });
	expect(search.outdated(firstSight)).toBe(true);
	search.example();
	expect(search.outdated(firstSight)).toBe(false);
});

test('a cancelled search keeps what was finished, and late reports are left aside', async () => {
	const search = small();
	search.change({ candidates: 5000 });
	search.start(firstSight);
	await vi.waitUntil(() => search.results.length > 0, 50_000);
	search.cancel();
	await ended(search);
	expect(search.status).toBe('cancelled');
	expect(search.results.length).toBeLessThan(24);
	const kept = search.results;
	search.hear({ type: 'done', id: 0, results: [] });
	expect(search.results).toBe(kept);
});

test('a request that is not allowed fails in words', async () => {
	const search = small();
	search.start({ ...firstSight, padWidth: 10, padLength: 15 });
	await ended(search);
	expect(search.status).toBe('failed');
	expect(search.failure).toContain('padArea');
});

test('goes and grips are added, moved and removed; messages about a removed one go with it', () => {
	const search = new SearchState();
	search.addGrip();
	search.addGo();
	const go = search.statement.goes.at(-1)!;
	expect(search.statement.goes).toHaveLength(8);
	expect(go.grip).toBe('threeOpen');
	search.moveGo(go.id, -1);
	expect(search.statement.goes.at(-2)!.id).toBe(go.id);
	search.fieldProblem(`${go.id}-load`, 'Load takes a number.');
	expect(search.problems(firstSight)).toEqual(['Load takes a number.']);
	search.removeGo(go.id);
	expect(search.problems(firstSight)).toEqual([]);
	search.removeGrip(search.statement.grips.at(-1)!.id);
	expect(search.isExample).toBe(true);
});
