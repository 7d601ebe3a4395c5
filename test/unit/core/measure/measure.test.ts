import { describe, expect, test } from 'vitest';
import { meanAndSpread, roundingSpread } from '#core/measure/measured.ts';
import { areaFromSquares } from '#core/measure/pad-area.ts';
import { capstanRatio, pulleyEfficiency } from '#core/measure/pulley-efficiency.ts';
import { leanFromPlumbLine } from '#core/measure/rope-lean.ts';
import { netMassFromScale } from '#core/measure/scale-ledger.ts';
import { levelZero, slopeFromSamples, tiltFromOrientation } from '#core/measure/slope.ts';
import { ratioFromTilts } from '#core/measure/tilt-to-slip.ts';
import { within } from '#test/within.ts';

const degree = Math.PI / 180;

describe('mean and spread', () => {
	test('of 2, 4, 4, 4, 5, 5, 7, 9: mean 5, spread √(32/7)', () => {
		const result = meanAndSpread('x', [2, 4, 4, 4, 5, 5, 7, 9]);
		expect(result.value).toBe(5);
		within(result.spread, Math.sqrt(32 / 7), { relative: 1e-12 });
		within(result.standardError, Math.sqrt(32 / 56), { relative: 1e-12 });
		expect(result.count).toBe(8);
	});

	test('one repeat has no spread, and says so', () => {
		expect(() => meanAndSpread('goes', [1])).toThrow(
			/^goes\.length must be a whole number at least 2/
		);
		expect(() => meanAndSpread('goes', [1, NaN])).toThrow(/^goes\[1\] must be a finite number/);
	});

	test('a step of 0.1 spreads by 0.0289', () => {
		within(roundingSpread(0.1), 0.028868, { absolute: 1e-6 });
		expect(() => roundingSpread(-0.1)).toThrow(RangeError);
	});
});

describe('slope from a phone', () => {
	test('turned front to back only: pitch and tilt agree', () => {
		const flat = tiltFromOrientation({ beta: 30 * degree, gamma: 0 });
		within(flat.along, 30 * degree, { relative: 1e-12 });
		within(flat.total, 30 * degree, { relative: 1e-12 });
	});

	test('turned sideways only: no pitch, all tilt', () => {
		const side = tiltFromOrientation({ beta: 0, gamma: -20 * degree });
		within(side.along, 0, { absolute: 1e-12 });
		within(side.total, 20 * degree, { relative: 1e-12 });
	});

	test('top edge down is negative, face down is past a right angle', () => {
		within(tiltFromOrientation({ beta: -25 * degree, gamma: 0 }).along, -25 * degree, {
			relative: 1e-12
		});
		within(tiltFromOrientation({ beta: 150 * degree, gamma: 0 }).total, 150 * degree, {
			relative: 1e-12
		});
		within(tiltFromOrientation({ beta: 150 * degree, gamma: 0 }).along, 30 * degree, {
			relative: 1e-12
		});
	});

	test('level from two readings, half a turn apart', () => {
		const zero = levelZero(
			{ value: 3 * degree, spread: 0.3 * degree },
			{ value: -1 * degree, spread: 0.4 * degree }
		);
		within(zero.value, 1 * degree, { relative: 1e-12 });
		within(zero.tilt, 2 * degree, { relative: 1e-12 });
		within(zero.spread, 0.25 * degree, { relative: 1e-12 });
	});

	test('only the last two seconds count, less the zero', () => {
		const samples = [
			{ time: 0, angle: 80 * degree },
			{ time: 1, angle: 70 * degree },
			{ time: 8.5, angle: 30 * degree },
			{ time: 9, angle: 31 * degree },
			{ time: 10, angle: 32 * degree }
		];
		const plain = slopeFromSamples(samples);
		within(plain.value, 31 * degree, { relative: 1e-12 });
		within(plain.spread, 1 * degree, { relative: 1e-12 });
		expect(plain.count).toBe(3);
		const zeroed = slopeFromSamples(samples, { zero: { value: 2 * degree, spread: 2 * degree } });
		within(zeroed.value, 29 * degree, { relative: 1e-12 });
		within(zeroed.spread, Math.sqrt(5) * degree, { relative: 1e-12 });
		expect(slopeFromSamples(samples, { window: 20 }).count).toBe(5);
	});

	test('too few readings, a clock that runs back, and angles out of reach are refused', () => {
		const at = (time: number, angle = 0.5) => ({ time, angle });
		expect(() => slopeFromSamples([])).toThrow(/samples within the window/);
		expect(() => slopeFromSamples([at(0), at(1), at(10)])).toThrow(/at least 3, but is 1/);
		expect(() => slopeFromSamples([at(0), at(2), at(1)])).toThrow(
			/^samples\[2\]\.time must be a number at least 2, but is 1/
		);
		expect(() => slopeFromSamples([at(0), at(1, 2), at(1)])).toThrow(/^samples\[1\]\.angle/);
		expect(() => slopeFromSamples([at(0), at(1), at(1)], { window: 0 })).toThrow(/^window/);
		expect(() => tiltFromOrientation({ beta: NaN, gamma: 0 })).toThrow(/^beta/);
	});
});

