import { describe, expect, test } from 'vitest';
import { workbook } from '#core/workbook/workbook.ts';
import { within } from '#test/within.ts';

const family = (id: string) => workbook.find((each) => each.id === id)!;

describe('what would change the regime', () => {
	test('a resting crate slides once the push passes 137.2 N or the mass falls below 14.58 kg', () => {
		const changes = family('level-floor').changes({
			mass: 20,
			muStatic: 0.7,
			muKinetic: 0.6,
			gravity: 9.8,
			force: 100
		});
		const force = changes.find((each) => each.id === 'force')!;
		within(force.at, 137.2, { relative: 1e-6 });
		expect([force.from, force.to]).toEqual(['rests', 'slides']);
		expect(force.sentence).toBe('It slides once force rises past 137.2 N.');
		within(changes.find((each) => each.id === 'mass')!.at, 100 / (0.7 * 9.8), { relative: 1e-6 });
	});
	test('a block on a slope changes at the friction angle', () => {
		const changes = family('incline').changes({ slope: 0.3, muStatic: 0.5, force: 0, mass: 3 });
		within(changes.find((each) => each.id === 'slope' && each.at > 0.3)!.at, Math.atan(0.5), {
			relative: 1e-6
		});
	});
	test('without enough givens nothing is said', () => {
		expect(family('level-floor').changes({ mass: 20 })).toEqual([]);
	});
});

describe('several solutions', () => {
	const solve = (id: string, given: Record<string, number>, ask: string) =>
		family(id).solve(given, ask);
	test('two slopes on which the same force starts a block up', () => {
		const { solutions } = solve('incline', { mass: 10, muStatic: 0.3, startUpForce: 100 }, 'slope');
		expect(solutions).toHaveLength(2);
		for (const { value } of solutions)
			within(10 * 9.80665 * (Math.sin(value) + 0.3 * Math.cos(value)), 100, { relative: 1e-9 });
	});
	test('every push up to the limit leaves the crate at rest', () => {
		const { regime, solutions } = solve(
			'level-floor',
			{ mass: 20, muStatic: 0.7, muKinetic: 0.6, gravity: 9.8, acceleration: 0 },
			'force'
		);
		expect(regime).toBe('any');
		expect(solutions[0]!.value).toBe(0);
		within(solutions[0]!.upTo!, 137.2, { relative: 1e-8 });
	});
	test('two equations at once: weight and coefficient from a pull and a push', () => {
		const given = {
			startForce: 180,
			startForce2: 220,
			forceAngle: Math.PI / 6,
			forceAngle2: -Math.PI / 6
		};
		within(solve('level-floor', given, 'weight').solutions[0]!.value, 990, { relative: 1e-9 });
	});
});

describe('the regime is found by reasoning', () => {
	const block = { mass: 10, slope: 0.3, muStatic: 0.5, muKinetic: 0.3, gravity: 10 };
	const cases: [string, string, Record<string, number>, string, string][] = [
		['a bound does not make it slip', 'incline', { ...block, force: 20 }, 'frictionLimit', 'rests'],
		[
			'pushed past its limit it slides up',
			'incline',
			{ ...block, force: 200 },
			'friction',
			'slides up'
		],
		['at its limit it is about to slip', 'incline', block, 'startUpForce', 'about to slip'],
		[
			'a given limiting force is the state',
			'incline',
			{ mass: 10, muStatic: 0.3, startUpForce: 80 },
			'slope',
			'about to slip'
		],
		['too steep', 'incline', { ...block, slope: 0.6, force: 0 }, 'acceleration', 'slides down'],
		[
			'pulled off',
			'incline',
			{ ...block, force: 300, forceAngle: 1.5 },
			'acceleration',
			'lifts off'
		],
		[
			'a steep push locks',
			'level-floor',
			{ mass: 10, muStatic: 0.6, force: 500, forceAngle: -1.2 },
			'friction',
			'self-locks'
		],
		['a gentle pull', 'level-floor', { mass: 10, muStatic: 0.6, force: 20 }, 'friction', 'rests'],
		[
			'low coefficient, tall block',
			'tipping',
			{ width: 1, height: 4, muStatic: 0.2, slope: 0.1 },
			'firstAngle',
			'rests'
		],
		[
			'high coefficient, tall block',
			'tipping',
			{ width: 1, height: 4, muStatic: 0.6, slope: 0.4 },
			'firstAngle',
			'tips'
		],
		[
			'a thin wedge stays by itself',
			'wedge',
			{ load: 100, wedgeAngle: 0.1, muFace: 0.2 },
			'guideForceUp',
			'self-locks'
		],
		[
			'a thick wedge comes out',
			'wedge',
			{ load: 100, wedgeAngle: 0.6, muFace: 0.1 },
			'guideForceUp',
			'slides out'
		],
		[
			'a rope held well',
			'belt',
			{ load: 100, force: 60, turns: 1, mu: 0.2 },
			'tensionRatio',
			'about to slip'
		],
		[
			'a ladder with friction to spare',
			'ladder',
			{ length: 4, weight: 100, angle: 1.1, muFloor: 0.4 },
			'neededMu',
			'rests'
		],
		[
			'a ladder so steep that any load rests',
			'ladder',
			{ length: 4, weight: 100, angle: 1.4, muFloor: 0.4 },
			'neededMu',
			'self-locks'
		],
		[
			'a ladder too flat',
			'ladder',
			{ length: 4, weight: 100, angle: 0.7, muFloor: 0.4 },
			'neededMu',
			'slides'
		],
		[
			'a book held too loosely',
			'pressing',
			{ mass: 2, mu1: 0.4, press: 20 },
			'frictionLimit',
			'slides down'
		]
	];
	test.each(cases)('%s', (_, id, given, ask, wanted) => {
		const answer = family(id).solve(given, ask);
		expect(answer.regime, answer.because).toBe(wanted);
		expect(answer.because.length).toBeGreaterThan(10);
	});
});
