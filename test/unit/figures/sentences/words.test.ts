import { describe, expect, test } from 'vitest';
import {
	loadEffect,
	nearerLimit,
	oneMore,
	type Situation,
	whatHappens,
	whatHolds
} from '#figures/sentences/words.ts';
import { computeResults } from '#state/setup/results.ts';
import { firstSight, type Setup } from '#storage/codecs/setup.ts';

/** The situation of a set-up, as the page makes it. */
function situation(patch: Partial<Setup> = {}, massUnit: 'kg' | 'lb' = 'kg'): Situation {
	const results = computeResults({ ...firstSight, ...patch });
	return {
		...results,
		hangingMass: results.hang.hangingMass,
		ropeAngle: results.hang.ropeAngle,
		push: results.hang.push ?? 0,
		holdTime: results.hang.strength.holdTime,
		fingers: results.hang.grip.fingers,
		massUnit
	};
}

/** All that is said of a set-up, with plain spaces. */
function said(patch: Partial<Setup> = {}, unit: 'kg' | 'lb' = 'kg'): string {
	const s = situation(patch, unit);
	return [whatHappens(s), nearerLimit(s), whatHolds(s), oneMore(s)]
		.join(' ')
		.replaceAll('\u00a0', ' ');
}

const constant = { law: 'constant', mu: 0.64, area: 250, best: 80 } as const;

describe('sentences in every state', () => {
	test('holds: the nearer limit first, in load', () => {
		expect(said()).toContain(
			'At 70 kg this hang holds. The nearer limit is the strength edge, 2.2 kg heavier; the slip edge comes 5.23 kg lighter.'
		);
	});

	test('slips: how much friction gives, and the nearest load that holds', () => {
		expect(said({ change: -20 })).toMatch(
			/^At 50 kg the hand slips: friction gives \d+ % of what the slope needs\. It would hold 14\.8 kg heavier, at 64\.8 kg\./
		);
	});

	test('a margin just below one is not rounded up to the whole', () => {
		expect(said({ ...constant, slope: 31, push: 20 })).toContain('friction gives 99.81 %');
	});

	test('fingers open, one finger opens', () => {
		expect(said({ change: 30 })).toContain(
			'At 100 kg the fingers open: finger strength carries 72 %'
		);
		expect(said({ fingers: 1 })).toContain('the finger opens: estimated finger strength');
	});

	test('both limits passed, and nothing holds', () => {
		const text = said({ slope: 50, change: 30 });
		expect(text).toContain('both limits are passed');
		expect(text).toContain('Friction is too little at every load.');
	});

	test('nothing holds because the fingers open where friction is enough', () => {
		expect(said({ area: 320 })).toMatch(
			/Friction is enough only from [\d.]+ kg, and there the fingers open\./
		);
	});

	test('the pull leads off the hold', () => {
		expect(said({ slope: 60, rope: 30, change: -50 })).toContain(
			'the pull leads off the hold: nothing presses the fingertips on'
		);
	});

	test('two stretches of load', () => {
		expect(
			said({
				...{ law: 'deformation', mu: 0.3, shear: 20, deformation: 0.2, pressure: 114 },
				...{ slope: 32.74, best: 180, area: 250 }
			})
		).toContain('Two stretches of load hold: 5 kg to 45.1 kg and 73.3 kg to 130 kg.');
	});

	test('an incut edge has no slip limit', () => {
		expect(said({ ...constant, slope: -10 })).toContain('There is no slip limit here');
		expect(said({ ...constant, slope: -10 })).toContain('cannot make this hold slip');
	});

	test('a constant ratio and a plumb rope: load cancels, and it is said', () => {
		const text = said({ ...constant, slope: 20, best: 200 });
		expect(text).toContain('Load does not change the slip limit.');
		expect(text).toContain('leaves the slip margin as it is: the friction ratio is unchanged');
		expect(text).toContain('the load cancels');
		expect(loadEffect(situation({ ...constant, slope: 20 }))).toBe('neutral');
	});

	test('a leaning rope makes heavier easier although the ratio is unchanged', () => {
		const text = said({ ...constant, slope: 31, rope: 10, change: -12 });
		expect(text).toContain('raises the slip margin');
		expect(text).toContain('the friction ratio is unchanged');
		expect(text).toContain('the rope takes less and so leans the pull less');
		expect(loadEffect(situation({ ...constant, slope: 31, rope: 10, change: -12 }))).toBe('easier');
	});

	test('a steady push counts for less under more load', () => {
		expect(said({ ...constant, slope: 30, push: 20 })).toContain('the steady push counts for less');
	});

	test('a growing patch on a rounded hold reaches steeper ground', () => {
		const text = said({ ...constant, slope: 24, radius: 60, patch: 'growing' });
		expect(text).toContain('lowers the slip margin');
		expect(text).toContain('the growing patch reaches on to steeper ground');
	});

	test('pounds', () => {
		expect(said({}, 'lb')).toContain('At 154 lb this hang holds.');
		expect(said({}, 'lb')).toContain('One more kilogram (2.2 pounds)');
	});
});
