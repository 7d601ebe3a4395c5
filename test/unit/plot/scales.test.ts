import { describe, expect, test } from 'vitest';
import { clamp } from '#plot/clamp.ts';
import { linearScale, logScale } from '#plot/scales.ts';
import { linearTicks, ratioDomain, ratioTicks } from '#plot/ticks.ts';
import { within } from '#test/within.ts';

const close = { absolute: 1e-9 };

describe('scales', () => {
	test('a linear scale maps evenly, also downward', () => {
		const y = linearScale([20, 120], [400, 0]);
		within(y(20), 400, close);
		within(y(70), 200, close);
		within(y.invert(100), 95, close);
	});

	test('a log scale gives equal factors equal room', () => {
		const y = logScale([0.25, 4], [400, 0]);
		within(y(1), 200, close);
		within(y(0.5) - y(1), y(1) - y(2), close);
		within(y.invert(100), 2, close);
		expect(y(0)).toBe(Infinity);
		expect(y(Infinity)).toBe(-Infinity);
	});

	test('an empty domain stands in the middle instead of dividing by nothing', () => {
		const x = linearScale([5, 5], [0, 100]);
		expect(x(5)).toBe(50);
		expect(x.invert(80)).toBe(5);
	});

	test('a log scale refuses ends that have no logarithm', () => {
		expect(() => logScale([0, 4], [0, 1])).toThrow(RangeError);
	});

	test('clamping holds within the range and knows no NaN', () => {
		expect([clamp(-1, 0, 2), clamp(1, 0, 2), clamp(3, 0, 2), clamp(NaN, 0, 2)]).toEqual([
			0, 1, 2, 0
		]);
	});
});

describe('ticks', () => {
	test('linear ticks are round', () => {
		expect(linearTicks(80, 330, 5)).toEqual([100, 150, 200, 250, 300]);
	});

	test('ratio ticks are even factors through 1, and thin out', () => {
		const fine = ratioTicks(0.5, 2, 9);
		expect(fine).toHaveLength(5);
		fine.forEach((tick, i) => within(tick, [0.5, Math.SQRT1_2, 1, Math.SQRT2, 2][i]!, close));
		expect(ratioTicks(0.5, 2, 4)).toEqual([0.5, 1, 2]);
		expect(ratioTicks(0.25, 4, 3)).toEqual([0.25, 1, 4]);
	});

	test('a ratio domain holds its values between powers of √2, and is cut at the limit', () => {
		const [low, high] = ratioDomain([0.9, 1.02]);
		within(low, Math.SQRT1_2, close);
		within(high, Math.SQRT2, close);
		const [deep, tall] = ratioDomain([0.01, 300], 4);
		within(deep, 0.25, close);
		within(tall, 4, close);
		const [l, h] = ratioDomain([0.6, 1.9, NaN]);
		within(l, 0.5, close);
		within(h, 2, close);
	});
});
