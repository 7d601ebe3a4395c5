import { describe, expect, test } from 'vitest';
import { abba } from '#core/trials/plan/abba.ts';
import { chanceOfClearAnswer } from '#core/trials/plan/chance-table.ts';
import { sessionSeconds } from '#core/trials/plan/duration.ts';
import { warmUpLadder } from '#core/trials/plan/ladder.ts';
import { orderTerm } from '#core/trials/plan/order-term.ts';
import { tangleOf } from '#core/trials/plan/tangle.ts';
import { nextUpAndDown, upAndDownRows } from '#core/trials/plan/up-and-down.ts';
import { within } from '#test/within.ts';

describe('designs', () => {
	test('the ladder climbs by plates and ends at the heaviest load', () => {
		expect(warmUpLadder(50, 40, 0.5)).toEqual([40, 44, 48, 50]);
		expect(warmUpLadder(50, 60, 0.5)).toEqual([50]);
		expect(warmUpLadder(5, 4, 2.5)).toEqual([4, 4.4, 4.4 * 1.1, 5]);
		expect(() => warmUpLadder(NaN, 1, 1)).toThrow(/heaviest is NaN/);
	});

	test.each([
		[80, 45, 0],
		[80, 45, 2.5],
		[30, 45, 0.5],
		[21, 10, 5]
	])(
		'to %d from %d kg by plates of %d, each rung is at most a tenth up',
		(heaviest, from, plates) => {
			const rungs = warmUpLadder(heaviest, from, plates);
			expect(rungs[0]!).toBeLessThanOrEqual(from);
			expect(rungs.at(-1)).toBe(heaviest);
			rungs.slice(1).forEach((rung, k) => {
				expect(rung).toBeGreaterThan(rungs[k]!);
				expect(rung / rungs[k]!).toBeLessThanOrEqual(1.1 + 1e-9);
			});
		}
	);

	test('a ladder in doubling distance takes nine rungs without plates', () => {
		// ln 2 / ln 1.1 = 7.27: eight steps.
		expect(warmUpLadder(80, 40, 0)).toHaveLength(9);
	});

	test('ABBA: a straight drift cancels in every four', () => {
		const a = { grip: 'open', load: 40, ropeSide: 'away' } as const;
		const rows = abba([a, { ...a, load: 60 }], 3, 7);
		expect(rows).toHaveLength(12);
		expect(new Set(rows.slice(0, 4).map(({ load }) => load)).size).toBe(2);
		const drift = (load: number) =>
			rows.reduce((sum, row, place) => sum + (row.load === load ? place : 0), 0);
		expect(drift(40)).toBe(drift(60));
		within(tangleOf(rows).load, 0, { absolute: 1e-12 });
		expect(() => abba([a], 1, 1)).toThrow(/exactly 2/);
	});

	test('up-and-down follows the outcome and never the cap', () => {
		within(nextUpAndDown({ load: 50, outcome: 'held' }, 0.06, 60), 53, { relative: 1e-12 });
		expect(nextUpAndDown({ load: 50, outcome: 'held' }, 0.06, 51)).toBe(51);
		within(nextUpAndDown({ load: 53, outcome: 'opened' }, 0.06, 60), 50, { relative: 1e-12 });
		within(nextUpAndDown({ load: 53, outcome: 'stopped' }, 0.06, 60), 50, { relative: 1e-12 });
		expect(nextUpAndDown({ load: 53, outcome: 'slipped' }, 0.06, 60)).toBe(53);
		expect(nextUpAndDown({ load: 53, outcome: 'unknown' }, 0.06, 60)).toBe(53);
		const rows = upAndDownRows({ grip: 'open', load: 40, ropeSides: ['away', 'toward'] }, 6, 3);
		expect(rows.map(({ load }) => load)).toEqual([40, null, null, null, null, null]);
		expect(rows.filter(({ ropeSide }) => ropeSide === 'away')).toHaveLength(3);
	});

	test('order terms are centred and count tens of trials', () => {
		expect(orderTerm(1, 21)).toBe(-1);
		expect(orderTerm(11, 21)).toBe(0);
		expect(orderTerm(21, 21)).toBe(1);
		expect(() => orderTerm(1, 0)).toThrow(/plannedNumber is 0/);
	});

	test('a session’s length counts rests between hangs only', () => {
		expect(sessionSeconds(3, { target: 5, rest: 180, setup: 30 })).toBe(465);
		expect(sessionSeconds(0, { target: 5, rest: 180, setup: 30 })).toBe(0);
	});

	test('a rising order is fully tangled, warm-ups not counted', () => {
		const row = { kind: 'test', grip: 'open', ropeSide: 'away' } as const;
		const tangle = tangleOf([
			{ ...row, kind: 'warm-up', load: 99 },
			{ ...row, load: 40 },
			{ ...row, load: 50 },
			{ ...row, load: 60 }
		]);
		within(tangle.load, 1, { relative: 1e-12 });
		expect(tangle.ropeSide).toBe(0);
	});

	test('the chance of an answer never flatters: next smaller range and number', () => {
		expect(chanceOfClearAnswer(24, 2, 'medium')).toBe(0.63);
		expect(chanceOfClearAnswer(39, 2.9, 'medium')).toBe(0.63);
		expect(chanceOfClearAnswer(5, 3, 'large')).toBe(0);
		expect(chanceOfClearAnswer(100, 1.4, 'large')).toBe(0);
	});
});
