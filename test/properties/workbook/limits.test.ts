import { describe, expect, test } from 'vitest';
import { workbook } from '#core/workbook/workbook.ts';
import { within } from '#test/within.ts';

const solve = (id: string, given: Record<string, number>, ask: string) =>
	workbook.find((each) => each.id === id)!.solve(given, ask);
const value = (id: string, given: Record<string, number>, ask: string) =>
	solve(id, given, ask).solutions[0]!.value;
const g = 9.80665;
const tiny = { absolute: 1e-5 };

describe('friction vanishing', () => {
	test('a push of nothing starts a block on a level floor', () => {
		within(value('level-floor', { mass: 10, muStatic: 1e-9 }, 'startForce'), 0, tiny);
	});
	test('an incline without friction: hold and push forces are both W sin θ', () => {
		for (const ask of ['holdForce', 'startUpForce'])
			within(
				value('incline', { mass: 10, slope: 0.4, muStatic: 1e-12 }, ask),
				10 * g * Math.sin(0.4),
				{ relative: 1e-9 }
			);
		within(value('incline', { slope: 0.4, muKinetic: 0 }, 'freeDown'), g * Math.sin(0.4), {
			relative: 1e-12
		});
	});
	test('two weights over a pulley without friction: the plain machine', () => {
		const given = {
			mass1: 2,
			slope1: Math.PI / 2,
			mass2: 3,
			slope2: Math.PI / 2,
			muStatic: 0,
			muKinetic: 0
		};
		within(value('connected-blocks', given, 'acceleration'), g / 5, { relative: 1e-9 });
		within(value('connected-blocks', given, 'movingTension'), (2 * 2 * 3 * g) / 5, {
			relative: 1e-9
		});
	});
	test('a belt without friction passes the force on', () => {
		within(value('belt', { load: 100, mu: 0, turns: 3 }, 'holdForce'), 100, { relative: 1e-12 });
	});
	test('a wedge without friction is an incline', () => {
		const given = { load: 100, wedgeAngle: 0.2, muFace: 0, muFloor: 0 };
		within(value('wedge', given, 'driveForce'), 100 * Math.tan(0.2), { relative: 1e-12 });
		within(value('wedge', given, 'holdForce'), 100 * Math.tan(0.2), { relative: 1e-12 });
	});
	test('a ladder without friction at the floor never stands', () => {
		const { regime } = solve(
			'ladder',
			{ length: 4, weight: 100, angle: 1.2, muFloor: 0, personWeight: 0 },
			'friction'
		);
		expect(regime).toBe('slides');
	});
});

describe('angles vanishing', () => {
	test('a flat incline is a floor', () => {
		const floor = value('level-floor', { mass: 10, muStatic: 0.4 }, 'startForce');
		within(value('incline', { mass: 10, slope: 0, muStatic: 0.4 }, 'startUpForce'), floor, {
			relative: 1e-12
		});
		within(value('incline', { mass: 10, slope: 0, muStatic: 0.4, force: 0 }, 'friction'), 0, tiny);
	});
	test('parallel walls: stemming is pressing between two faces', () => {
		const press = value('pressing', { mass: 60, mu1: 0.9, mu2: 0.9, arrangement: 1 }, 'leastPress');
		within(value('pressing', { mass: 60, mu: 0.9, cornerAngle: 0 }, 'leastThrust'), press, {
			relative: 1e-12
		});
	});
	test('a block with a level force is a block without angle', () => {
		const given = { mass: 10, muStatic: 0.4 };
		within(value('level-floor', { ...given, forceAngle: 1e-9 }, 'startForce'), 4 * g, {
			relative: 1e-8
		});
	});
	test('an upright wall of slope 90°: weight alone drives', () => {
		within(value('incline', { slope: Math.PI / 2, muKinetic: 0.5 }, 'freeDown'), g, {
			relative: 1e-12
		});
	});
});

describe('friction without end', () => {
	test('a push below the level locks for a large coefficient, a pull tends to the lifting force', () => {
		expect(
			solve('level-floor', { mass: 10, muStatic: 100, forceAngle: -0.2 }, 'startForce').regime
		).toBe('self-locks');
		within(
			value('level-floor', { mass: 10, muStatic: 100, forceAngle: 0.5 }, 'startForce'),
			(10 * g) / Math.sin(0.5),
			{ relative: 0.02 }
		);
	});
	test('repose tends to 90°, the press to nothing, the widest corner to 180°', () => {
		within(value('incline', { muStatic: 100 }, 'reposeAngle'), Math.PI / 2, { absolute: 0.011 });
		within(value('pressing', { mass: 1, mu1: 100 }, 'leastPress'), 0, { absolute: 0.05 });
		within(value('pressing', { mu: 100 }, 'widestAngle'), Math.PI, { absolute: 0.021 });
	});
	test('a wedge with much friction jams: it cannot be driven at all', () => {
		const given = { load: 100, wedgeAngle: 0.5, muFace: 10, muFloor: 10 };
		expect(solve('wedge', given, 'driveForce').regime).toBe('self-locks');
	});
	test('the same weight rests on any slope below the friction angle: weight cancels', () => {
		for (const mass of [0.001, 1, 1e6])
			expect(
				solve('incline', { mass, slope: 0.5, muStatic: 0.6, force: 0 }, 'friction').regime
			).toBe('self-locks');
	});
});
