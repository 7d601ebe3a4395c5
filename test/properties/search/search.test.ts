import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { evaluateHang, loadAtNetMass } from '#core/index.ts';
import { completeRequest } from '#core/search/complete-request.ts';
import { conflictOf } from '#core/search/conflict.ts';
import { drawCandidate, randomFor } from '#core/search/draw.ts';
import { foundSetup } from '#core/search/found-setup.ts';
import { makePlan } from '#core/search/plan.ts';
import { practiceReport } from '#core/search/practice-report.ts';
import { refine } from '#core/search/refine.ts';
import { findStories, searchStories } from '#core/search/search-stories.ts';
import { startStory } from '#core/search/story-run.ts';
import {
	additions,
	lawStories,
	type Observation,
	type SearchProgress,
	type StoryResult
} from '#core/search/types.ts';
import { emptyWeighing, weighCandidate } from '#core/search/weigh.ts';
import { within } from '#test/within.ts';
import { unmetGoes } from './outcomes.ts';

const { observations } = practiceReport;
const seeds = fc.integer({ min: -1000000, max: 1000000 });
const law = fc.constantFrom(...lawStories);
const addition = fc.constantFrom(...additions);
const bodyMass = fc.double({ min: 45, max: 110, noNaN: true });

function planOf(o: {
	seed: number;
	law: (typeof lawStories)[number];
	addition: (typeof additions)[number];
	bodyMass?: number;
	observations?: Observation[];
	candidates?: number;
}) {
	return makePlan(
		completeRequest({ ...practiceReport, candidates: 3000, ...o, laws: [o.law] }),
		o.law,
		o.addition
	);
}

describe('search', () => {
	test('every fitting set-up gives all seven outcomes in evaluateHang', () => {
		let checked = 0;
		fc.assert(
			fc.property(fc.record({ seed: seeds, law, addition, bodyMass }), (o) => {
				const run = startStory(planOf(o));
				run.step(3000);
				const finds = run.refined ? [...run.kept, run.refined] : run.kept;
				expect(run.kept.length).toBe(run.fitting);
				for (const { values } of finds) {
					const setup = foundSetup(run.plan, values);
					expect(unmetGoes(setup, observations)).toEqual([]);
					checked++;
				}
			}),
			{ numRuns: 60, seed: 1 }
		);
		expect(checked).toBeGreaterThan(1000);
	});

	test('what the search says of the goes of its closest candidate is what evaluateHang says', () => {
		fc.assert(
			fc.property(fc.record({ seed: seeds, law, addition }), (o) => {
				const run = startStory(planOf({ ...o, candidates: 200 }));
				run.step(200);
				const setup = foundSetup(run.plan, run.top!.values);
				const unmet = setup.trials.filter(({ met }) => !met).map(({ order }) => order);
				expect(unmet).toEqual(unmetGoes(setup, observations));
				for (const { hang, load, slipMargin, strengthMargin } of setup.trials) {
					const result = evaluateHang(hang, load);
					within(slipMargin, result.slipMargin, { relative: 1e-12 });
					within(strengthMargin, result.strengthMargin, { relative: 1e-12 });
				}
			}),
			{ numRuns: 60, seed: 2 }
		);
	});

	test('the slope is solved: the barely held go has the slip margin that was drawn', () => {
		let solved = 0;
		fc.assert(
			fc.property(fc.record({ seed: seeds, law, addition }), (o) => {
				const plan = planOf(o);
				const random = randomFor(o.seed, plan);
				const values = plan.parameters.map(({ from }) => from);
				const margin = drawCandidate(plan, random, values);
				if (!weighCandidate(plan, values, margin, emptyWeighing())) return;
				solved++;
				const go = foundSetup(plan, values).trials[plan.anchor]!;
				within(evaluateHang(go.hang, go.load).slipMargin, margin, { relative: 1e-10 });
			}),
			{ numRuns: 300, seed: 3 }
		);
		expect(solved).toBeGreaterThan(200);
	});

	test('a set-up of the story itself is never ruled out by reasoning', () => {
		const loads = fc.uniqueArray(fc.integer({ min: 60, max: 140 }), {
			minLength: 2,
			maxLength: 5
		});
		let told = 0;
		fc.assert(
			fc.property(fc.record({ seed: seeds, law, addition, loads, open: loads }), (o) => {
				const wanted = planOf(o);
				const random = randomFor(o.seed, wanted);
				const values = wanted.parameters.map(({ from, to }) => from + (to - from) * random());
				drawCandidate(wanted, random, values);
				const goes = [
					...o.loads.map((load) => ({ grip: 'halfCrimp', load: load / 100 })),
					...o.open.map((load) => ({ grip: 'threeOpen', load: load / 100 }))
				].map((go, index) => ({ ...go, order: index + 1, outcome: { kind: 'held' as const } }));
				const truth = foundSetup(planOf({ ...o, observations: goes }), values);
				const seen = outcomesOf(truth, goes);
				if (seen.length === 0) return;
				told += seen.length;
				expect(conflictOf(planOf({ ...o, observations: seen }))).toBeUndefined();
			}),
			{ numRuns: 3000, seed: 4 }
		);
		expect(told).toBeGreaterThan(5000);
	});

	test('where a reason is proven, moving the closest candidate never makes it fit', () => {
		const proven = lawStories.flatMap((law) =>
			additions
				.map((addition) => ({ law, addition }))
				.filter((o) => conflictOf(planOf({ ...o, seed: 1 })))
		);
		expect(proven).toHaveLength(9);
		for (const o of proven) {
			const run = startStory(planOf({ ...o, seed: 5 }));
			run.step(3000);
			expect(run.fitting).toBe(0);
			const reached = refine(run.plan, run.top!, randomFor(6, run.plan));
			expect(reached.met).toBeLessThan(observations.length);
		}
	});

	test('the answer depends on the seed alone, not on slices or on what else is searched', () => {
		const request = { ...practiceReport, seed: 7, candidates: 500 };
		const whole = findStories(request);
		expect(whole).toHaveLength(24);
		for (const slice of [1000, 37]) {
			expect(finish(searchStories(request, slice)).results).toEqual(whole);
		}
		const alone = findStories({ ...request, laws: ['film'], additions: ['rope'] });
		expect(alone).toEqual(whole.filter((r) => r.law === 'film' && r.addition === 'rope'));
		expect(findStories({ ...request, seed: 8 })).not.toEqual(whole);
	});

	test('progress rises to the total, and each law with each addition is reported once', () => {
		const request = { ...practiceReport, seed: 9, candidates: 300, laws: ['film'] as const };
		const { results, reports } = finish(searchStories(request, 100));
		const solved = reports.map((report) => report.solved);
		expect(solved).toEqual([...solved].sort((a, b) => a - b));
		expect(solved.at(-1)).toBe(reports[0]!.total);
		expect(reports.flatMap(({ finished }) => finished ?? [])).toEqual(results);
	});

	test('at both ends of every movement the example still fits, and a little further it does not', () => {
		const can = findStories({ ...practiceReport, seed: 10 }).filter((r) => r.verdict === 'can');
		expect(can.length).toBeGreaterThan(10);
		for (const result of can) {
			const plan = planOf({ ...result, seed: 10 });
			const at = result.movements.map(({ value }) => value);
			result.movements.forEach(({ moves, value, from, to }, index) => {
				expect(moves.from).toBeLessThanOrEqual(value);
				expect(moves.to).toBeGreaterThanOrEqual(value);
				const fits = (moved: number) =>
					unmetGoes(foundSetup(plan, at.with(index, moved)), observations).length === 0;
				expect(fits(moves.from) && fits(moves.to)).toBe(true);
				const little = 1e-4 * (to - from);
				if (moves.from - little > from) expect(fits(moves.from - little)).toBe(false);
				if (moves.to + little < to) expect(fits(moves.to + little)).toBe(false);
			});
		}
	});
});

