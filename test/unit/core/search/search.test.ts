import { describe, expect, test } from 'vitest';
import { clearanceOf } from '#core/search/clearance.ts';
import { completeRequest } from '#core/search/complete-request.ts';
import { conflictOf } from '#core/search/conflict.ts';
import { lawOf, scaledLaw } from '#core/search/law-of.ts';
import { makePlan } from '#core/search/plan.ts';
import { practiceReport } from '#core/search/practice-report.ts';
import { searchRanges } from '#core/search/ranges.ts';
import { findStories } from '#core/search/search-stories.ts';
import { solveSlope } from '#core/search/solve-slope.ts';
import type {
	Addition,
	LawStory,
	Observation,
	Outcome,
	SearchRequest
} from '#core/search/types.ts';
import { reasonText } from '#core/search/words.ts';
import { frictionRatio } from '#core/index.ts';
import { emptyContact } from '#core/strength/contact-at.ts';
import { prepareHang } from '#core/strength/prepare-hang.ts';
import { within } from '#test/within.ts';
import { baseHang } from '../../../own/mechanics/hangs.ts';

const base: SearchRequest = { ...practiceReport, seed: 1 };

/** Goes of one grip: load and outcome, in this order. */
function goes(...seen: [number, Outcome | Outcome['kind'], string?][]): Observation[] {
	return seen.map(([load, outcome, grip = 'halfCrimp'], index) => ({
		grip,
		load,
		order: index + 1,
		outcome: (typeof outcome === 'string' ? { kind: outcome } : outcome) as Outcome
	}));
}

function conflict(observations: Observation[], law: LawStory, addition: Addition = 'none') {
	return conflictOf(makePlan(completeRequest({ ...base, observations }), law, addition));
}

describe('a request', () => {
	test('is completed with the printed defaults', () => {
		expect(completeRequest(base)).toMatchObject({
			bodyMass: 70,
			hands: 2,
			candidates: 20_000,
			ranges: searchRanges
		});
	});

	test.each([
		['bodyMass', { bodyMass: -1 }, /bodyMass must be a number above 0 kg, but is -1/],
		['seed', { seed: 0.5 }, /seed must be a whole number, but is 0.5/],
		['candidates', { candidates: 0 }, /candidates .* but is 0/],
		['a grip', { observations: goes([1, 'held', 'fist']) }, /grip must be one of halfCrimp/],
		['load', { observations: goes([NaN, 'held']) }, /load .* but is NaN/],
		[
			'order twice',
			{ observations: [...goes([1, 'held']), ...goes([1.1, 'held'])] },
			/order .* 1 is used twice/
		],
		[
			'than',
			{ observations: goes([1, 'held'], [1.1, { kind: 'easier', than: 2 }]) },
			/outcome.than must be one of 1, but is 2/
		],
		['outcome', { observations: goes([1, { kind: 'flew' } as never]) }, /outcome.kind/],
		['nothing seen', { observations: [] }, /observations.length/],
		[
			'patch past the pad',
			{ grips: [{ ...practiceReport.grips[0]!, padArea: { from: 1e-4, to: 4e-4 } }] },
			/padArea.to .* but is 0.0004/
		],
		[
			'range upside down',
			{ ranges: { ...searchRanges, push: { from: 10, to: -10 } } },
			/ranges.push.to must be a number at least 10 N, but is -10/
		],
		[
			'law range',
			{
				ranges: {
					...searchRanges,
					laws: { ...searchRanges.laws, constant: { coefficient: { from: -1, to: 1 } } }
				}
			},
			/friction.coefficient .* but is -1/
		],
		[
			'a falling power that rises',
			{
				ranges: {
					...searchRanges,
					laws: {
						...searchRanges.laws,
						powerFalling: { ...searchRanges.laws.powerFalling, exponent: { from: 0.5, to: 1.2 } }
					}
				}
			},
			/ranges.laws.powerFalling.exponent/
		],
		['law', { laws: ['magic' as never] }, /laws must be one of constant/],
		['addition', { additions: ['wind' as never] }, /additions must be one of none/]
	])('is stopped at the border: %s', (_, change, message) => {
		expect(() => completeRequest({ ...base, ...change } as SearchRequest)).toThrow(RangeError);
		expect(() => completeRequest({ ...base, ...change } as SearchRequest)).toThrow(message);
	});
});

describe('the slope', () => {
	test('of a constant ratio 0.64 at margin 1 is the friction angle, atan 0.64', () => {
		const prepared = prepareHang(baseHang());
		const slope = solveSlope(prepared, 686.4655, 0, 1, 1, { from: 0, to: 1 }, emptyContact());
		within(slope, Math.atan(0.64), { absolute: 1e-13 });
	});

	test('is NaN where the range has none', () => {
		const prepared = prepareHang(baseHang());
		const range = { from: 0.7, to: 1 };
		expect(solveSlope(prepared, 686.4655, 0, 1, 1, range, emptyContact())).toBeNaN();
	});

	test('where nothing was barely held it is drawn', () => {
		const observations = goes([0.87, 'slipped'], [1, 'held']);
		const [result] = findStories({ ...base, observations, laws: ['film'], additions: ['none'] });
		expect(result).toMatchObject({ verdict: 'can', solved: 20_000, drawn: 20_000 });
		expect(
			result!.verdict === 'can' && result!.movements.find(({ key }) => key === 'slope')!.how
		).toBe('drawn');
	});

	test('out of reach: cannot, and says so', () => {
		const steep = { ...searchRanges, slope: { from: 1.4, to: 1.5 } };
		const [result] = findStories({
			...base,
			observations: goes([1, 'barely']),
			ranges: steep,
			candidates: 50,
			laws: ['constant'],
			additions: ['none']
		});
		expect(result).toMatchObject({
			verdict: 'cannot',
			solved: 0,
			reason: 'noSlope',
			sentence: reasonText.noSlope,
			unmet: undefined,
			proven: false
		});
	});
});

