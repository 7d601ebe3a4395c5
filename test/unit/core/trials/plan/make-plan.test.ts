import { describe, expect, test } from 'vitest';
import { planRefusals } from '#core/trials/plan/check-choice.ts';
import { makePlan } from '#core/trials/plan/make-plan.ts';
import type { PlanChoice } from '#core/trials/plan/types.ts';
import { planVerdict } from '#core/trials/plan/verdict.ts';
import { within } from '#test/within.ts';

const choice: PlanChoice = {
	seed: 11,
	design: 'shuffled',
	grips: [
		{ grip: 'open', loads: [40, 60], ownMaximum: 80, bestGuess: 70, history: [] },
		{ grip: 'crimp', loads: [45, 65], ownMaximum: 90, bestGuess: 80, history: [] }
	],
	ropeSides: ['away', 'toward'],
	repeats: 3,
	check: { grip: 'open', load: 50, ropeSide: 'away' },
	step: 0.06,
	increment: 0.5,
	targetSeconds: 5,
	restSeconds: 180,
	setupSeconds: 30,
	session: 1,
	adult: true
};

describe('making a plan', () => {
	const plan = makePlan(choice);
	const tests = plan.trials.filter(({ kind }) => kind === 'test');

	test('each block holds each condition once; checks stand at start, middle and end', () => {
		expect(tests).toHaveLength(24);
		for (const block of [1, 2, 3]) {
			const seen = tests
				.filter((row) => row.block === block)
				.map(({ grip, load, ropeSide }) => `${grip} ${load} ${ropeSide}`);
			expect(seen).toHaveLength(8);
			expect(new Set(seen).size).toBe(8);
		}
		const analysed = plan.trials.filter(({ kind }) => kind !== 'warm-up');
		expect(analysed.map(({ number }) => number)).toEqual(analysed.map((_, i) => i + 1));
		expect(analysed.flatMap(({ kind }, i) => (kind === 'check' ? i : []))).toEqual([0, 13, 26]);
		expect(plan.plannedNumber).toBe(27);
		within(
			analysed.reduce((sum, { order }) => sum + order!, 0),
			0,
			{ absolute: 1e-12 }
		);
	});

	test('the warm-up comes first, has no number and climbs to each grip’s heaviest load', () => {
		const count = plan.trials.findIndex(({ kind }) => kind !== 'warm-up');
		const warmUp = plan.trials.slice(0, count);
		expect(plan.trials.slice(count).every(({ kind }) => kind !== 'warm-up')).toBe(true);
		expect(warmUp.every(({ number, order }) => number === null && order === null)).toBe(true);
		expect(warmUp.filter(({ grip }) => grip === 'open').map(({ load }) => load)).toEqual([
			35, 38.5, 42, 46, 50.5, 55.5, 60
		]);
		expect(warmUp.filter(({ grip }) => grip === 'crimp').at(-1)?.load).toBe(65);
	});

	test('the same choice gives the same plan, another seed another', () => {
		expect(makePlan(choice)).toEqual(plan);
		expect(makePlan({ ...choice, seed: 12 }).trials).not.toEqual(plan.trials);
	});

	test('the mean rope term is fixed over the planned trials', () => {
		const only = { ...choice, check: null };
		const made = makePlan(only, ({ ropeSide }) => (ropeSide === 'away' ? 0.3 : -0.1));
		within(made.meanRopeTerm!, 0.1, { relative: 1e-12 });
		expect(makePlan(only).meanRopeTerm).toBeNull();
	});

	test('duration counts every hang and every rest', () => {
		const hangs = plan.trials.length;
		expect(plan.durationSeconds).toBe(hangs * 35 + (hangs - 1) * 180);
	});

	test('a load above a cap is refused with the rule', () => {
		const [open, crimp] = choice.grips;
		const heavy = { ...choice, grips: [{ ...open!, loads: [40, 85] }, crimp!] };
		expect(planRefusals(heavy)).toEqual([
			{ grip: 'open', load: 85, reason: 'own-maximum', limit: 80 }
		]);
		expect(() => makePlan(heavy)).toThrow(/load of open is 85 kg.*own-maximum.*0 to 80 kg/);
		const opened = {
			...choice,
			grips: [{ ...open!, history: [{ load: 55, outcome: 'opened', session: 1 } as const] }, crimp!]
		};
		expect(planRefusals(opened)).toEqual([{ grip: 'open', load: 60, reason: 'opened', limit: 55 }]);
	});

	test('pain with one grip, or a person not marked adult, refuses every load', () => {
		const [open, crimp] = choice.grips;
		const hurt = { load: 30, outcome: 'stopped', reason: 'pain', session: 1 } as const;
		const pain = { ...choice, grips: [open!, { ...crimp!, history: [hurt] }] };
		expect(planRefusals(pain)).toHaveLength(5);
		expect(planRefusals(pain).every(({ reason }) => reason === 'pain')).toBe(true);
		expect(planRefusals({ ...choice, adult: false })[0]).toMatchObject({
			reason: 'adult',
			limit: 0
		});
	});

	test('held before: the ladder still starts low, and never above the cap', () => {
		const held = [{ load: 20, outcome: 'held', seconds: 5, session: 0 } as const];
		const made = makePlan({ ...choice, grips: [{ ...choice.grips[0]!, history: held }] });
		within(made.trials[0]!.load!, 22, { relative: 1e-12 });
	});

	test('bad choices are refused by name, value and range', () => {
		const bad: [Partial<PlanChoice>, RegExp][] = [
			[{ repeats: 0 }, /repeats is 0; it must be a whole number from 1 to 500/],
			[{ seed: 0.5 }, /seed is 0.5/],
			[{ ropeSides: [] }, /ropeSides is 0/],
			[{ targetSeconds: 0 }, /targetSeconds is 0/],
			[{ restSeconds: -1 }, /restSeconds is -1/],
			[{ repeats: 100 }, /trials are 800; a plan holds 1 to 500/],
			[{ check: { grip: 'none', load: 1, ropeSide: 'away' } }, /check grip is none/],
			[{ design: 'up-and-down' }, /up-and-down starts from 1 load/],
			[{ design: 'abba' }, /conditions are 8; ABBA/],
			[{ grips: [choice.grips[0]!, choice.grips[0]!] }, /one grip twice/]
		];
		for (const [change, message] of bad) {
			expect(() => makePlan({ ...choice, ...change })).toThrow(message);
		}
	});
});

