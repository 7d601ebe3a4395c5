import { describe, expect, test } from 'vitest';
import { insideRing } from '#plot/inside-ring.ts';
import { hatchPath, linesPath } from '#plot/paths.ts';
import type { Point } from '#plot/point.ts';
import { clipToHeights, lineLength, nearestOnLine, placesAlong, simplify } from '#plot/polyline.ts';
import { within } from '#test/within.ts';

const corner: Point[] = [
	[0, 0],
	[10, 0],
	[10, 10]
];

describe('lines of straight pieces', () => {
	test('length and places along', () => {
		expect(lineLength(corner)).toBe(20);
		expect(placesAlong(corner, [0, 5, 10, 15, 20, 99])).toEqual([
			[0, 0],
			[5, 0],
			[10, 0],
			[10, 5],
			[10, 10],
			[10, 10]
		]);
	});

	test('simplifying keeps corners and drops what lies on the way', () => {
		const straight: Point[] = Array.from({ length: 50 }, (_, i) => [i, 2 * i]);
		expect(simplify(straight, 0.1)).toEqual([
			[0, 0],
			[49, 98]
		]);
		expect(simplify(corner, 0.1)).toEqual(corner);
	});

	test('the nearest point of a line', () => {
		expect(nearestOnLine([4, 3], corner)).toEqual({ place: [4, 0], distance: 3 });
		expect(nearestOnLine([20, 20], corner)?.place).toEqual([10, 10]);
		expect(nearestOnLine([0, 0], [])).toBeUndefined();
	});

	test('inside a closed outline', () => {
		expect(insideRing([8, 2], corner)).toBe(true);
		expect(insideRing([2, 8], corner)).toBe(false);
	});
});

describe('clipping to heights', () => {
	test('cuts a line where it leaves and enters', () => {
		const wave: Point[] = [
			[0, 0],
			[10, 20],
			[20, 0]
		];
		expect(clipToHeights(wave, -5, 10)).toEqual([
			[
				[0, 0],
				[5, 10]
			],
			[
				[15, 10],
				[20, 0]
			]
		]);
	});

	test('keeps the part of a piece that crosses the whole band', () => {
		const [part] = clipToHeights(
			[
				[0, -10],
				[10, 30]
			],
			0,
			10
		);
		expect(part).toEqual([
			[2.5, 0],
			[5, 10]
		]);
	});

	test('infinite heights run straight up, NaN breaks the line', () => {
		const line: Point[] = [
			[0, 1],
			[1, 2],
			[2, Infinity],
			[3, NaN],
			[4, 1],
			[5, 1]
		];
		expect(clipToHeights(line, 0, 10)).toEqual([
			[
				[0, 1],
				[1, 2],
				[1, 10]
			],
			[
				[4, 1],
				[5, 1]
			]
		]);
		expect(
			clipToHeights(
				[
					[0, Infinity],
					[1, Infinity]
				],
				0,
				10
			)
		).toEqual([]);
	});
});

describe('paths', () => {
	test('one move a line, closed or open', () => {
		expect(linesPath([corner, [[1, 1]]])).toBe('M0 0L10 0L10 10');
		expect(linesPath([corner], true)).toBe('M0 0L10 0L10 10Z');
	});

	test('hatch ticks stand on the right-hand side as one travels, y down', () => {
		const path = hatchPath(
			[
				[0, 50],
				[90, 50]
			],
			9,
			6
		);
		const numbers = [...path.matchAll(/M([\d.]+) ([\d.]+)L([\d.]+) ([\d.]+)/g)];
		expect(numbers).toHaveLength(10);
		for (const [, , from, , to] of numbers) {
			within(Number(from), 50, { absolute: 0.05 });
			expect(Number(to)).toBeGreaterThan(53);
		}
		expect(
			hatchPath(
				[
					[0, 0],
					[4, 0]
				],
				9,
				6
			)
		).toBe('');
	});
});
