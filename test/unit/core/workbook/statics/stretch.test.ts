import { describe, expect, test } from 'vitest';
import { pressing } from '#core/workbook/pressing/pressing.ts';
import { wedge } from '#core/workbook/wedge/wedge.ts';
import { within } from '#test/within.ts';

const degree = Math.PI / 180;

describe('quantities that rest leaves open', () => {
	test('any push between the two limits holds a wedge', () => {
		const given = {
			arrangement: 1,
			load: 3000,
			wedgeAngle: 30 * degree,
			muFace: 0.2,
			muFloor: 0.2
		};
		const { regime, solutions } = wedge.solve(given, 'push');
		expect(regime).toBe('rests');
		expect(solutions).toHaveLength(1);
		const least = wedge.solve(given, 'holdForce').solutions[0]!.value;
		const most = wedge.solve(given, 'driveForce').solutions[0]!.value;
		expect(least).toBeGreaterThan(0);
		within(solutions[0]!.value, least, { relative: 1e-12 });
		within(solutions[0]!.upTo!, most, { relative: 1e-12 });
		// Put in, what lies between rests, and what lies outside does not.
		const happens = (push: number) => wedge.solve({ ...given, push }, 'floorForceUp').regime;
		expect(happens((least + most) / 2)).toBe('rests');
		expect(happens(least * 0.9)).toBe('slides out');
		expect(happens(most * 1.1)).toBe('slides in');
	});

	test('shoes of any coefficient from the needed one upwards will do', () => {
		const given = { arrangement: 4, mass: 70, ropeAngle: 20 * degree, legAngle: 10 * degree };
		const { solutions } = pressing.solve(given, 'mu');
		expect(solutions).toHaveLength(1);
		within(solutions[0]!.value, Math.tan(10 * degree), { relative: 1e-12 });
		expect(solutions[0]!.upTo).toBe(Infinity);
	});

	test('with a bound open it says what is missing', () => {
		const { regime, because } = pressing.solve({ arrangement: 4, mass: 70 }, 'mu');
		expect(regime).toBe('undetermined');
		expect(because).not.toMatch(/Give \./);
	});
});
