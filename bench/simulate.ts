// Simulates how many trials a clear answer needs: node scripts/run-ts.mjs bench/simulate.ts [quick]
// Eight named cells with an answer known from our own earlier simulation; exits 1 when one is missed.
import { normalCdf } from '../src/core/statistics/normal.ts';
import { shares } from '../src/core/statistics/log-sum.ts';
import { seededRandom } from '../src/core/statistics/random.ts';
import { ropeTerm } from '../src/core/trials/rope-term.ts';
import { settingsOf } from '../src/core/trials/settings.ts';
import { fitSlip } from '../src/core/trials/stage-fit.ts';
import type { Story, StoryVersion, Trial } from '../src/core/trials/trial.ts';
import { rowsFor } from '../src/core/trials/two-stages.ts';

type Planned = Pick<Trial, 'load' | 'ropeTerm' | 'order'>;
type Truth = { margin: number; load: number; rope: number; order: number };

const quick = process.argv.includes('quick');
const known = new Map<string, number>();

/** Evidence, remembered by what the story can see of the trials. */
function evidence(trials: Trial[], version: StoryVersion, referenceLoad: number): number {
	const rows = rowsFor(trials, version, referenceLoad);
	const key =
		`${version.story}${version.withOrder}` +
		rows
			.map((row) => `${row.lnLoad} ${row.ropeTerm} ${row.order} ${row.stuck} ${row.count}`)
			.sort()
			.join();
	const before = known.get(key);
	if (before !== undefined) return before;
	const value = fitSlip(rows, version, settingsOf({ referenceLoad })).sum.logEvidence;
	if (known.size > 200_000) known.clear();
	known.set(key, value);
	return value;
}

/** Share of simulated sessions in which a story ends above 0.9. */
function wins(
	plan: (run: number) => Planned[],
	truth: Truth,
	versions: StoryVersion[],
	o: { referenceLoad: number; runs: number; seed: number }
): Partial<Record<Story, number>> {
	const random = seededRandom(o.seed);
	const won: Partial<Record<Story, number>> = {};
	const runs = quick ? Math.ceil(o.runs / 10) : o.runs;
	for (let run = 0; run < runs; run += 1) {
		const trials = plan(run).map((trial): Trial => {
			const eta =
				truth.margin +
				truth.load * Math.log(trial.load / o.referenceLoad) +
				truth.order * trial.order -
				truth.rope * trial.ropeTerm;
			return { ...trial, outcome: random.uniform() < normalCdf(eta) ? 'held' : 'slipped' };
		});
		const weights = shares(versions.map((version) => evidence(trials, version, o.referenceLoad)));
		const total: Partial<Record<Story, number>> = {};
		versions.forEach(({ story }, k) => (total[story] = (total[story] ?? 0) + weights[k]!));
		for (const [story, weight] of Object.entries(total) as [Story, number][])
			if (weight > 0.9) won[story] = (won[story] ?? 0) + 1 / runs;
	}
	return won;
}

const plain = (stories: Story[], withOrder = [false]): StoryVersion[] =>
	withOrder.flatMap((order) => stories.map((story) => ({ story, withOrder: order })));
const three = plain(['constant', 'rises', 'falls']);

/** Half the trials at each end of a range, in turn. */
function twoEnds(range: number, count: number): Planned[] {
	return Array.from({ length: count }, (_, k) => ({
		load: 60 * range ** (k % 2 ? 0.5 : -0.5),
		ropeTerm: 0,
		order: (k - (count - 1) / 2) / 10
	}));
}

/** Four even levels over a range of 2.5, lightest first, or shuffled anew each run. */
function fourLevels(count: number, shuffled: boolean): (run: number) => Planned[] {
	const random = seededRandom(99);
	const sorted = Array.from(
		{ length: count },
		(_, k) => 60 * 2.5 ** (Math.floor((4 * k) / count) / 3 - 0.5)
	);
	return () =>
		(shuffled ? random.shuffle(sorted) : sorted).map((load, k) => ({
			load,
			ropeTerm: 0,
			order: (k - (count - 1) / 2) / 10
		}));
}

const ropeLoads = [35, 45, 58, 75];
const slope = Math.PI / 6;
const body = 80;

/** How far a rope 5° off tilts the pull: tension (80 − W)/cos 5°. */
function leaning(load: number, side: 1 | -1): number {
	const tilt = Math.atan2((body - load) * Math.tan((5 * Math.PI) / 180), load);
	return ropeTerm(slope, side * tilt);
}

/** Loads in turn; the rope changes side every four trials, or stays on one side. */
function ropePlan(count: number, sides: 'both' | 'one'): () => Planned[] {
	const terms = Array.from({ length: count }, (_, k) => {
		const load = ropeLoads[k % 4]!;
		const side = sides === 'one' || Math.floor(k / 4) % 2 === 0 ? 1 : -1;
		return { load, ropeTerm: leaning(load, side), order: (k - (count - 1) / 2) / 10 };
	});
	return () => terms;
}

const meanRope = (plan: Planned[]): number =>
	plan.reduce((sum, trial) => sum + trial.ropeTerm, 0) / plan.length;

const four = plain(['constant', 'rises', 'falls', 'rope']);
const six = plain(['constant', 'rises', 'falls', 'rope', 'rises+rope', 'falls+rope']);
const rope = { referenceLoad: 53.25, runs: 1500 };
const no = { margin: 0, load: 0, rope: 0, order: 0 };

