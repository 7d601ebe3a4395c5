import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { frictionRatio } from '#core/friction/friction-ratio.ts';
import { flatterHandArea } from '#core/mechanisms/flatter-hand.ts';
import { hysteresisPart } from '#core/mechanisms/hysteresis.ts';
import { interlockRatio } from '#core/mechanisms/interlock.ts';
import { growingAdhesionRatio } from '#core/mechanisms/natural-growth.ts';
import { meanSlope } from '#core/mechanisms/rounded-hold.ts';
import { saturationRatio } from '#core/mechanisms/saturation.ts';
import { shearLossRatio } from '#core/mechanisms/shear-loss.ts';
import { sittingRatio } from '#core/mechanisms/sitting-time.ts';
import { mechanisms } from '#reference/mechanisms.ts';
import { rowOf } from '#reference/read.ts';
import type { Effect } from '#reference/types.ts';

/** Ratio of one pad under a force, N, on an area, m². */
type RatioOf = (force: number, area: number) => number;

const share = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Each mechanism's ratio with its effect anywhere in the range of its row, and with none. */
const families: { key: string; strength: fc.Arbitrary<number>; ratio: (s: number) => RatioOf }[] = [
	{
		key: 'constant',
		strength: share(0.2, 0.9),
		ratio: (coefficient) => (force, area) =>
			frictionRatio({ kind: 'constant', coefficient }, force / area)
	},
	{
		key: 'adhesion',
		strength: share(1e3, 15e3),
		ratio: (shearStrength) => (force, area) =>
			frictionRatio({ kind: 'adhesion', coefficient: 0.4, shearStrength }, force / area)
	},
	{
		key: 'saturation',
		strength: share(30e3, 3e6),
		ratio: (saturationPressure) => (force, area) =>
			saturationRatio(force / area, { coefficient: 0.6, saturationPressure })
	},
	{
		key: 'deformation',
		strength: share(0.02, 0.2),
		ratio: (deformation) => (force, area) => 0.45 + hysteresisPart(force / area, deformation, 114e3)
	},
	{
		key: 'interlock',
		strength: share(0.05, 0.5),
		ratio: (interlock) => (force, area) =>
			interlockRatio(force / area, { coefficient: 0.45, interlock, penetrationPressure: 3e5 })
	},
	{
		key: 'powder-film',
		strength: share(0.05, 0.35),
		ratio: (gain) => (force, area) =>
			frictionRatio(
				{
					kind: 'film',
					filmCoefficient: 0.4,
					coefficient: 0.4 + gain,
					breakthroughPressure: 5e5,
					sharpness: 1
				},
				force / area
			)
	},
	{
		key: 'liquid-film',
		strength: share(0.05, 0.35),
		ratio: (gain) => (force, area) =>
			frictionRatio(
				{
					kind: 'film',
					filmCoefficient: 0.1,
					coefficient: 0.1 + gain,
					breakthroughPressure: 5e5,
					sharpness: 2
				},
				force / area
			)
	},
	{
		key: 'shear-loss',
		strength: share(0.02, 0.05),
		ratio: (loss) => (force, area) =>
			shearLossRatio(force / area, { coefficient: 0.6, loss, referencePressure: 114e3 })
	}
];

function agrees(effect: Effect, before: number, after: number): boolean {
	const change = after / before - 1;
	if (effect === 'better') return change > 1e-9;
	if (effect === 'worse') return change < -1e-9;
	if (effect === 'no change') return Math.abs(change) < 1e-12;
	return true;
}

/** Forces on one pad from light hangs to heavy ones, and pads from small to large. */
const force = share(20, 150);
const area = share(150e-6, 450e-6);
const factor = share(1.05, 2);

