import { describe, expect, test } from 'vitest';
import { fitBinary } from '#core/statistics/fit-binary.ts';
import { fitSurvival } from '#core/statistics/fit-survival.ts';
import { nextTrial } from '#core/trials/next-trial.ts';
import { openingLimit } from '#core/trials/opening-limit.ts';
import { ropeTerm } from '#core/trials/rope-term.ts';
import { storyEvidence } from '#core/trials/story-evidence.ts';
import type { Trial } from '#core/trials/trial.ts';
import { within } from '#test/within.ts';

const degree = Math.PI / 180;
const trial: Trial = { load: 60, outcome: 'held', order: 0, ropeTerm: 0 };
const options = { referenceLoad: 60, bestGuess: 80 };

describe('rope terms', () => {
	test('5° at 30° of slope raise the demand by ln 1.2128', () => {
		within(
			ropeTerm(30 * degree, 5 * degree),
			Math.log(Math.tan(35 * degree) / Math.tan(30 * degree)),
			{
				relative: 1e-12
			}
		);
		within(ropeTerm(30 * degree, 5 * degree), 0.193, { absolute: 5e-4 });
		within(ropeTerm(30 * degree, 10 * degree), 0.374, { absolute: 5e-4 });
		expect(ropeTerm(0.4, 0)).toBe(0);
		expect(ropeTerm(0.4, -0.1)).toBeLessThan(0);
	});
	test.each([
		[0, 0.1, 'slope'],
		[Math.PI / 2, -0.1, 'slope'],
		[0.4, -0.4, 'slope \\+ tilt'],
		[0.4, Math.PI / 2 - 0.4, 'slope \\+ tilt'],
		[NaN, 0, 'slope'],
		[0.4, NaN, 'slope \\+ tilt']
	])('slope %d, tilt %d is refused', (slope, tilt, field) => {
		expect(() => ropeTerm(slope, tilt)).toThrow(RangeError);
		expect(() => ropeTerm(slope, tilt)).toThrow(new RegExp(`^${field}:`));
	});
});

describe('bad input is refused by name', () => {
	const refused: [string, () => unknown, RegExp][] = [
		['load', () => storyEvidence([{ ...trial, load: 0 }], options), /^trials\[0\]\.load: 0/],
		['order', () => storyEvidence([{ ...trial, order: NaN }], options), /^trials\[0\]\.order: NaN/],
		[
			'rope',
			() => storyEvidence([{ ...trial, ropeTerm: Infinity }], options),
			/ropeTerm: Infinity/
		],
		[
			'outcome',
			() => storyEvidence([{ ...trial, outcome: 'fell' as 'held' }], options),
			/outcome: fell/
		],
		['reference load', () => storyEvidence([], { referenceLoad: -1 }), /^referenceLoad: -1/],
		['lapse', () => storyEvidence([], { ...options, lapse: 0.5 }), /^lapse: 0.5/],
		['guess', () => openingLimit([], { ...options, bestGuess: 0 }), /^bestGuess: 0/],
		[
			'a missing guess where a cause was not seen',
			() => storyEvidence([{ ...trial, outcome: 'unknown' }], { referenceLoad: 60 }),
			/^bestGuess: /
		],
		[
			'candidate',
			() => nextTrial([], { ...options, candidates: [{ load: -5 }], ownMaximum: 90, adult: true }),
			/^candidates\[0\]\.load: -5/
		],
		[
			'own maximum',
			() => nextTrial([], { ...options, candidates: [], ownMaximum: NaN, adult: true }),
			/^ownMaximum: NaN/
		],
		[
			'counts',
			() =>
				fitBinary({ successes: [3], trials: [2], design: [[1]], link: 'logit', penalty: 'none' }),
			/^successes\[0\]: 3/
		],
		[
			'columns that depend on one another',
			() =>
				fitBinary({
					successes: [1, 0],
					trials: [1, 1],
					design: [
						[1, 2],
						[1, 2]
					],
					link: 'logit',
					penalty: 'none'
				}),
			/^design: /
		],
		[
			'times',
			() => fitSurvival({ lower: [5], upper: [4], design: [[1]], distribution: 'weibull' }),
			/^upper\[0\]: 4/
		]
	];
	test.each(refused)('%s', (_, work, message) => {
		expect(work).toThrow(RangeError);
		expect(work).toThrow(message);
	});
});

describe('fits without a finite answer say so', () => {
	test('nothing but censored times', () => {
		const fit = fitSurvival({
			lower: [5, 6, 7],
			upper: [Infinity, Infinity, Infinity],
			design: [[1], [1], [1]],
			distribution: 'weibull'
		});
		expect(fit.converged).toBe(false);
		expect(fit.coefficients.every(Number.isFinite)).toBe(true);
	});
	test('rows without trials are skipped', () => {
		const rows = { link: 'probit', penalty: 'jeffreys' } as const;
		const one = fitBinary({ ...rows, successes: [2, 0], trials: [5, 0], design: [[1], [1]] });
		const other = fitBinary({ ...rows, successes: [2], trials: [5], design: [[1]] });
		expect(one).toEqual(other);
	});
	test('all successes', () => {
		const data = { successes: [1, 1, 1], trials: [1, 1, 1], design: [[1], [1], [1]] };
		for (const link of ['logit', 'probit', 'cloglog'] as const) {
			const plain = fitBinary({ ...data, link, penalty: 'none' });
			expect([plain.separated, plain.converged]).toEqual([true, false]);
			const jeffreys = fitBinary({ ...data, link, penalty: 'jeffreys' });
			expect([jeffreys.separated, jeffreys.converged]).toEqual([true, true]);
		}
	});
});
