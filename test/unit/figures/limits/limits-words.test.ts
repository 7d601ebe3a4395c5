import { describe, expect, test } from 'vitest';
import { within } from '#test/within.ts';
import { cautions } from '#core/trials/cautions.ts';
import { holdingCurve } from '#core/trials/holding-curve.ts';
import { openingLimit } from '#core/trials/opening-limit.ts';
import { slipLimit } from '#core/trials/slip-limit.ts';
import { storyRanges } from '#core/trials/story-ranges.ts';
import { stories, type Outcome, type Trial } from '#core/trials/trial.ts';
import { bandWords, modelEdge } from '#figures/limits/band-words.ts';
import { cautionWords } from '#figures/limits/caution-words.ts';
import { holdingChance } from '#figures/limits/holding-chance.ts';
import { openingReach, reachWords, slipReach } from '#figures/limits/limit-words.ts';
import { orderStrip } from '#figures/limits/order-strip.ts';
import { leftOutWords, readable, storyWords, verdictWords } from '#figures/limits/story-words.ts';
import { twoLimits } from '#figures/limits/two-limits.ts';
import { curveLoads } from '#state/limits/options.ts';

const options = { referenceLoad: 50, bestGuess: 70, lapse: 0.02 };

/** Trials from loads and outcomes, in order. */
const set = (rows: [number, Outcome][], ropeTerm = 0): Trial[] =>
	rows.map(([load, outcome], k) => ({
		load,
		outcome,
		order: (k - rows.length / 2) / 10,
		ropeTerm
	}));
const times = <T>(count: number, one: T): T[] => Array.from({ length: count }, () => one);

const hard: Record<string, Trial[]> = {
	'one trial': set([[50, 'held']]),
	'all held': set([40, 50, 60, 50, 40].map((load) => [load, 'held'])),
	'all slipped': set([40, 50, 60].map((load) => [load, 'slipped'])),
	'all opened': set([40, 50, 60].map((load) => [load, 'opened'])),
	'only stopped': set([40, 50].map((load) => [load, 'stopped'])),
	'a clean split': set([...times(6, [40, 'slipped']), ...times(6, [60, 'held'])] as [
		number,
		Outcome
	][]),
	'equal loads': set([...times(4, [50, 'held']), ...times(4, [50, 'slipped'])] as [
		number,
		Outcome
	][]),
	'contradictory trials': set(
		[40, 60, 40, 60].flatMap((load): [number, Outcome][] => [
			[load, 'held'],
			[load, 'slipped'],
			[load, 'opened']
		])
	)
};

describe.each(Object.entries(hard))('%s', (_, trials) => {
	const { from, to, loads } = curveLoads({ trials });
	const curve = holdingCurve(trials, loads, options);

	test('gives a finite picture that does not reach past what was tried', () => {
		const drawn = holdingChance({ curve, trials, massUnit: 'kg', width: 600, height: 440 });
		const all = JSON.stringify(drawn);
		expect(all).not.toMatch(/NaN|Infinity|null/);
		expect(drawn.marks.reduce((sum, { count }) => sum + count, 0)).toBe(trials.length);
		expect(drawn.untried).toHaveLength(2);
		expect(curve.every(({ tried }) => tried)).toBe(true);
		const strip = orderStrip(trials, [], { massUnit: 'kg', width: 600, height: 220 });
		expect(JSON.stringify(strip)).not.toMatch(/NaN|Infinity|null/);
	});

	test('gives limits in words within what was tried, or none', () => {
		const opening = openingReach(openingLimit(trials, options), { from, to });
		const slip = slipReach(slipLimit(trials, options)!);
		for (const reach of [opening, slip]) {
			for (const load of [reach.q05, reach.q50, reach.q95]) {
				if (load === null) continue;
				expect(load).toBeGreaterThanOrEqual(from - 1e-9);
				expect(load).toBeLessThanOrEqual(to + 1e-9);
			}
			expect(reachWords(reach, 'kg')).toMatch(/near|not tried here|can’t tell yet/);
		}
		const rows = [
			{ id: 'a', kind: 'slip' as const, label: 'a', reach: slip },
			{ id: 'b', kind: 'opening' as const, label: 'b', reach: opening }
		];
		const drawn = twoLimits([{ id: 'g', grip: 'g', rows }], { massUnit: 'kg', width: 600 });
		const [first, second] = drawn.grips[0]!.rows;
		for (const row of [first!, second!])
			expect(
				Object.values(row.bar!).every((v) => typeof v === 'boolean' || Number.isFinite(v))
			).toBe(true);
	});

	test('raises cautions, and never claims a story from so little', () => {
		const raised = cautions(trials).map((one) => cautionWords(one, 'kg'));
		expect(raised.length).toBeGreaterThan(0);
		expect(raised.join(' ')).not.toMatch(
			/NaN|Infinity|undefined|p-value|posterior|likelihood|prior/
		);
		const ranges = storyRanges(trials, options);
		expect(leftOutWords(ranges.leftOut).join(' ')).toContain('The rope was never moved');
		if (trials.length < 10) expect(verdictWords(ranges)).toMatch(/^Can’t tell yet/);
		if (ranges.ranges.length < 2) expect(readable(ranges)).toBe(false);
	});
});