describe('the ratio moves as the mechanism’s row says', () => {
	for (const { key, strength, ratio } of families) {
		const row = rowOf(mechanisms, key);

		test(`${key}: more load on the same patch: ${row.constantArea}`, () => {
			fc.assert(
				fc.property(strength, force, area, factor, (s, n, a, k) =>
					agrees(row.constantArea, ratio(s)(n, a), ratio(s)(k * n, a))
				)
			);
		});

		test(`${key}: more load and patch together: ${row.constantPressure}`, () => {
			fc.assert(
				fc.property(strength, force, area, factor, (s, n, a, k) =>
					agrees(row.constantPressure, ratio(s)(n, a), ratio(s)(k * n, k * a))
				)
			);
		});

		test(`${key}: a bigger patch under the same load: ${row.biggerPatch}`, () => {
			fc.assert(
				fc.property(strength, force, area, factor, (s, n, a, k) =>
					agrees(row.biggerPatch, ratio(s)(n, a), ratio(s)(n, k * a))
				)
			);
		});
	}

	test('natural growth: worse with load along its own path, and a bigger pad is better', () => {
		fc.assert(
			fc.property(
				share(1e3, 15e3),
				share(0, 0.9),
				force,
				factor,
				(shearStrength, exponent, n, k) => {
					const growth = { padCoefficient: 110e-6, exponent, padLimit: 1 };
					const at = (f: number, pad = growth) =>
						growingAdhesionRatio(f, { coefficient: 0.4, shearStrength, growth: pad });
					const bigger = { ...growth, padCoefficient: 110e-6 * k };
					return agrees('worse', at(n), at(k * n)) && agrees('better', at(n), at(n, bigger));
				}
			)
		);
	});

	test('natural growth: faster than the load it turns the sign, as fast as the load it cancels', () => {
		fc.assert(
			fc.property(
				share(1e3, 15e3),
				share(1.05, 1.5),
				force,
				factor,
				(shearStrength, exponent, n, k) => {
					const at = (f: number, e: number) =>
						growingAdhesionRatio(f, {
							coefficient: 0.4,
							shearStrength,
							growth: { padCoefficient: 110e-6, exponent: e, padLimit: 1e9 }
						});
					return (
						agrees('better', at(n, exponent), at(k * n, exponent)) &&
						agrees('no change', at(n, 1), at(k * n, 1))
					);
				}
			)
		);
	});

	test('a flatter hand: better only where skin sticks and the patch outgrows the load', () => {
		fc.assert(
			fc.property(share(0, 0.95), share(1.05, 2), share(40, 60), (slow, fast, n) => {
				const at = (exponent: number, f: number) =>
					flatterHandArea(f, { padArea: 250e-6, referenceForce: 70, exponent, largestFactor: 9 }) /
					f;
				return at(slow, n * 1.3) < at(slow, n) && at(fast, n * 1.3) > at(fast, n);
			})
		);
	});

	test('rounded hold: a bigger patch lies steeper, a larger radius less so', () => {
		fc.assert(
			fc.property(share(0.1, 0.8), share(0.005, 0.02), share(0.02, 0.5), (slope, patch, radius) => {
				const at = meanSlope(slope, patch, radius);
				return (
					meanSlope(slope, 1.5 * patch, radius) > at && meanSlope(slope, patch, 2 * radius) < at
				);
			})
		);
	});

	test('sitting time: load does not matter, time does, toward the limit and never past it', () => {
		fc.assert(
			fc.property(share(0, 60), share(0.3, 10), share(2, 15), share(0, 200), (t, rise, λ, n) => {
				const at = (time: number, f?: number) =>
					sittingRatio(time, { coefficient: 0.5, rise, timeConstant: λ, force: f });
				const [low, high] = rise > 1 ? [0.5, 0.5 * rise] : [0.5 * rise, 0.5];
				const now = at(t);
				const later = at(t + 1);
				return (
					at(t, n) === now &&
					now >= low - 1e-12 &&
					now <= high + 1e-12 &&
					(rise >= 1 ? later >= now : later <= now)
				);
			})
		);
	});

	test('sitting time with a rise that fades with force: heavier is worse', () => {
		fc.assert(
			fc.property(share(1, 60), share(1.2, 10), force, factor, (time, rise, n, k) => {
				const at = (f: number) =>
					sittingRatio(time, { coefficient: 0.5, rise, timeConstant: 6, force: f, fadeForce: 40 });
				return at(k * n) < at(n);
			})
		);
	});
});

describe('without the effect only the plain constant law is left', () => {
	test('in every ratio', () => {
		fc.assert(
			fc.property(share(0.2, 1.2), force, area, (coefficient, n, a) => {
				const p = n / a;
				const plain = frictionRatio({ kind: 'constant', coefficient }, p);
				const none = [
					frictionRatio({ kind: 'adhesion', coefficient, shearStrength: 0 }, p),
					frictionRatio({ kind: 'power', coefficient, referencePressure: 1e5, exponent: 1 }, p),
					saturationRatio(p, { coefficient, saturationPressure: Infinity }),
					coefficient + hysteresisPart(p, 0, 114e3),
					interlockRatio(p, { coefficient, interlock: 0, penetrationPressure: 1e5 }),
					shearLossRatio(p, { coefficient, loss: 0, referencePressure: 1e5 }),
					sittingRatio(20, { coefficient, rise: 1, timeConstant: 6 }),
					sittingRatio(0, { coefficient, rise: 3, timeConstant: 6 }),
					growingAdhesionRatio(n, {
						coefficient,
						shearStrength: 0,
						growth: { padCoefficient: 1e-4, exponent: 0.3, padLimit: 3e-4 }
					})
				];
				for (const ratio of none) expect(ratio).toBe(plain);
			})
		);
	});

	test('saturation comes near it as its pressure grows', () => {
		fc.assert(
			fc.property(share(0.2, 1.2), force, area, (coefficient, n, a) => {
				const ratio = saturationRatio(n / a, { coefficient, saturationPressure: 1e12 });
				return Math.abs(ratio / coefficient - 1) < 1e-5;
			})
		);
	});
});