describe('what a plan can and cannot tell', () => {
	const codes = (change: Partial<PlanChoice>) =>
		planVerdict(makePlan({ ...choice, check: null, grips: [choice.grips[0]!], ...change }))[0]!
			.cautions;

	test('six trials cannot separate the explanations', () => {
		const said = codes({ repeats: 3, ropeSides: ['plumb'] });
		expect(said.map(({ code }) => code)).toEqual(
			expect.arrayContaining(['too-few', 'rope-not-moved'])
		);
		expect(said[0]!.text).toMatch(/^Six trials cannot separate these explanations/);
	});

	test('a rope always to one side, loads too alike, one block', () => {
		const grips = [{ ...choice.grips[0]!, loads: [50, 60] }];
		const said = codes({ repeats: 1, ropeSides: ['away'], grips }).map(({ code }) => code);
		expect(said).toEqual(
			expect.arrayContaining(['rope-one-side', 'range-narrow', 'one-block', 'tangled'])
		);
	});

	test('a good plan earns no caution but what is true of it', () => {
		expect(codes({ repeats: 6 })).toEqual([]);
	});

	test('up-and-down says what it is for', () => {
		const grips = [{ ...choice.grips[0]!, loads: [40] }];
		const said = codes({ design: 'up-and-down', repeats: 12, grips }).map(({ code }) => code);
		expect(said).toContain('up-and-down');
		expect(said).not.toContain('one-load');
	});
});
