import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { seededRandom } from '#core/statistics/random.ts';
import { jointEvidence } from '#core/trials/joint-evidence.ts';
import { openingLimit } from '#core/trials/opening-limit.ts';
import { defaultPriors } from '#core/trials/priors.ts';
import { settingsOf } from '#core/trials/settings.ts';
import { fitSlip } from '#core/trials/stage-fit.ts';
import { storyEvidence } from '#core/trials/story-evidence.ts';
import { stories, type Trial } from '#core/trials/trial.ts';
import { rowsFor } from '#core/trials/two-stages.ts';
import { within } from '#test/within.ts';
import { notebooks } from './notebooks.ts';

const options = { referenceLoad: 60, bestGuess: 80 };
const seen = notebooks(['held', 'slipped', 'opened', 'stopped']);

/** Evidence without order, quick enough for many notebooks. */
function evidence(
	trials: readonly Trial[],
	o: Parameters<typeof settingsOf>[0] = options
): number[] {
	const settings = settingsOf(o);
	return stories.map((story) => {
		const version = { story, withOrder: false };
		return fitSlip(rowsFor(trials, version, o.referenceLoad), version, settings).sum.logEvidence;
	});
}

describe('what must hold whatever the trials', () => {
	test('with no trials every story is as it started', () => {
		const rows = storyEvidence([], options);
		expect(rows.length).toBe(12);
		for (const row of rows) {
			within(row.logEvidence, 0, { absolute: 1e-9 });
			within(row.weight, 1 / 12, { absolute: 1e-9 });
		}
		within(jointEvidence([], options), 0, { absolute: 1e-9 });
		const limit = openingLimit([], options);
		within(limit.logEvidence, 0, { absolute: 1e-9 });
		within(limit.lnLimitMean, Math.log(80), { absolute: 1e-9 });
		within(limit.lnLimitSd, 0.3, { relative: 1e-6 });
		within(limit.quantiles.q05, 80 * Math.exp(-0.3 * 1.6448536269514722), { relative: 1e-5 });
		within(limit.quantiles.q95, 80 * Math.exp(0.3 * 1.6448536269514722), { relative: 1e-5 });
	});

	test('stopped trials alone teach the slip stage nothing', () => {
		fc.assert(
			fc.property(notebooks(['stopped'], 5), (trials) => {
				for (const log of evidence(trials)) within(log, 0, { absolute: 1e-9 });
			}),
			{ numRuns: 10 }
		);
	});

	test('the order in which trials are listed changes nothing', () => {
		fc.assert(
			fc.property(seen, fc.integer(), (trials, seed) => {
				const listed = seededRandom(seed).shuffle(trials);
				evidence(trials).forEach((log, k) => within(evidence(listed)[k]!, log, { absolute: 1e-6 }));
				const [one, other] = [openingLimit(trials, options), openingLimit(listed, options)];
				within(other.lnLimitMean, one.lnLimitMean, { absolute: 1e-7 });
			}),
			{ numRuns: 25 }
		);
	});

	test('shuffling what happened when changes the stories with order alone', () => {
		const trials: Trial[] = Array.from({ length: 12 }, (_, k) => ({
			load: 40 + 4 * k,
			outcome: k < 5 ? 'slipped' : 'held',
			ropeTerm: 0.02 * ((k * 5) % 12) - 0.1,
			order: (k - 5.5) / 10
		}));
		const orders = seededRandom(3).shuffle(trials.map(({ order }) => order));
		const moved = trials.map((trial, k) => ({ ...trial, order: orders[k]! }));
		const before = storyEvidence(trials, options);
		storyEvidence(moved, options).forEach((row, k) => {
			const change = Math.abs(row.logEvidence - before[k]!.logEvidence);
			if (row.withOrder) expect(change).toBeGreaterThan(1e-3);
			else expect(change).toBe(0);
		});
	});

	test('mirroring the loads about the reference load swaps rises and falls', () => {
		fc.assert(
			fc.property(seen, (trials) => {
				const mirrored = trials.map((trial) => ({ ...trial, load: 3600 / trial.load }));
				const [constant, rises, falls, rope, risesRope, fallsRope] = evidence(trials);
				const mirror = evidence(mirrored);
				[constant, falls, rises, rope, fallsRope, risesRope].forEach((log, k) =>
					within(mirror[k]!, log!, { absolute: 1e-6 })
				);
			}),
			{ numRuns: 25 }
		);
	});

	test('the stages factorise when every cause was seen', () => {
		fc.assert(
			fc.property(seen, fc.constantFrom(...stories), (trials, story) => {
				const joint = jointEvidence(trials, { ...options, story });
				const slip = evidence(trials)[stories.indexOf(story)]!;
				const open = openingLimit(trials, options).logEvidence;
				within(joint, slip + open, { absolute: 1e-9 });
				// Slips tell the opening stage nothing, and an opening counts as not slipped.
				const without = trials.filter(({ outcome }) => outcome !== 'slipped');
				expect(openingLimit(without, options)).toEqual(openingLimit(trials, options));
				const held = trials.map((trial): Trial => {
					const outcome = trial.outcome === 'opened' ? 'held' : trial.outcome;
					return { ...trial, outcome };
				});
				within(evidence(held)[stories.indexOf(story)]!, slip, { absolute: 1e-9 });
			}),
			{ numRuns: 25 }
		);
	});

	test('another reference load with shifted starting guesses changes no curve', () => {
		fc.assert(
			fc.property(seen, fc.double({ min: 40, max: 90, noNaN: true }), (trials, referenceLoad) => {
				const margin = { ...defaultPriors.margin, lnLoad: Math.log(60 / referenceLoad) };
				const shifted = { ...options, referenceLoad, priors: { ...defaultPriors, margin } };
				evidence(trials, shifted).forEach((log, k) =>
					within(log, evidence(trials)[k]!, { absolute: 1e-6 })
				);
				const version = { story: 'rises', withOrder: false } as const;
				const chance = (load: number, o: typeof shifted | typeof options): number => {
					const fit = fitSlip(rowsFor(trials, version, o.referenceLoad), version, settingsOf(o));
					const place = { lnLoad: Math.log(load / o.referenceLoad), ropeTerm: 0, order: 0 };
					return fit.chances(place).reduce((sum, p, k) => sum + p * fit.sum.weights[k]!, 0);
				};
				// A chance is a weighted mean over lattices whose spacing is right to some 2e-6.
				for (const load of [40, 60, 90])
					within(chance(load, shifted), chance(load, options), { absolute: 1e-5 });
				const [one, other] = [openingLimit(trials, options), openingLimit(trials, shifted)];
				within(other.quantiles.q50, one.quantiles.q50, { relative: 1e-6 });
				within(other.lnLimitMean, one.lnLimitMean, { absolute: 1e-7 });
			}),
			{ numRuns: 15 }
		);
	});

	test('a trial of unseen cause is neither more nor less than its two readings together', () => {
		fc.assert(
			fc.property(notebooks(['held', 'slipped', 'opened'], 8), (trials) => {
				const last = { load: 62, ropeTerm: 0.05, order: 0.9 };
				const joint = (outcome: Trial['outcome']): number =>
					jointEvidence([...trials, { ...last, outcome }], options);
				const together = Math.exp(joint('slipped')) + Math.exp(joint('opened'));
				within(joint('unknown'), Math.log(together), { absolute: 2e-6 });
			}),
			{ numRuns: 25 }
		);
	});
});
