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
