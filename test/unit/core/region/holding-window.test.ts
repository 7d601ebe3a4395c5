import { describe, expect, test } from 'vitest';
import {
	evaluateHang,
	holdingRegion,
	holdingWindow,
	loadAtNetMass,
	type FrictionLaw
} from '#core/index.ts';
import { within } from '#test/within.ts';
import { baseHang } from '#test/own/mechanics/hangs.ts';

const range = { from: 20, to: 130 };

describe('what ends a window', () => {
	test('the range and strength, plumb with a constant ratio', () => {
		expect(holdingWindow(baseHang(), range)).toMatchObject([
			{ from: 20, lowerLimit: 'range', upperLimit: 'strength' }
		]);
	});

	test('slip below, through rope lean alone', () => {
		expect(holdingWindow(baseHang({ slope: 31, ropeAngle: 10 }), range)).toMatchObject([
			{ lowerLimit: 'slip', upperLimit: 'strength' }
		]);
	});

	test('two intervals from one rising law with an inward rope', () => {
		const film: FrictionLaw = {
			kind: 'film',
			filmCoefficient: 0.4,
			coefficient: 0.8,
			breakthroughPressure: 150e3,
			sharpness: 1
		};
		const hang = {
			...baseHang({ friction: film, slope: 36.8, ropeAngle: -10, referenceForce: 90 })
		};
		expect(holdingWindow(hang, range)).toMatchObject([
			{ lowerLimit: 'range', upperLimit: 'slip' },
			{ lowerLimit: 'slip', upperLimit: 'range' }
		]);
	});

	test('a hold exactly at its limit holds', () => {
		const hang = baseHang({
			slope: 32,
			friction: { kind: 'constant', coefficient: Math.tan((32 * Math.PI) / 180) }
		});
		expect(holdingWindow(hang, range)).toHaveLength(1);
	});

	test('a vertical face holds nothing', () => {
		expect(holdingWindow(baseHang({ slope: 90 }), range)).toEqual([]);
	});

	test('the kink at the hanging mass is no edge of its own', () => {
		const hang = baseHang({ slope: 20, ropeAngle: 5, referenceForce: 90 });
		expect(holdingWindow(hang, range)).toMatchObject([
			{ from: 20, to: 130, lowerLimit: 'range', upperLimit: 'range' }
		]);
	});

	test('all of it may be lighter or heavier than the hanging mass', () => {
		const hang = baseHang({ slope: 31, ropeAngle: 10 });
		expect(holdingWindow(hang, { from: 20, to: 61 })).toMatchObject([
			{ to: 61, upperLimit: 'range' }
		]);
		expect(holdingWindow(hang, { from: 71, to: 130 })).toEqual([]);
	});
});

describe('births of intervals in the region', () => {
	test('deformation: one window splits in two where the least ratio meets the demand', () => {
		const friction: FrictionLaw = {
			kind: 'deformation',
			coefficient: 0.3,
			shearStrength: 20e3,
			deformation: 0.2,
			referencePressure: 114e3
		};
		const hang = baseHang({ friction, slope: 32, referenceForce: 90 });
		const region = holdingRegion(hang, {
			axis: 'slope',
			from: 0.5,
			to: 0.65,
			columns: 240,
			load: range
		});
		// Closed form: the ratio is least at p* = (3 · shearStrength · referencePressure^(1/3) / deformation)^(3/4).
		const p = Math.pow((3 * 20e3 * Math.cbrt(114e3)) / 0.2, 3 / 4);
		const least = 0.3 + 20e3 / p + 0.2 * Math.cbrt(p / 114e3);
		const split = region.breaks.find((value) => Math.abs(value - Math.atan(least)) < 1e-6);
		within(split!, Math.atan(least), { absolute: 1e-12 });
		const there = { ...hang, slope: split! + 1e-7 };
		expect(holdingWindow(there, range)).toHaveLength(2);
		for (const { from, to } of holdingWindow(there, range))
			for (const edge of [from, to].filter((at) => at > 20 && at < 130))
				within(evaluateHang(there, loadAtNetMass(edge, there)).slipMargin, 1, { absolute: 1e-9 });
	});
});