describe('thresholds', () => {
	const at = (outcome: Outcome['kind'], slip: number, strength: number) => {
		const [other, own] = goes(
			[1, 'held'],
			[1.1, outcome === 'easier' ? { kind: 'easier', than: 1 } : outcome]
		);
		const plan = makePlan(
			completeRequest({ ...base, observations: [other!, own!] }),
			'constant',
			'none'
		);
		return clearanceOf(plan.trials[1]!, 1, { slip: [1.05, slip], strength: [2, strength] }) > 0;
	};

	test.each([
		['slipped', 0.979, 2, true],
		['slipped', 0.981, 2, false],
		['held', 1.001, 1.001, true],
		['held', 0.999, 2, false],
		['held', 2, 0.999, false],
		['barely', 1.099, 2, true],
		['barely', 1.101, 2, false],
		['barely', 2, 1.05, true],
		['barely', 0.999, 2, false],
		['opened', 1.001, 0.979, true],
		['opened', 0.999, 0.979, false],
		['opened', 1.001, 0.981, false],
		['easier', 1.05 * 1.021, 2, true],
		['easier', 1.05 * 1.019, 2, false],
		['easier', 1.2, 0.99, false],
		['held', Infinity, 2, true],
		['slipped', 0, 2, true]
	] as const)('%s at slip %d, strength %d: %s', (outcome, slip, strength, met) => {
		expect(at(outcome, slip, strength)).toBe(met);
	});
});

describe('reasons', () => {
	test('a ratio that does not rise: heavier and easier, above body mass', () => {
		const seen = goes([1, 'held'], [1.2, { kind: 'easier', than: 1 }]);
		for (const law of ['constant', 'adhesion', 'powerFalling'] as const) {
			expect(conflict(seen, law)).toBe('ratioNotRising');
			expect(conflict(seen, law, 'rope')).toBe('ratioNotRising');
			expect(conflict(seen, law, 'push')).toBeUndefined();
			expect(conflict(seen, law, 'drift')).toBeUndefined();
		}
		for (const law of ['powerRising', 'film', 'deformation'] as const) {
			expect(conflict(seen, law)).toBeUndefined();
		}
	});

	test('below body mass a rope may be the reason', () => {
		const seen = goes([0.8, 'slipped'], [1, 'held']);
		expect(conflict(seen, 'constant')).toBe('ratioNotRising');
		expect(conflict(seen, 'constant', 'rope')).toBeUndefined();
	});

	test('a rising ratio: lighter and easier', () => {
		const seen = goes([1.2, 'slipped'], [1, 'held']);
		expect(conflict(seen, 'film')).toBe('ratioRising');
		expect(conflict(seen, 'adhesion')).toBeUndefined();
		expect(conflict(seen, 'deformation')).toBeUndefined();
	});

	test('a rising ratio: a patch so wide that its pressure is lower at every allowed area', () => {
		const seen = goes([0.9, 'slipped'], [1, 'held', 'threeOpen']);
		expect(conflict(seen, 'film')).toBeUndefined();
		const wide = practiceReport.grips.map((grip, index) =>
			index === 1 ? { ...grip, padArea: { from: 300e-6, to: 330e-6 } } : grip
		);
		const plan = makePlan(
			completeRequest({ ...base, grips: wide, observations: seen }),
			'film',
			'none'
		);
		expect(conflictOf(plan)).toBe('ratioRising');
	});

	test('a drift that would have to go both ways', () => {
		const seen = goes([1, 'slipped'], [1, 'held'], [1, 'slipped']);
		expect(conflict(seen, 'constant', 'drift')).toBe('orderDisagrees');
		expect(conflict(seen.slice(0, 2), 'constant', 'drift')).toBeUndefined();
	});

	test('one strength cannot open at a load and hold a heavier one', () => {
		const seen = goes([1, 'opened'], [1.1, 'held']);
		expect(conflict(seen, 'film')).toBe('strengthDisagrees');
		expect(conflict([...seen].reverse(), 'film')).toBe('strengthDisagrees');
		expect(conflict(goes([1.1, 'opened'], [1, 'held']), 'film')).toBeUndefined();
	});
});

describe('laws', () => {
	test('a scaled law has the scaled ratio at every pressure', () => {
		const examples: [LawStory, number[]][] = [
			['constant', [0.5]],
			['adhesion', [0.4, 2e4]],
			['powerRising', [0.5, 25e4, 1.3]],
			['deformation', [0.3, 2e4, 0.2, 114e3]],
			['film', [0.3, 0.7, 15e4, 2]]
		];
		for (const [story, values] of examples) {
			const law = lawOf(story, values);
			for (const pressure of [1e4, 2e5, 9e5]) {
				const scaled = frictionRatio(scaledLaw(law, 1.1), pressure);
				within(scaled, 1.1 * frictionRatio(law, pressure), { relative: 1e-12 });
			}
		}
	});
});
