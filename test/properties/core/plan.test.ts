import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { loadCap, overCap } from '#core/trials/plan/caps.ts';
import type { CapTrial } from '#core/trials/plan/caps.ts';
import { planRefusals } from '#core/trials/plan/check-choice.ts';
import { shuffledBlocks } from '#core/trials/plan/blocks.ts';
import { warmUpLadder } from '#core/trials/plan/ladder.ts';
import { makePlan } from '#core/trials/plan/make-plan.ts';
import type { Condition, PlanChoice, RopeSide } from '#core/trials/plan/types.ts';

const conditions = (loads: number[], sides: RopeSide[], grips = ['open']): Condition[] =>
	grips.flatMap((grip) =>
		loads.flatMap((load) => sides.map((ropeSide) => ({ grip, load, ropeSide })))
	);

/** The smallest plans for which the limit is promised, and some larger ones. */
const promised: [string, Condition[], number][] = [
	['2 loads × 2 sides, 2 blocks', conditions([40, 60], ['away', 'toward']), 2],
	['2 loads × 2 sides, 3 blocks', conditions([40, 60], ['away', 'toward']), 3],
	['4 loads, 2 blocks', conditions([40, 47, 58, 75], ['plumb']), 2],
	['5 loads, 2 blocks', conditions([40, 45, 50, 55, 60], ['plumb']), 2],
	['3 loads × 2 sides, 4 blocks', conditions([40, 50, 60], ['away', 'toward']), 4],
	['2 grips × 2 loads, 2 blocks', conditions([40, 60], ['plumb'], ['open', 'crimp']), 2],
	['2 loads × 3 sides, 2 blocks', conditions([40, 60], ['away', 'plumb', 'toward']), 2]
];

describe('shuffles over 1,000 seeds', () => {
	for (const [name, list, blocks] of promised) {
		for (const check of [null, { grip: 'open', load: 50, ropeSide: 'plumb' } as const]) {
			// A thousand seeds for the tightest plan, bare and with checks; a tenth for the others.
			const seeds = name.startsWith('2 loads × 2 sides, 2') ? 1000 : 100;
			test(`${name}${check ? ', with checks' : ''}: both correlations under 0.1`, () => {
				let worstLoad = 0;
				let worstSide = 0;
				for (let seed = 0; seed < seeds; seed++) {
					const { rows, tangle } = shuffledBlocks(list, blocks, seed, check);
					const [load, side] = correlations(rows);
					expect(Math.abs(load - tangle.load) < 1e-9).toBe(true);
					worstLoad = Math.max(worstLoad, Math.abs(load));
					worstSide = Math.max(worstSide, Math.abs(side));
				}
				expect(worstLoad).toBeLessThan(0.1);
				expect(worstSide).toBeLessThan(0.1);
			});
		}
	}

	test('the promise holds for any loads, sides, checks and blocks of a promised size', () => {
		fc.assert(
			fc.property(
				fc.uniqueArray(fc.double({ min: 1, max: 150, noNaN: true }), {
					minLength: 4,
					maxLength: 6
				}),
				fc.subarray<RopeSide>(['away', 'plumb', 'toward'], { minLength: 1 }),
				fc.integer({ min: 2, max: 4 }),
				fc.option(fc.double({ min: 1, max: 150, noNaN: true })),
				fc.integer(),
				(some, sides, blocks, load, seed) => {
					const check = load === null ? null : { grip: 'open', load, ropeSide: sides[0]! };
					const made = shuffledBlocks(conditions(some, sides), blocks, seed, check);
					expect(made.promised).toBe(true);
					for (const r of correlations(made.rows)) expect(Math.abs(r)).toBeLessThan(0.1);
				}
			),
			{ numRuns: 300 }
		);
	});

	test('smaller plans promise nothing and say what they reached', () => {
		const { tangle, promised, shuffles } = shuffledBlocks(
			conditions([40, 60], ['plumb']),
			1,
			5,
			null
		);
		expect(promised).toBe(false);
		expect(shuffles).toBe(200);
		expect(Math.abs(tangle.load)).toBe(1);
	});
});

/** A second way to the same correlations: covariance by sums of products. */
function correlations(rows: { load: number | null; ropeSide: RopeSide }[]): [number, number] {
	const of = (values: number[]) => {
		const n = values.length;
		const sum = (f: (i: number) => number) =>
			values.reduce((total, _, index) => total + f(index), 0);
		const x = sum((i) => values[i]!);
		const y = sum((i) => i);
		const top = n * sum((i) => values[i]! * i) - x * y;
		const bottom = Math.sqrt(
			(n * sum((i) => values[i]! ** 2) - x * x) * (n * sum((i) => i * i) - y * y)
		);
		return bottom < 1e-6 ? 0 : top / bottom;
	};
	return [
		of(rows.map(({ load }) => load!)),
		of(rows.map(({ ropeSide }) => ({ away: 1, plumb: 0, toward: -1 })[ropeSide]))
	];
}