describe('tilt to slip', () => {
	test('the ratio is the tangent, averaged go by go', () => {
		const result = ratioFromTilts([30 * degree, 45 * degree]);
		within(result.value, (Math.tan(30 * degree) + 1) / 2, { relative: 1e-12 });
		within(result.spread, (1 - Math.tan(30 * degree)) / Math.SQRT2, { relative: 1e-12 });
	});

	test('a right angle, a negative angle and a single go are refused', () => {
		expect(() => ratioFromTilts([0.5, Math.PI / 2])).toThrow(/^angles\[1\]/);
		expect(() => ratioFromTilts([-0.1, 0.5])).toThrow(/^angles\[0\]/);
		expect(() => ratioFromTilts([0.5])).toThrow(/^angles\.length/);
	});
});

describe('pad area from squares', () => {
	test('200 full and 60 cut millimetre squares', () => {
		const pad = areaFromSquares({ full: 200, cut: 60, side: 0.001 });
		within(pad.value, 230e-6, { relative: 1e-12 });
		within(pad.spread, Math.sqrt(6) * 1e-6, { relative: 1e-12 });
	});

	test('four prints counted together', () => {
		const pad = areaFromSquares({ full: 30, cut: 20, side: 0.005, pads: 4 });
		within(pad.value, 250e-6, { relative: 1e-12 });
		within(pad.spread, (25e-6 * Math.sqrt(20 / 12 + 16)) / 4, { relative: 1e-12 });
	});

	test('no squares, half a square and no side are refused', () => {
		expect(() => areaFromSquares({ full: 0, cut: 0, side: 0.001 })).toThrow(/^cut/);
		expect(() => areaFromSquares({ full: 1.5, cut: 2, side: 0.001 })).toThrow(/^full/);
		expect(() => areaFromSquares({ full: 1, cut: 2, side: 0 })).toThrow(/^side/);
	});
});

describe('rope lean', () => {
	test('0.1 m beside 1 m of plumb line, and of rope', () => {
		within(leanFromPlumbLine({ offset: 0.1, length: 1 }).value, 5.710593 * degree, {
			relative: 1e-6
		});
		within(leanFromPlumbLine({ offset: 0.1, length: 1, along: 'rope' }).value, Math.asin(0.1), {
			relative: 1e-12
		});
	});

	test('the side is named, and no side where the tape cannot tell', () => {
		expect(leanFromPlumbLine({ offset: 0.02, length: 1 }).side).toBe('away from the wall');
		expect(leanFromPlumbLine({ offset: -0.02, length: 1 }).side).toBe('toward the wall');
		expect(leanFromPlumbLine({ offset: 0.0005, length: 1 }).side).toBe('plumb');
		expect(leanFromPlumbLine({ offset: 0, length: 1, step: 0 }).side).toBe('plumb');
	});

	test('millimetres over a metre: a spread of some hundredths of a degree', () => {
		within(leanFromPlumbLine({ offset: 0, length: 1 }).spread, 0.001 / Math.sqrt(12), {
			relative: 1e-12
		});
	});

	test('an offset longer than the rope and no length are refused', () => {
		expect(() => leanFromPlumbLine({ offset: 1, length: 1, along: 'rope' })).toThrow(/^offset/);
		expect(() => leanFromPlumbLine({ offset: 0.1, length: 0 })).toThrow(/^length/);
	});
});

describe('pulley efficiency', () => {
	test('the weight drops out', () => {
		for (const weight of [5, 10, 80]) {
			const result = pulleyEfficiency({ raise: weight / 0.83, lower: weight * 0.83 });
			within(result.value, 0.83, { relative: 1e-12 });
			within(result.low, 0.83, { relative: 1e-12 });
			within(result.high, 1 / 0.83, { relative: 1e-12 });
			expect(result.spread).toBe(0);
		}
	});

	test('lowering cannot take more than raising', () => {
		expect(() => pulleyEfficiency({ raise: 8, lower: 12 })).toThrow(
			/^lower must be a number above 0 and at most 8, but is 12/
		);
		expect(() => pulleyEfficiency({ raise: 0, lower: 0 })).toThrow(/^raise/);
		expect(() => capstanRatio(1.1, Math.PI)).toThrow(/^efficiency/);
	});
});

describe('scale ledger', () => {
	test('whole weight before and after, less what stays on the scale', () => {
		const result = netMassFromScale({ before: 71.2, after: 71.2, during: 16.2 });
		within(result.value, 55, { relative: 1e-12 });
		within(result.spread, 0.035355, { absolute: 1e-6 });
		expect(result.drift).toBe(0);
	});

	test('a drift between the whole readings widens the spread', () => {
		const result = netMassFromScale({ before: 71, after: 70.4, during: 0, step: 0.1 });
		within(result.value, 70.7, { relative: 1e-12 });
		within(result.drift, -0.6, { absolute: 1e-12 });
		within(result.spread, Math.hypot(0.1 * Math.sqrt(1.5), 0.6) / Math.sqrt(12), {
			relative: 1e-12
		});
	});

	test('without a second whole reading the first stands alone', () => {
		const result = netMassFromScale({ before: 70, during: 20, step: 0.2 });
		expect(result.value).toBe(50);
		within(result.spread, 0.2 / Math.sqrt(6), { relative: 1e-12 });
	});

	test('a scale that shows more than the person, and no resolution, are refused', () => {
		expect(() => netMassFromScale({ before: 70, during: 70 })).toThrow(/^during/);
		expect(() => netMassFromScale({ before: 70, during: 10, step: 0 })).toThrow(/^step/);
		expect(() => netMassFromScale({ before: 0, during: 0 })).toThrow(/^before/);
	});
});
