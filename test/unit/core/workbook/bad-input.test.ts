import { describe, expect, test } from 'vitest';
import { workbook } from '#core/workbook/workbook.ts';
import { within } from '#test/within.ts';

const solve = (id: string, given: Record<string, number>, ask: string) =>
	workbook.find((each) => each.id === id)!.solve(given, ask);
const degree = Math.PI / 180;

describe('bad input: says which given is at fault and why, and solves what is still determined', () => {
	test('a negative mass is left out; what needs no mass is still solved', () => {
		const given = { mass: -10, slope: 20 * degree, muStatic: 0.5, muKinetic: 0.3 };
		const answer = solve('incline', given, 'freeDown');
		expect(answer.warnings.join()).toMatch(
			/mass \(mass\) = -10 kg .*must be above 0.*No body has less than nothing/
		);
		within(
			answer.solutions[0]!.value,
			9.80665 * (Math.sin(20 * degree) - 0.3 * Math.cos(20 * degree)),
			{ relative: 1e-12 }
		);
		const other = solve('incline', given, 'startUpForce');
		expect(other.regime).toBe('undetermined');
		expect(other.because).toMatch(/Give mass \(mass\), or weight/);
		expect(other.because).toMatch(/Already settled: .*reposeAngle = 26.57°/);
	});

	test('degrees typed for radians are noticed', () => {
		const { warnings, regime } = solve(
			'incline',
			{ mass: 10, slope: 25, muStatic: 0.5 },
			'startUpForce'
		);
		expect(warnings[0]).toMatch(
			/slope \(slope\) = 25 rad is 1432°.*If 25 is in degrees, give 0.4363 rad/
		);
		expect(regime).toBe('undetermined');
	});

	test('an angle past 90° is refused', () => {
		const { warnings } = solve(
			'incline',
			{ mass: 10, slope: 100 * degree, muStatic: 0.5 },
			'normal'
		);
		expect(warnings[0]).toMatch(/slope .* is 100°; it must lie between 0° and 90°/);
	});

	test('impossible geometry: a foot farther out than the ladder is long', () => {
		const { regime, warnings } = solve(
			'ladder',
			{ length: 5, footDistance: 8, weight: 200 },
			'neededMu'
		);
		expect(regime).toBe('impossible');
		expect(warnings.join()).toMatch(
			/No angle with the floor \(angle\) gives footDistance .* = 8 m: .*from 0 m up to 5 m/
		);
	});

	test('impossible geometry: a board that rises more than its length', () => {
		const { regime, warnings } = solve(
			'incline',
			{ rise: 0.5, boardLength: 0.4, arrangement: 3 },
			'muStatic'
		);
		expect(regime).toBe('impossible');
		expect(warnings.join()).toMatch(/slope/);
	});

	test('a missing given is named', () => {
		const { regime, because, solutions } = solve('level-floor', { mass: 10 }, 'startForce');
		expect([regime, solutions.length]).toEqual(['undetermined', 0]);
		expect(because).toMatch(/Give muStatic/);
	});

	test('two missing givens are named together', () => {
		const { because } = solve('pressing', { mu: 0.8, arrangement: 3 }, 'leastThrust');
		expect(because).toMatch(/both cornerAngle .* and mass|cornerAngle/);
	});

	test('a surplus given that agrees is silent, one that contradicts is named', () => {
		const given = { mass: 10, weight: 98, gravity: 9.8, muStatic: 0.5 };
		expect(solve('level-floor', given, 'startForce').warnings).toEqual([]);
		const { warnings, solutions } = solve('level-floor', { ...given, weight: 120 }, 'startForce');
		expect(warnings.join()).toMatch(
			/One given too many: the others make (mass|gravity|weight) .* but .* was given/
		);
		within(solutions[0]!.value, 60, { relative: 1e-12 });
	});

	test('friction of zero is allowed, with a word', () => {
		const { warnings, solutions } = solve('level-floor', { mass: 10, muStatic: 0 }, 'startForce');
		expect(warnings[0]).toMatch(/muStatic = 0: without friction/);
		expect(solutions[0]!.value).toBe(0);
		expect(solve('pressing', { mass: 10, mu1: 0, mu2: 0 }, 'leastPress').regime).toBe('impossible');
	});

	test('a mistyped name is answered with the nearest one', () => {
		const { warnings } = solve('level-floor', { mas: 10, muStatic: 0.4 }, 'startForce');
		expect(warnings[0]).toMatch(/"mas" is no quantity.*Did you mean "mass"/);
	});

	test('not a number, infinite, and half a hand are refused', () => {
		expect(solve('level-floor', { mass: NaN, muStatic: 0.4 }, 'startForce').warnings[0]).toMatch(
			/mass .* is not a number/
		);
		expect(
			solve('level-floor', { mass: Infinity, muStatic: 0.4 }, 'startForce').warnings[0]
		).toMatch(/mass/);
		const hang = {
			hands: 1.5,
			hangingMass: 70,
			netMass: 60,
			slope: 0.5,
			coefficient: 0.6,
			arrangement: 1
		};
		expect(solve('hang', hang, 'slipMargin').warnings[0]).toMatch(
			/hands .* must be a whole number from 1 to 2/
		);
	});

	test('an unknown question is an error that names it; an unknown arrangement a warning', () => {
		expect(() => solve('level-floor', { mass: 1 }, 'colour')).toThrow(/ask = "colour"/);
		const { warnings } = solve(
			'level-floor',
			{ mass: 1, muStatic: 0.3, arrangement: 9 },
			'startForce'
		);
		expect(warnings[0]).toMatch(/arrangement = 9 is none of 1, 2, 3, 4/);
	});

	test('what was assumed is said', () => {
		const { assumed } = solve('level-floor', { mass: 10, muStatic: 0.5 }, 'startForce');
		expect(assumed).toEqual({ gravity: 9.80665, forceAngle: 0 });
	});
});

describe('coefficients that do not go together', () => {
	test('a kinetic coefficient above the static one is questioned', () => {
		const { warnings } = solve(
			'level-floor',
			{ mass: 10, muStatic: 0.3, muKinetic: 0.4, force: 50 },
			'friction'
		);
		expect(warnings.join()).toMatch(/muKinetic = 0.4 is above muStatic = 0.3/);
	});
});
