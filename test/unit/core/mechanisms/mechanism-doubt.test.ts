import { describe, expect, test } from 'vitest';
import { mechanismDoubt } from '#core/mechanisms/mechanism-doubt.ts';
import { mechanismKeys } from '#core/mechanisms/mechanism-margin.ts';
import type { MechanismKey, MechanismParameters } from '#core/mechanisms/mechanism-parameters.ts';
import type { Hang } from '#core/types.ts';
import { mechanisms } from '#reference/mechanisms.ts';

const base: Hang = {
	hangingMass: 70,
	ropeAngle: 0,
	hands: 2,
	slope: 0.55,
	friction: { kind: 'constant', coefficient: 0.64 },
	grip: {
		fingers: 4,
		padWidth: 0.016,
		padLength: 0.021,
		padDepth: 0.005,
		contact: { kind: 'fixed', padArea: 250e-6 }
	},
	strength: { referenceForce: 400, referenceEdgeDepth: 0.02, holdTime: 5 }
};

describe('where a curve leaves its story', () => {
	test('a leaning rope, past 40 % assist', () => {
		const doubt = mechanismDoubt('ropeLean', base, { ropeAngle: 0.1 });
		expect(doubt(41.9)).toMatch(/40 % assist/);
		expect(doubt(42.1)).toBeUndefined();
		expect(mechanismDoubt('ropeLean', base, { ropeAngle: 0 })(30)).toBeUndefined();
	});

	test('a counterweight left on, below the body’s load under that rope', () => {
		// 98.0665 N straight up take off 10 kg.
		const doubt = mechanismDoubt('counterweightLeftOn', base, {
			assistForce: 98.0665,
			ropeAngle: 0
		});
		expect(doubt(59.9)).toMatch(/no plates/);
		expect(doubt(60.1)).toBeUndefined();
	});

	test('a drift before the first go', () => {
		const doubt = mechanismDoubt('orderDrift', base, { drift: 0.02, firstMass: 40, step: 5 });
		expect(doubt(39)).toMatch(/first go/);
		expect(doubt(41)).toBeUndefined();
	});

	test('a nudge that throws the body over', () => {
		// sin 45° = sin 15° · √(70/m) at m = 9.4 kg.
		const doubt = mechanismDoubt('swingSameImpulse', base, { swingAngle: Math.PI / 6 });
		expect(doubt(9)).toMatch(/past the horizontal/);
		expect(doubt(10)).toBeUndefined();
	});

	test('a hand flatter than the end of the finger', () => {
		// 250 mm² at 70 kg grow past 336 mm² at 70 · (336/250)^(1/1.3) = 87.9 kg.
		const doubt = mechanismDoubt('flatterHand', base, {
			coefficient: 0.4,
			shearStrength: 2e4,
			exponent: 1.3,
			largestFactor: 2
		});
		expect(doubt(87)).toBeUndefined();
		expect(doubt(89)).toMatch(/larger than the end of the finger/);
	});

	test('at a person’s own mass no mechanism’s starting values raise a doubt', () => {
		for (const key of mechanismKeys) {
			const row = mechanisms.find((candidate) => candidate.boardKey === key)!;
			const start = Object.fromEntries(
				row.parameters.map((parameter) => [parameter.field, parameter.start])
			) as unknown as MechanismParameters[MechanismKey];
			expect(mechanismDoubt(key, base, start as never)(70), key).toBeUndefined();
		}
	});
});
