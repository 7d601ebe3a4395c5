import { describe, expect, test } from 'vitest';
import { holdTimeCurve } from '#core/trials/hold-time-curve.ts';
import { timedOpeningLimit } from '#core/trials/hold-times.ts';
import type { Trial } from '#core/trials/trial.ts';
import { within } from '#test/within.ts';

const o = { referenceLoad: 60, bestGuess: 70, targetTime: 10 };
const trial = (load: number, outcome: Trial['outcome'], seconds?: number): Trial => ({
	...{ load, outcome, order: 0, ropeTerm: 0 },
	...(seconds !== undefined && { seconds })
});
const some = [
	...[50, 55, 60, 60].map((load) => trial(load, 'held', 10)),
	trial(66, 'opened', 7),
	trial(70, 'opened', 4.5),
	trial(74, 'opened', 3)
];

describe('how long holds last against load', () => {
	test('without trials half have opened at the target time at the best guess', () => {
		within(holdTimeCurve([], [70], o)[0]!.q50, 10, { relative: 1e-6 });
	});

	test('the middle passes through the target time where the limit has its middle', () => {
		// P(time < target) = P(limit < load): the two medians meet, up to the spacing of the points.
		const limit = timedOpeningLimit(some, o).quantiles.q50;
		within(holdTimeCurve(some, [limit], o)[0]!.q50, 10, { relative: 0.02 });
	});

	test('heavier is shorter, and the range holds the middle', () => {
		const curve = holdTimeCurve(some, [55, 62, 69, 76], o);
		curve.forEach(({ q05, q50, q95 }, k) => {
			expect(q05).toBeLessThan(q50);
			expect(q50).toBeLessThan(q95);
			if (k > 0) expect(q50).toBeLessThan(curve[k - 1]!.q50);
		});
	});

	test('a hang let go early counts as longer than its time, never as its time', () => {
		const at = (more: Trial[]) => holdTimeCurve([...some, ...more], [66], o)[0]!.q50;
		const let6 = at([trial(66, 'stopped', 6)]);
		expect(let6).toBeGreaterThan(at([]));
		expect(let6).toBeGreaterThan(at([trial(66, 'opened', 6)]));
		within(at([trial(66, 'slipped', 6)]), let6, { relative: 1e-9 });
	});
});
