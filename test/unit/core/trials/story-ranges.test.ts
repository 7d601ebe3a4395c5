import { expect, test } from 'vitest';
import { shares } from '#core/statistics/log-sum.ts';
import { defaultPriors } from '#core/trials/priors.ts';
import { storyEvidence } from '#core/trials/story-evidence.ts';
import { guessWidths, storyRanges, storyRangesInSteps } from '#core/trials/story-ranges.ts';
import type { Trial } from '#core/trials/trial.ts';
import { within } from '#test/within.ts';

const options = { referenceLoad: 60, lapse: 0.02 };
const trials = (rope: boolean): Trial[] =>
	[45, 70, 52, 80, 60, 48, 66, 74].map((load, k) => ({
		load,
		outcome: load > 55 ? 'held' : 'slipped',
		order: (k - 3.5) / 10,
		ropeTerm: rope ? 0.05 * ((k % 3) - 1) : 0
	}));

test.each([true, false])('ranges are the shares of the stories in play, rope moved: %s', (rope) => {
	const { ranges } = storyRanges(trials(rope), options);
	const each = guessWidths.map((width) => {
		const priors = { ...defaultPriors, loadEffectSd: width * defaultPriors.loadEffectSd };
		const rows = storyEvidence(trials(rope), { ...options, priors }).filter(({ story }) =>
			ranges.some((range) => range.story === story)
		);
		const weights = shares(rows.map(({ logEvidence }) => logEvidence));
		return (name: string) =>
			rows.reduce((sum, { story }, k) => sum + (story === name ? weights[k]! : 0), 0);
	});
	expect(ranges.length).toBe(rope ? 6 : 3);
	for (const { story, weight, least, most } of ranges) {
		const totals = each.map((of) => of(story));
		within(weight, totals[1]!, { absolute: 1e-9 });
		within(least, Math.min(...totals), { absolute: 1e-9 });
		within(most, Math.max(...totals), { absolute: 1e-9 });
	}
});

test('each fit is told, and a story without a load effect is fitted once', () => {
	const count = (rope: boolean) => [...storyRangesInSteps(trials(rope), options)];
	expect(count(true).at(-1)).toEqual({ done: 28, of: 28 });
	expect(count(false).map(({ done }) => done)).toEqual(Array.from({ length: 14 }, (_, k) => k + 1));
});
