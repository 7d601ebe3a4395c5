import { describe, expect, test } from 'vitest';
import { workbook } from '#core/workbook/workbook.ts';
import { within } from '#test/within.ts';

const degree = Math.PI / 180;
const family = (id: string) => workbook.find((each) => each.id === id)!;

/** One executed example a family, as its docstring gives it. */
const examples: [string, Record<string, number>, string, string, number[]][] = [
	[
		'level-floor',
		{ mass: 20, muStatic: 0.7, gravity: 9.8 },
		'startForce',
		'about to slip',
		[137.2]
	],
	['incline', { muStatic: 0.3 }, 'reposeAngle', 'about to slip', [0.2914567944778671]],
	[
		'connected-blocks',
		{ massTop: 2, massBottom: 4, muTop: 0.4, gravity: 9.8, arrangement: 1 },
		'pull',
		'about to slip',
		[39.2]
	],
	['ladder', { muStatic: 0.8 }, 'lockAngle', 'about to slip', [0.8960553845713439]],
	['tipping', { width: 1, height: 2, muStatic: 0.63 }, 'tipAngle', 'tips', [0.4636476090008061]],
	[
		'wedge',
		{ load: 20000, wedgeAngle: Math.atan(0.1), muFace: 0.2, muFloor: 0.25 },
		'driveForce',
		'about to slip',
		[11122.448979591836]
	],
	['belt', { load: 100, turns: 0.5, mu: 0.4 }, 'holdForce', 'about to slip', [28.460954]],
	['pressing', { weight: 31, mu1: 0.4 }, 'leastPress', 'about to slip', [38.75]],
	[
		'hang',
		{ slope: 32 * degree, hangingMass: 70, coefficient: 0.64, arrangement: 1 },
		'netMass',
		'any load',
		[]
	]
];

describe('the example of every family', () => {
	test('there is one for each', () => {
		expect(examples.map(([id]) => id)).toEqual(workbook.map((each) => each.id));
	});
	test.each(examples)('%s', (id, given, ask, regime, values) => {
		const answer = family(id).solve(given, ask);
		expect(answer.regime).toBe(regime);
		expect(answer.solutions).toHaveLength(values.length);
		values.forEach((value, index) =>
			within(answer.solutions[index]!.value, value, { relative: 1e-7 })
		);
	});
});

describe('every family is whole', () => {
	test.each(workbook.map((each) => [each.id, each] as const))('%s', (_, each) => {
		expect(each.setups.length).toBeGreaterThan(0);
		expect(new Set(each.setups.map(({ number }) => number)).size).toBe(each.setups.length);
		for (const setup of each.setups) {
			const ids = setup.quantities.map(({ id }) => id);
			expect(new Set(ids).size, setup.id).toBe(ids.length);
			for (const id of [
				...setup.limits,
				...setup.practice.ask,
				...Object.keys(setup.practice.given)
			])
				expect(ids, `${setup.id}: ${id}`).toContain(id);
			for (const quantity of setup.quantities) {
				expect(quantity.name.length, quantity.id).toBeGreaterThan(2);
				expect(quantity.min, quantity.id).toBeLessThan(quantity.max);
			}
			expect(setup.notes.length, setup.id).toBeGreaterThan(0);
		}
		for (const { id, unit } of each.quantities)
			for (const setup of each.setups)
				for (const other of setup.quantities)
					if (other.id === id) expect(other.unit, `${setup.id}: ${id}`).toBe(unit);
	});
});

describe('g can be chosen', () => {
	test.each([9.8, 9.80665, 9.81, 10])('%d m/s²', (gravity) => {
		const { solutions } = family('level-floor').solve(
			{ mass: 20, muStatic: 0.7, gravity },
			'startForce'
		);
		within(solutions[0]!.value, 14 * gravity, { relative: 1e-12 });
	});
});