type Cell = { name: string; expected: number; within: number; value: () => number };
const cells: Cell[] = [
	{
		name: '2x range, c = 2, 24 trials: rises',
		expected: 0.63,
		within: 0.03,
		value: () =>
			wins(() => twoEnds(2, 24), { ...no, load: 2 }, three, {
				referenceLoad: 60,
				runs: 4000,
				seed: 1
			}).rises ?? 0
	},
	{
		name: '3x range, c = 2, 16 trials: rises',
		expected: 0.85,
		within: 0.03,
		value: () =>
			wins(() => twoEnds(3, 16), { ...no, load: 2 }, three, {
				referenceLoad: 60,
				runs: 4000,
				seed: 2
			}).rises ?? 0
	},
	{
		name: '1.5x range, c = 4, 10 trials: rises',
		expected: 0.35,
		within: 0.03,
		value: () =>
			wins(() => twoEnds(1.5, 10), { ...no, load: 4 }, three, {
				referenceLoad: 60,
				runs: 4000,
				seed: 3
			}).rises ?? 0
	},
	{
		name: 'order trap: no load effect, drift 1 per 10, rising order, 32 trials: wrong rises',
		expected: 0.89,
		within: 0.05,
		value: () =>
			wins(fourLevels(32, false), { ...no, order: 1 }, three, {
				referenceLoad: 60,
				runs: 400,
				seed: 4
			}).rises ?? 0
	},
	{
		name: 'the same, 20 trials: wrong rises',
		expected: 0.32,
		within: 0.05,
		value: () =>
			wins(fourLevels(20, false), { ...no, order: 1 }, three, {
				referenceLoad: 60,
				runs: 400,
				seed: 5
			}).rises ?? 0
	},
	{
		name: 'the same, 32 trials, shuffled: wrong rises',
		expected: 0.01,
		within: 0.05,
		value: () =>
			wins(fourLevels(32, true), { ...no, order: 1 }, three, {
				referenceLoad: 60,
				runs: 400,
				seed: 6
			}).rises ?? 0
	},
	{
		name: 'rope ±5°, truth rises c = 4 (geometry off), 24 trials: rises',
		expected: 0.95,
		within: 0.05,
		value: () =>
			wins(ropePlan(24, 'both'), { ...no, load: 4 }, four, { ...rope, seed: 7 }).rises ?? 0
	},
	{
		name: 'rope ±5°, truth rope q = 8, 24 trials: rope',
		expected: 0.94,
		within: 0.05,
		value: () => {
			const plan = ropePlan(24, 'both');
			const truth = { ...no, margin: 8 * meanRope(plan()), rope: 8 };
			return wins(plan, truth, four, { ...rope, seed: 8 }).rope ?? 0;
		}
	},
	{
		name: 'rope always to one side, truth rises c = 4, 48 trials: rises',
		expected: 0,
		within: 0.05,
		value: () =>
			wins(ropePlan(48, 'one'), { ...no, load: 4 }, four, { ...rope, seed: 9 }).rises ?? 0
	}
];

console.log(`Chance that a story ends above 0.9${quick ? ' (a tenth of the runs)' : ''}`);
let missed = 0;
for (const { name, expected, within, value } of cells) {
	const found = value();
	const allowed = quick ? 3 * within : within;
	const ok = Math.abs(found - expected) <= allowed + 0.005; // the expected values are printed to 0.01
	if (!ok) missed += 1;
	console.log(
		`${ok ? 'ok    ' : 'MISSED'} ${name}: ${found.toFixed(3)} (expected ${expected} ± ${within})`
	);
}

console.log(
	'\nTruth has a load effect and the rope’s geometry acts (q = 8, ±5°): how often "rope" alone wins wrongly'
);
for (const load of [4, 2, -1.7]) {
	for (const count of [24, 48]) {
		const plan = ropePlan(count, 'both');
		const truth = { margin: 8 * meanRope(plan()), load, rope: 8, order: 0 };
		const few = { ...rope, runs: 400 };
		const without = wins(plan, truth, four, { ...few, seed: 10 }).rope ?? 0;
		const pairs = wins(plan, truth, six, { ...few, seed: 10 });
		const right = (load > 0 ? pairs['rises+rope'] : pairs['falls+rope']) ?? 0;
		console.log(
			`c = ${load}, ${count} trials: without the pairs ${without.toFixed(3)}, with them ${(pairs.rope ?? 0).toFixed(3)} ` +
				`(the right pair wins in ${right.toFixed(3)})`
		);
	}
}

console.log(
	'\nThe order trap with an order term in the models (drift 1 per 10, rising order): wrong rises, and right for c = 2 without drift'
);
for (const count of [12, 20, 32]) {
	const versions = plain(['constant', 'rises', 'falls'], [false, true]);
	const runs = 200;
	const wrong =
		wins(fourLevels(count, false), { ...no, order: 1 }, versions, {
			referenceLoad: 60,
			runs,
			seed: 11
		}).rises ?? 0;
	const right =
		wins(fourLevels(count, false), { ...no, load: 2 }, versions, {
			referenceLoad: 60,
			runs,
			seed: 12
		}).rises ?? 0;
	console.log(`${count} trials: ${wrong.toFixed(3)}, ${right.toFixed(3)}`);
}

if (missed > 0) {
	console.error(`\n${missed} of ${cells.length} cells missed`);
	process.exitCode = 1;
}
