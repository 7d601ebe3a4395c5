import { describe, expect, test } from 'vitest';
import { betterByMass } from '#core/region/better-by-mass.ts';
import { evaluateHang } from '#core/strength/evaluate-hang.ts';
import { loadAtNetMass } from '#core/mechanics/load-at-net-mass.ts';
import type { Hang } from '#core/types.ts';
import { within } from '#test/within.ts';

const narrow: Hang = {
	hangingMass: 70,
	ropeAngle: 0,
	hands: 2,
	slope: (32 * Math.PI) / 180,
	friction: {
		kind: 'film',
		filmCoefficient: 0.4,
		coefficient: 0.75,
		breakthroughPressure: 150e3,
		sharpness: 1
	},
	grip: {
		fingers: 4,
		padWidth: 0.016,
		padLength: 0.021,
		padDepth: 0.005,
		contact: { kind: 'fixed', padArea: 160e-6 }
	},
	strength: { referenceForce: 400, referenceEdgeDepth: 0.02, holdTime: 5 }
};
const wide: Hang = {
	...narrow,
	grip: { ...narrow.grip, contact: { kind: 'fixed', padArea: 250e-6 } }
};
const range = { multiple: 1, strengthExponent: 0, from: 30, to: 130 };

describe('which of two hangs is better, by body mass', () => {
	test('a small patch presses through a film for the light, a large one spares the heavy', () => {
		const { changes, samples } = betterByMass({ first: narrow, second: wide, ...range });
		expect(changes).toHaveLength(1);
		const [{ bodyMass, below, above }] = changes as [(typeof changes)[0]];
		expect([below, above]).toEqual(['first', 'second']);
		expect(samples).toHaveLength(201);
		const marginAt = (hang: Hang) => {
			const own = { ...hang, hangingMass: bodyMass };
			const result = evaluateHang(own, loadAtNetMass(bodyMass, own));
			return Math.min(result.slipMargin, result.strengthMargin);
		};
		within(marginAt(narrow), marginAt(wide), { relative: 1e-8 });
	});

	test('the same hang twice is even everywhere', () => {
		const { changes, samples } = betterByMass({ first: wide, second: wide, ...range });
		expect(changes).toEqual([]);
		expect(new Set(samples.map(({ better }) => better))).toEqual(new Set(['even']));
	});

	test('under a constant ratio both slip alike, so they part only where strength ends it', () => {
		const friction = { kind: 'constant', coefficient: 0.64 } as const;
		const first = { ...narrow, friction };
		const second = { ...wide, friction };
		const { changes } = betterByMass({ first, second, ...range });
		expect(changes.map(({ below, above }) => [below, above])).toEqual([['even', 'second']]);
	});

	test('strength in step with body mass leaves nothing to change under a constant ratio', () => {
		const friction = { kind: 'constant', coefficient: 0.64 } as const;
		const { changes, samples } = betterByMass({
			first: { ...narrow, friction },
			second: { ...wide, friction },
			...range,
			strengthExponent: 1
		});
		expect(changes).toEqual([]);
		within(samples[0]!.first.margin, samples.at(-1)!.first.margin, { relative: 1e-9 });
	});

	test('an empty range is refused', () => {
		expect(() => betterByMass({ first: wide, second: wide, ...range, to: 30 })).toThrow(/to must/);
	});
});
