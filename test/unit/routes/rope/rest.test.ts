import { describe, expect, test } from 'vitest';
import { loadAtNetMass } from '#core/mechanics/load-at-net-mass.ts';
import { evaluateHang } from '#core/strength/evaluate-hang.ts';
import { firstSight, type Setup } from '#storage/codecs/setup.ts';
import { within } from '#test/within.ts';
import { startOf } from '../../../../src/routes/own-numbers.ts';
import { alongNetMass, assistOf, ropeResults } from '../../../../src/routes/rope/rest.ts';
import { rigOf, rigSpecs } from '../../../../src/routes/rope/rig.ts';

const start = startOf(rigSpecs);
const rig = rigOf(start);
const setup = (patch: Partial<Setup>): Setup => ({ ...firstSight, ...patch });

describe('what the rope page computes', () => {
	test('the lean that makes the lighter hang fail is where evaluateHang’s slip margin is 1', () => {
		const variants: Partial<Setup>[] = [
			{ change: -15 },
			{ change: -30, law: 'constant', mu: 0.7 },
			{ change: -5, law: 'adhesion', mu: 0.5, shear: 40, slope: 30 },
			{ change: -20, radius: 60, slope: 25 },
			{ change: -20, patch: 'growing', radius: 80, slope: 22 },
			{ change: -12, push: 40, rope: 12 }
		];
		for (const patch of variants) {
			const { hang, fake, netMass, hangingMass } = ropeResults(setup(patch), rig);
			const load = loadAtNetMass(netMass, { hangingMass, ropeAngle: fake.lean });
			within(evaluateHang(hang, load).slipMargin, 1, { absolute: 1e-9 });
			const nearly = loadAtNetMass(netMass, { hangingMass, ropeAngle: fake.lean - 1e-4 });
			expect(evaluateHang(hang, nearly).slipMargin).toBeGreaterThan(1);
			// A pulley that sits that far out brings the rope to rest at that lean.
			const there = ropeResults(setup(patch), { ...rig, outward: fake.offset });
			within(there.rest.ropeAngle, fake.lean, { absolute: 1e-9 });
			within(there.slipMargin, 1, { absolute: 1e-8 });
		}
	});

	test('a hold that slips even plumb asks for a lean toward the wall', () => {
		const { fake, atBodyMass } = ropeResults(setup({ law: 'constant', mu: 0.6, change: -15 }), rig);
		expect(atBodyMass.slipMargin).toBeLessThan(1);
		expect(fake.lean).toBeLessThan(0);
		expect(fake.offset).toBeLessThan(0);
	});

	test('assist of the set-up is used, and an example where it has none', () => {
		expect(assistOf(setup({ change: -22 }))).toBe(22);
		expect(assistOf(setup({ change: 10 }))).toBe(15);
		expect(assistOf(setup({ change: 0, body: 30 }))).toBe(15);
	});

	test('without a pull to the side its margin is evaluateHang’s; with one it is smaller', () => {
		const plain = ropeResults(setup({ change: -20, slope: 30 }), rig);
		within(plain.slipMargin, evaluateHang(plain.hang, plain.rest.load).slipMargin, {
			relative: 1e-12
		});
		const aside = ropeResults(setup({ change: -20, slope: 30 }), { ...rig, sideways: 0.6 });
		const outwardOnly = evaluateHang(aside.hang, aside.rest.load).slipMargin;
		expect(aside.slipMargin).toBeLessThan(outwardOnly);
		within(aside.outwardDemand, aside.ratio / outwardOnly, { relative: 1e-12 });
	});

	test('the band runs from ηA to A/η, and its anchor carries both strands', () => {
		const { bands, rest } = ropeResults(setup({ change: -20, efficiency: 0.83 }), rig);
		const [low, ideal, high] = bands.rows;
		within(low!.assistForce, 0.83 * rest.assistForce, { relative: 1e-12 });
		within(ideal!.assistForce, rest.assistForce, { relative: 1e-12 });
		within(high!.assistForce, rest.assistForce / 0.83, { relative: 1e-12 });
		const anchor = high!.rest ? high!.anchor : NaN;
		expect(anchor).toBeGreaterThan(rest.assistForce / 0.83);
		expect(anchor).toBeLessThanOrEqual(rest.assistForce * (1 + 1 / 0.83));
	});

	test('a bad pulley may carry the whole body, and the row says so', () => {
		const { bands } = ropeResults(setup({ change: -50, efficiency: 0.5 }), rig);
		expect(bands.rows.map((row) => row.rest === undefined)).toEqual([false, false, true]);
	});

	test('along the load axis the rope stands steeper the more it lifts', () => {
		const rests = alongNetMass(ropeResults(setup({ change: -20 }), rig));
		for (let i = 1; i < rests.length; i++) {
			expect(rests[i]!.rest.ropeAngle).toBeGreaterThan(rests[i - 1]!.rest.ropeAngle);
			expect(rests[i]!.rest.bodyLean).toBeLessThan(rests[i - 1]!.rest.bodyLean);
		}
	});
});
