// Which stories can tell it? Median times of the search in core, against the same search with the
// slope drawn instead of solved, on one machine in one run. Usage: node scripts/run-ts.mjs bench/search.ts
import { completeRequest } from '#core/search/complete-request.ts';
import { drawCandidate, randomFor } from '#core/search/draw.ts';
import { makePlan, type Plan } from '#core/search/plan.ts';
import { practiceReport } from '#core/search/practice-report.ts';
import { findStories } from '#core/search/search-stories.ts';
import { startStory } from '#core/search/story-run.ts';
import { lawStories, type LawStory } from '#core/search/types.ts';
import { emptyWeighing, weighCandidate } from '#core/search/weigh.ts';

const repeats = 5;
const request = completeRequest({ ...practiceReport, seed: 1, candidates: 20_000 });

function solved(law: LawStory): number {
	const run = startStory(makePlan(request, law, 'none'));
	while (run.step(request.candidates));
	if (run.solved < request.candidates) throw new Error(`${law}: only ${run.solved} solved`);
	return run.fitting;
}

/** The baseline: without an anchor the slope is one more drawn number. */
function drawn(law: LawStory): number {
	const plan: Plan = { ...makePlan(request, law, 'none'), anchor: -1 };
	const random = randomFor(request.seed, plan);
	const weighing = emptyWeighing();
	const values = plan.parameters.map(({ from }) => from);
	let fitting = 0;
	for (let candidate = 0; candidate < request.candidates; candidate++) {
		weighCandidate(plan, values, drawCandidate(plan, random, values), weighing);
		if (weighing.met === plan.trials.length) fitting++;
	}
	return fitting;
}

function median(times: number[]): number {
	return times.sort((a, b) => a - b)[times.length >> 1]!;
}

function timed(search: (law: LawStory) => number, law: LawStory) {
	const times: number[] = [];
	let fitting = 0;
	for (let repeat = 0; repeat < repeats; repeat++) {
		const start = performance.now();
		fitting = search(law);
		times.push(performance.now() - start);
	}
	return { time: median(times), fitting };
}

const perFit = (time: number, fitting: number) =>
	fitting > 0 ? `${(time / fitting).toFixed(1)} ms` : 'none found';

console.log(`20 000 candidates a law, no addition, median of ${repeats} after one warm-up:`);
console.log(
	'law            slope solved: time, fits, time a fit | slope drawn: time, fits, time a fit'
);
for (const law of lawStories) {
	solved(law);
	drawn(law);
}
for (const law of lawStories) {
	const own = timed(solved, law);
	const base = timed(drawn, law);
	console.log(
		[
			law.padEnd(13),
			`${own.time.toFixed(0)} ms`.padStart(8),
			String(own.fitting).padStart(5),
			perFit(own.time, own.fitting).padStart(11),
			'|',
			`${base.time.toFixed(0)} ms`.padStart(8),
			String(base.fitting).padStart(5),
			perFit(base.time, base.fitting).padStart(11)
		].join(' ')
	);
}

const start = performance.now();
const results = findStories(request);
console.log(
	`all ${results.length} laws with additions, once, results written out: ${(performance.now() - start).toFixed(0)} ms`
);
