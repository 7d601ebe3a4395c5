// Times the twelve stories: node scripts/run-ts.mjs bench/stories.ts
import { performance } from 'node:perf_hooks';
import { integrate } from '../src/core/statistics/integrate.ts';
import { seededRandom } from '../src/core/statistics/random.ts';
import { settingsOf } from '../src/core/trials/settings.ts';
import { slipDensity } from '../src/core/trials/slip-density.ts';
import { addTrial, openBook, tidyBook } from '../src/core/trials/story-book.ts';
import { storyEvidence } from '../src/core/trials/story-evidence.ts';
import { type Story, storyVersions, type Trial } from '../src/core/trials/trial.ts';
import { rowsFor } from '../src/core/trials/two-stages.ts';

const options = { referenceLoad: 60 };

/** Made-up trials in which no two are alike, so that no row can be merged. */
function madeUp(count: number, seed: number): Trial[] {
	const random = seededRandom(seed);
	return Array.from({ length: count }, (_, k) => {
		const load = 38 * Math.exp(random.uniform() * Math.log(2.2));
		const ropeTerm = (random.uniform() - 0.5) * 0.4;
		const margin = 0.4 + 1.5 * Math.log(load / 60) - 5 * ropeTerm;
		const outcome = margin + random.normal() > 0 ? 'held' : 'slipped';
		return { load, ropeTerm, outcome, order: (k + 1 - (count + 1) / 2) / 10 };
	});
}

function median(values: number[]): number {
	return [...values].sort((a, b) => a - b)[values.length >> 1]!;
}

type Timing = { median: number; least: number; processor: number };

function timed(repeats: number, work: () => void): Timing {
	const used = process.cpuUsage();
	const times = Array.from({ length: repeats }, () => {
		const start = performance.now();
		work();
		return performance.now() - start;
	});
	const { user, system } = process.cpuUsage(used);
	const processor = (user + system) / 1000 / repeats;
	return { median: median(times), least: Math.min(...times), processor };
}

const show = ({ median, least, processor }: Timing): string =>
	`median ${median.toFixed(1)} ms, least ${least.toFixed(1)} ms (processor ${processor.toFixed(1)} ms a run)`;

function withExactLogarithms(trials: Trial[]): number[] {
	const settings = settingsOf(options);
	return storyVersions.map((version) => {
		const rows = rowsFor(trials, version, 60);
		const density = slipDensity(rows, version, settings.priors, 0, true);
		return integrate(density, { depth: 20 }).sum.logEvidence;
	});
}

for (const trials of [madeUp(24, 1), madeUp(60, 2)]) storyEvidence(trials, options);

console.log('All twelve stories, every trial different');
const perTrial: [number, number][] = [];
for (const count of [24, 60, 120, 240]) {
	const trials = madeUp(count, count);
	const time = timed(count < 100 ? 9 : 5, () => storyEvidence(trials, options));
	perTrial.push([count, time.median]);
	console.log(`${count} trials: ${show(time)}`);
}
console.log(
	'Time a trial: ' +
		perTrial.map(([count, time]) => `${count}: ${(time / count).toFixed(2)} ms`).join(', ')
);

console.log('\nError against lattices of half the spacing (largest of twelve)');
for (const count of [24, 60]) {
	const trials = madeUp(count, count);
	const settings = settingsOf(options);
	const quick = storyEvidence(trials, options);
	const errors = storyVersions.map((version, k) => {
		const rows = rowsFor(trials, version, 60);
		const size =
			1 +
			(version.story === 'constant' ? 0 : version.story.split('+').length) +
			Number(version.withOrder);
		const density = slipDensity(rows, version, settings.priors, 0, true);
		const closer = integrate(density, { step: size === 4 ? 0.5 : 0.35, depth: 28 });
		return Math.abs(closer.sum.logEvidence - quick[k]!.logEvidence);
	});
	console.log(`${count} trials: ${Math.max(...errors).toExponential(1)}`);
}

console.log('\nThe same lattices with an exact ln Φ each time');
for (const count of [24, 60]) {
	const trials = madeUp(count, count);
	console.log(`${count} trials: ${show(timed(3, () => withExactLogarithms(trials)))}`);
}

console.log('\nAdding one trial to a kept book');
for (const count of [24, 60]) {
	const trials = madeUp(count + 12, count);
	let book = openBook(trials.slice(0, count), options);
	const opening = timed(3, () => openBook(trials.slice(0, count), options));
	const times: number[] = [];
	const tidy: number[] = [];
	const processor: number[] = [];
	let worst = 0;
	for (const trial of trials.slice(count)) {
		const start = performance.now();
		const used = process.cpuUsage();
		book = addTrial(book, trial);
		times.push(performance.now() - start);
		const { user, system } = process.cpuUsage(used);
		processor.push((user + system) / 1000);
		const tidying = performance.now();
		book = tidyBook(book);
		tidy.push(performance.now() - tidying);
		const anew = storyEvidence(book.trials, options);
		anew.forEach(({ logEvidence }, k) => {
			worst = Math.max(worst, Math.abs(logEvidence - book.evidence[k]!.logEvidence));
		});
	}
	console.log(
		`${count} trials: opening ${show(opening)}; adding ${times.map((t) => t.toFixed(1)).join(', ')} ms (processor ${processor.map((t) => t.toFixed(1)).join(', ')}); ` +
			`tidying up afterwards ${tidy.map((t) => t.toFixed(0)).join(', ')} ms; ` +
			`largest difference from a full computation ${worst.toExponential(1)}`
	);
}

const points = storyVersions.map((version) => {
	const settings = settingsOf(options);
	const rows = rowsFor(madeUp(60, 60), version, 60);
	const { lattice } = integrate(slipDensity(rows, version, settings.priors, 0), { depth: 20 });
	return [version.story + (version.withOrder ? ' with order' : ''), lattice.inner.length] as [
		Story,
		number
	];
});
console.log('\nPoints a story, 60 trials: ' + points.map(([s, n]) => `${s} ${n}`).join(', '));
