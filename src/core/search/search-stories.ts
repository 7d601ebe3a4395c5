import { completeRequest } from './complete-request.ts';
import { makePlan } from './plan.ts';
import { startStory } from './story-run.ts';
import { storyResult } from './story-result.ts';
import type { SearchProgress, SearchRequest, StoryResult } from './types.ts';

/**
 * Searches each law, alone and with each addition, for set-ups that reproduce all that was seen.
 * Numbers are drawn evenly from the stated ranges with a seed; the slope is solved from the barely
 * held go, and each grip's strength from the goes it held and opened.
 * @param request what was seen, the grips and the seed; see completeRequest for the defaults
 * @param slice candidates between two reports of progress
 * @returns a generator: each value is the progress so far, the last one the results, law by law. Stop
 * calling it to cancel.
 * Valid for: a flat hold, fixed patches, one strength a grip. The share of set-ups that fit says how
 * finely a story must be tuned within the ranges; it is not a probability.
 * @throws RangeError for a request outside its ranges, at the first call of next
 * Source: derived.
 * Example: [...searchStories({ ...practiceReport, seed: 1 })].length counts the slices.
 */
export function* searchStories(
	request: SearchRequest,
	slice = 2000
): Generator<SearchProgress, StoryResult[], void> {
	const complete = completeRequest(request);
	const { laws, additions, candidates } = complete;
	const total = laws.length * additions.length * candidates;
	const results: StoryResult[] = [];
	for (const law of laws) {
		for (const addition of additions) {
			const run = startStory(makePlan(complete, law, addition));
			const before = results.length * candidates;
			while (run.step(slice)) yield { solved: before + run.solved, total, law, addition };
			const finished = storyResult(run);
			results.push(finished);
			yield { solved: results.length * candidates, total, law, addition, finished };
		}
	}
	return results;
}

/**
 * Searches without a pause; see searchStories.
 * @param request what was seen, the grips and the seed
 * @returns the results, law by law
 * @throws RangeError for a request outside its ranges
 * Source: derived.
 * Example: findStories({ ...practiceReport, seed: 1 }) has 24 results.
 */
export function findStories(request: SearchRequest): StoryResult[] {
	const run = searchStories(request);
	for (;;) {
		const { done, value } = run.next();
		if (done) return value;
	}
}
