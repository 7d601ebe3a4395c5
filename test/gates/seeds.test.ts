import { describe, expect, test } from 'vitest';
import { computeResults } from '#state/setup/results.ts';
import { readLink, writeLink } from '#storage/codecs/link.ts';
import { firstSight, type Setup } from '#storage/codecs/setup.ts';
import { scenarios } from '#seeds/scenarios.ts';
import { within } from '#test/within.ts';

describe('seeds: each parses and its stated headline holds', () => {
	test('there are at least three', () => {
		expect(scenarios.length).toBeGreaterThanOrEqual(3);
	});

	test.each(scenarios)('$key says that it is invented', ({ story }) => {
		expect(story).toMatch(/^Invented: /);
	});

	test.each(scenarios)('$key is a set-up that a link can carry', ({ setup }) => {
		const whole: Setup = { ...firstSight, ...setup };
		expect(readLink(writeLink(whole))).toEqual({ setup: whole, notes: [] });
	});

	test.each(scenarios)('$key: the window is as stated', ({ setup, headline }) => {
		const { window } = computeResults({ ...firstSight, ...setup });
		expect(window).toHaveLength(headline.length);
		window.forEach((interval, index) => {
			const stated = headline[index]!;
			expect([interval.lowerLimit, interval.upperLimit]).toEqual([
				stated.lowerLimit,
				stated.upperLimit
			]);
			within(interval.from, stated.from, { absolute: 0.02 });
			within(interval.to, stated.to, { absolute: 0.02 });
		});
	});
});
