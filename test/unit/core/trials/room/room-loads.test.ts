import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { largestStep } from '#core/trials/cap-values.ts';
import { leastStep, roomLoads, stillAllowed } from '#core/trials/room/room-loads.ts';
import { within } from '#test/within.ts';

const shares = [0.8, 1, 1.1] as const;

describe('loads of the room’s experiment', () => {
	test('shares of body mass, where the caps leave them', () => {
		const [light, plain, heavy] = roomLoads({ bodyMass: 70, heldMass: 70, shares });
		within(light.load, 56, { absolute: 1e-9 });
		within(plain.load, 70, { absolute: 1e-9 });
		within(heavy.load, 77, { absolute: 1e-9 });
		expect([light, plain, heavy].every(({ allowed, lowered }) => allowed && !lowered)).toBe(true);
	});

	test('a heavy load past the cap comes down to it', () => {
		const [, , heavy] = roomLoads({ bodyMass: 70, heldMass: 67, shares });
		within(heavy.load, 73.7, { absolute: 1e-9 });
		expect(heavy).toMatchObject({ allowed: true, lowered: true });
	});

	test('or is left out where that leaves no step', () => {
		const [light, plain, heavy] = roomLoads({ bodyMass: 70, heldMass: 60, shares });
		expect([light.allowed, plain.allowed, heavy.allowed]).toEqual([true, false, false]);
	});

	test('nothing that is allowed ever passes 1.10 times what was held', () => {
		const mass = fc.double({ min: 30, max: 150, noNaN: true });
		fc.assert(
			fc.property(mass, mass, (bodyMass, heldMass) => {
				const loads = roomLoads({ bodyMass, heldMass, shares });
				for (const { load, allowed } of loads) {
					if (allowed) expect(load).toBeLessThanOrEqual(largestStep * heldMass * (1 + 1e-9));
				}
				const [, plain, heavy] = loads;
				if (heavy.allowed) expect(heavy.load).toBeGreaterThan(plain.load * leastStep * 0.9999999);
			})
		);
	});

	test('bad input names its field', () => {
		expect(() => roomLoads({ bodyMass: 0, heldMass: 60, shares })).toThrow(/bodyMass/);
		expect(() => roomLoads({ bodyMass: 70, heldMass: NaN, shares })).toThrow(/heldMass/);
		expect(() => roomLoads({ bodyMass: 70, heldMass: 70, shares: [1, 0.9, 1.1] })).toThrow(
			/shares\[1\]/
		);
	});

	test('opening and stopping block what is heavier, pain blocks all, a slip nothing', () => {
		const after = (outcome: 'opened' | 'stopped' | 'pain' | 'slipped') => [{ load: 70, outcome }];
		expect(stillAllowed(77, after('opened'))).toBe(false);
		expect(stillAllowed(70, after('stopped'))).toBe(false);
		expect(stillAllowed(56, after('opened'))).toBe(true);
		expect(stillAllowed(56, after('pain'))).toBe(false);
		expect(stillAllowed(77, after('slipped'))).toBe(true);
	});
});
