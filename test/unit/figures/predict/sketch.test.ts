import { expect, test } from 'vitest';
import { heightOf, marginAt, moved, nearest, trend } from '#figures/predict/sketch.ts';
import { within } from '#test/within.ts';

test('heights and margins are one another’s inverse within reach, and are held outside it', () => {
	for (const margin of [0.5, 0.8, 1, 1.3, 2])
		within(marginAt(heightOf(margin)), margin, { relative: 1e-12 });
	expect([heightOf(8), heightOf(0.01), heightOf(0), heightOf(NaN)]).toEqual([1, -1, -1, -1]);
});

test('a first touch starts from a level line; a sketch of another length is not used', () => {
	expect(moved(undefined, 3, 1, 2)).toEqual([1, 2, 1]);
	expect(moved([2, 2], 3, 0, 0.5)).toEqual([0.5, 1, 1]);
	expect(moved([2, 2, 2], 3, 2, 1)).toEqual([2, 2, 1]);
});

test('the nearest point takes the touch', () => {
	expect(nearest([0, 10, 20], 4.9)).toBe(0);
	expect(nearest([0, 10, 20], 5.1)).toBe(1);
	expect(nearest([0, 10, 20], 99)).toBe(2);
});

test('which way a curve goes', () => {
	expect(trend([1.4, 1, 0.8])).toBe('falls');
	expect(trend([0.9, 1, 1.2])).toBe('rises');
	expect(trend([1, 1.3, 1.02])).toBe('stays');
});