describe('words', () => {
	test('the rope’s story never claims that load does not matter', () => {
		expect(storyWords.rope).not.toMatch(/not|only|no /);
		expect(Object.keys(storyWords)).toEqual([...stories]);
	});

	test('one story alone in play says that nothing can be told', () => {
		const ranges = storyRanges(hard['one trial']!, options);
		expect(ranges.ranges).toHaveLength(1);
		expect(verdictWords(ranges)).toContain('differ neither in load nor in rope side');
	});
});

describe('a band from the trials beside the model', () => {
	const window = [{ from: 48, to: 80, lowerLimit: 'slip', upperLimit: 'strength' }] as const;
	const band = { kind: 'opening', above: false, from: 60, to: 70, middle: 65 } as const;
	test('is compared with the edge of its own kind', () => {
		within(modelEdge(window, band)!, 80, { absolute: 0 });
		within(modelEdge(window, { ...band, kind: 'slip' })!, 48, { absolute: 0 });
		expect(modelEdge(window, { ...band, kind: 'slip', above: true })).toBeUndefined();
	});
	test('agrees, disagrees either way, or finds no such edge', () => {
		expect(bandWords(window, { ...band, to: 85 }, 'kg')).toMatchObject({ agrees: true });
		expect(bandWords(window, band, 'kg').text).toContain('less strength on the flat edge');
		expect(bandWords(window, { ...band, from: 85, to: 95, middle: 90 }, 'kg').text).toContain(
			'more strength on the flat edge'
		);
		const slip = { ...band, kind: 'slip' as const };
		expect(bandWords(window, slip, 'kg').text).toContain('less friction');
		expect(bandWords(window, { ...slip, from: 30, to: 40, middle: 35 }, 'kg').text).toContain(
			'more friction'
		);
		expect(bandWords([], slip, 'kg').text).toContain('does not rise with load');
	});
});

test('five thousand trials are drawn with few marks', () => {
	const trials = Array.from({ length: 5000 }, (_, k) => ({
		load: 40 + (k % 30),
		outcome: (['held', 'slipped', 'opened'] as const)[k % 3]!
	}));
	const { loads } = curveLoads({ trials });
	const flat = { mean: 0.5, q05: 0.4, q95: 0.6 };
	const curve = loads.map((load) => ({
		load,
		sticks: flat,
		keeps: flat,
		holds: flat,
		tried: true
	}));
	const { marks } = holdingChance({ curve, trials, massUnit: 'kg', width: 600, height: 440 });
	expect(marks.length).toBeLessThan(110);
	expect(marks.reduce((sum, { count }) => sum + count, 0)).toBe(5000);
});