/** What a hand would report of a known set-up, goes between the thresholds left out. */
function outcomesOf(
	setup: ReturnType<typeof foundSetup>,
	goes: readonly Observation[]
): Observation[] {
	const margins = setup.trials.map(({ hang, netMass }) =>
		evaluateHang(hang, loadAtNetMass(netMass, hang))
	);
	return goes.flatMap((go, index): Observation[] => {
		const { slipMargin, strengthMargin } = margins[index]!;
		const margin = Math.min(slipMargin, strengthMargin);
		const easier = goes.findIndex(
			(other, at) =>
				at < index &&
				other.grip === go.grip &&
				margins[at]!.slipMargin >= 0.98 &&
				slipMargin >= 1.02 * margins[at]!.slipMargin
		);
		if (easier >= 0 && strengthMargin >= 1 && margins[easier]!.strengthMargin >= 1) {
			return margins[easier]!.slipMargin >= 1
				? [{ ...go, outcome: { kind: 'easier', than: goes[easier]!.order } }]
				: [];
		}
		if (slipMargin < 0.98) return [{ ...go, outcome: { kind: 'slipped' } }];
		if (slipMargin >= 1 && strengthMargin < 0.98) return [{ ...go, outcome: { kind: 'opened' } }];
		if (margin >= 1) return [{ ...go, outcome: { kind: margin <= 1.1 ? 'barely' : 'held' } }];
		return [];
	});
}

function finish(run: Generator<SearchProgress, StoryResult[], void>) {
	const reports: SearchProgress[] = [];
	for (;;) {
		const { done, value } = run.next();
		if (done) return { results: value, reports };
		reports.push(value);
	}
}
