import { normalCdf } from '../statistics/normal.ts';
import { seededRandom } from '../statistics/random.ts';
import { shares } from '../statistics/log-sum.ts';
import { checkNumber, checkTrials } from './check-trials.ts';
import { defaultPriors, type Priors } from './priors.ts';
import { settingsOf } from './settings.ts';
import { fitSlip } from './stage-fit.ts';
import { stories, type Story, type StoryVersion, type Trial } from './trial.ts';
import { rowsFor } from './two-stages.ts';

/** A trial as planned, before it has an outcome. */
export type PlannedTrial = Pick<Trial, 'load' | 'ropeTerm' | 'order'>;

/** What is supposed to be true in the simulated trials. */
export type Truth = {
	/** Probits of not slipping at the reference load, plumb rope, mid-session. */
	margin: number;
	/** Probits per e-fold of load; positive is easier when heavier. */
	loadEffect: number;
	/** Multiplies the rope term: 1/friction scatter. */
	ropeEffect: number;
	/** Probits per ten trials. */
	orderEffect: number;
};

/** How often each story ended ahead, so far. */
export type Tally = {
	runs: number;
	/** Times each story's share, with and without order together, ended above the bar. */
	won: Record<Story, number>;
};

/**
 * Simulates one's own plan many times under a supposed truth, and counts which story would have won.
 *
 * Outcomes: no slip with chance Φ(a + c x + g o − q r). Each run is judged by the stories given, equal starting
 * weights; a story wins when its share exceeds the bar. One run a step, so that the caller can show progress or stop.
 *
 * @param plan loads in kg, rope and order terms
 * @param o referenceLoad kg; truth; seed; runs; stories to judge among (all six without order when left out), with
 * order terms as well when `withOrder`; bar 0.9 when left out
 * @returns a generator of tallies, one after each run, and at last the tally of all
 * @throws RangeError naming field, value and range
 * Source: derived
 * Example: [...simulatePlan(plan, { ...o, runs: 3 })].length → 3
 */
export function* simulatePlan(
	plan: readonly PlannedTrial[],
	o: {
		referenceLoad: number;
		truth: Truth;
		seed: number;
		runs: number;
		judged?: readonly Story[];
		withOrder?: boolean;
		bar?: number;
		priors?: Priors;
	}
): Generator<Tally, Tally> {
	checkTrials(plan.map((trial) => ({ ...trial, outcome: 'held' })));
	checkNumber('runs', o.runs, { least: 1 });
	for (const [name, value] of Object.entries(o.truth)) checkNumber(`truth.${name}`, value);
	const settings = settingsOf({
		referenceLoad: o.referenceLoad,
		priors: o.priors ?? defaultPriors
	});
	const random = seededRandom(o.seed);
	const judged = o.judged ?? stories;
	const versions = [false, ...(o.withOrder ? [true] : [])].flatMap((withOrder) =>
		judged.map((story): StoryVersion => ({ story, withOrder }))
	);
	const { margin, loadEffect, ropeEffect, orderEffect } = o.truth;
	const chances = plan.map(({ load, ropeTerm, order }) =>
		normalCdf(
			margin +
				loadEffect * Math.log(load / o.referenceLoad) +
				orderEffect * order -
				ropeEffect * ropeTerm
		)
	);
	// Plans repeat their loads, so without an order term many runs come down to the same counts.
	const known = new Map<string, number>();
	const evidence = (trials: readonly Trial[], version: StoryVersion): number => {
		const rows = rowsFor(trials, version, o.referenceLoad);
		if (version.withOrder) return fitSlip(rows, version, settings).sum.logEvidence;
		const sorted = rows
			.map((row) => `${row.lnLoad} ${row.ropeTerm} ${row.stuck} ${row.count}`)
			.sort();
		const key = version.story + sorted.join();
		const before = known.get(key);
		if (before !== undefined) return before;
		const value = fitSlip(rows, version, settings).sum.logEvidence;
		known.set(key, value);
		return value;
	};
	const won = Object.fromEntries(stories.map((story) => [story, 0])) as Record<Story, number>;
	for (let runs = 1; runs <= o.runs; runs += 1) {
		const trials = plan.map((trial, k): Trial => {
			const outcome = random.uniform() < chances[k]! ? 'held' : 'slipped';
			return { ...trial, outcome };
		});
		const weights = shares(versions.map((version) => evidence(trials, version)));
		for (const story of judged) {
			const share = versions.reduce(
				(sum, version, k) => (version.story === story ? sum + weights[k]! : sum),
				0
			);
			if (share > (o.bar ?? 0.9)) won[story] += 1;
		}
		yield { runs, won: { ...won } };
	}
	return { runs: o.runs, won };
}