const loads = fc.double({ min: 1, max: 150, noNaN: true });
const outcome = fc.constantFrom('held', 'slipped', 'opened', 'stopped', 'unknown');
const history = fc.array(
	fc.record(
		{
			load: loads,
			outcome,
			session: fc.constantFrom(0, 1),
			seconds: fc.double({ min: 0, max: 10, noNaN: true }),
			reason: fc.constantFrom('pain' as const, 'other' as const)
		},
		{ requiredKeys: ['load', 'outcome', 'session'] }
	) as fc.Arbitrary<CapTrial>,
	{ maxLength: 6 }
);
const choices: fc.Arbitrary<PlanChoice> = fc.record({
	seed: fc.integer(),
	design: fc.constant('shuffled' as const),
	grips: fc.array(
		fc.record({
			grip: fc.constant('open'),
			loads: fc.array(loads, { minLength: 1, maxLength: 3 }),
			ownMaximum: loads,
			bestGuess: loads,
			history
		}),
		{ minLength: 1, maxLength: 1 }
	),
	ropeSides: fc.constant<RopeSide[]>(['away']),
	repeats: fc.constant(1),
	check: fc.option(
		fc.record({
			grip: fc.constant('open'),
			load: loads,
			ropeSide: fc.constant<RopeSide>('away')
		})
	),
	step: fc.constant(0.06),
	increment: fc.constantFrom(0, 0.5, 1, 2.5),
	targetSeconds: fc.constant(5),
	restSeconds: fc.constant(180),
	setupSeconds: fc.constant(30),
	session: fc.constant(1),
	adult: fc.boolean()
});

describe('ladder and caps are never broken', () => {
	test('every rung is at most 10 % above the one before, up to the heaviest', () => {
		fc.assert(
			fc.property(loads, loads, fc.constantFrom(0, 0.25, 0.5, 1, 2.5, 20), (a, b, increment) => {
				const rungs = warmUpLadder(a, b, increment);
				expect(rungs.at(-1)).toBe(a);
				expect(rungs[0]).toBe(Math.min(a, b));
				for (let i = 1; i < rungs.length; i++) {
					expect(rungs[i]!).toBeGreaterThan(rungs[i - 1]!);
					expect(rungs[i]! / rungs[i - 1]!).toBeLessThanOrEqual(1.1 * (1 + 1e-12));
				}
			}),
			{ numRuns: 2000 }
		);
	});

	test('a plan that is made, when every hang is held, meets no cap from its first hang on', () => {
		let made = 0;
		fc.assert(
			fc.property(choices, (choice) => {
				if (planRefusals(choice).length > 0) {
					expect(() => makePlan(choice)).toThrow(RangeError);
					return;
				}
				made++;
				const { history, ownMaximum, bestGuess } = choice.grips[0]!;
				const trials = [...history];
				const rules = { ownMaximum, bestGuess, adult: true, session: 1, targetSeconds: 5 };
				for (const { load } of makePlan(choice).trials) {
					expect(overCap(load!, loadCap(trials, rules))).toBeNull();
					trials.push({ load: load!, outcome: 'held', seconds: 5, session: 1 });
				}
			}),
			{ numRuns: 2000 }
		);
		expect(made).toBeGreaterThan(100);
	});

	test('whatever was hung, an allowed load breaks none of the rules, each read on its own', () => {
		fc.assert(
			fc.property(history, loads, loads, loads, (trials, load, ownMaximum, bestGuess) => {
				const rules = { ownMaximum, bestGuess, adult: true, session: 1, targetSeconds: 5 };
				if (overCap(load, loadCap(trials, rules)) !== null) return;
				const slack = 1 + 1e-9;
				expect(load).toBeLessThanOrEqual(ownMaximum * slack);
				const held = trials.filter(
					(trial) => trial.outcome === 'held' && (trial.seconds ?? 5) >= 5
				);
				const most = held.length ? 1.1 * Math.max(...held.map((t) => t.load)) : bestGuess / 2;
				expect(load).toBeLessThanOrEqual(most * slack);
				for (const trial of trials.filter(({ session }) => session === 1)) {
					expect(trial.reason).not.toBe('pain');
					if (trial.outcome === 'opened' || trial.outcome === 'stopped') {
						expect(load).toBeLessThanOrEqual(trial.load * slack);
					}
				}
			}),
			{ numRuns: 5000 }
		);
	});

	test('a slip added to any history changes no cap', () => {
		fc.assert(
			fc.property(history, loads, loads, (trials, slip, load) => {
				const rules = { ownMaximum: 200, bestGuess: 80, adult: true, session: 1 };
				const slipped = { load: slip, outcome: 'slipped', session: 1 } as const;
				expect(overCap(load, loadCap([...trials, slipped], rules))).toBe(
					overCap(load, loadCap(trials, rules))
				);
			})
		);
	});
});
