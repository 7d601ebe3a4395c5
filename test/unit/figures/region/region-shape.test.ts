import { describe, expect, test } from 'vitest';
import { alignEnds } from '#figures/region/align-ends.ts';
import { regionShape, type RegionShape } from '#figures/region/region-shape.ts';
import { insideRing } from '#plot/inside-ring.ts';
import type { Point } from '#plot/point.ts';
import { within } from '#test/within.ts';
import { shapes } from './regions.ts';

const kinds = (shape: RegionShape) => shape.edges.map((edge) => edge.kind).sort();
const edgeOf = (shape: RegionShape, kind: 'slip' | 'strength') =>
	shape.edges.find((edge) => edge.kind === kind)!.points;
const covers = (shape: RegionShape, at: Point) =>
	shape.rings.some(({ points }) => insideRing(at, points));

describe('joining window ends across a break', () => {
	test('ends carry on, pairs close and open', () => {
		expect(alignEnds([20, 60], [21, 61])).toEqual({
			...{
				matched: [
					[0, 0],
					[1, 1]
				],
				endsLeft: [],
				startsRight: []
			}
		});
		expect(alignEnds([20, 45, 46, 130], [20, 130])).toEqual({
			...{
				matched: [
					[0, 0],
					[3, 1]
				],
				endsLeft: [1],
				startsRight: []
			}
		});
		expect(alignEnds([], [70, 72])).toEqual({ matched: [], endsLeft: [], startsRight: [0] });
	});

	test('an interval that dies is not joined to a far one that is born', () => {
		expect(alignEnds([20, 40], [80, 110])).toEqual({
			...{ matched: [], endsLeft: [0], startsRight: [0] }
		});
	});
});

describe('the holding area', () => {
	test.each(Object.entries(shapes))('%s: the outlines cover what the columns hold', (_, region) => {
		const shape = regionShape(region);
		for (const { value, intervals } of region.columns.slice(1, -1)) {
			// A hair beside the column, so that no outline's own corner is met.
			const beside = value + 1e-7;
			if (region.breaks.some((at) => Math.abs(at - value) < 1e-6)) continue;
			for (let netMass = 20.5; netMass < 130; netMass += 1) {
				const near = intervals.some(
					({ from, to }) => Math.min(Math.abs(netMass - from), Math.abs(netMass - to)) < 1e-3
				);
				if (near) continue;
				const holds = intervals.some(({ from, to }) => netMass > from && netMass < to);
				expect(covers(shape, [beside, netMass]), `${value}, ${netMass}`).toBe(holds);
			}
		}
	});

	test.each(Object.entries(shapes))(
		'%s: holds on the left of each edge, fails right',
		(_, region) => {
			const shape = regionShape(region);
			for (const { points } of shape.edges) {
				for (let i = 1; i < points.length; i++) {
					const [[x0, y0], [x1, y1]] = [points[i - 1]!, points[i]!];
					const length = Math.hypot(x1 - x0, y1 - y0);
					if (length < 0.05) continue;
					const [dx, dy] = [(x1 - x0) / length, (y1 - y0) / length];
					const [mx, my] = [(x0 + x1) / 2, (y0 + y1) / 2];
					if (mx < 0.02 || mx > 9.98) continue;
					expect(covers(shape, [mx - dy * 1e-3, my + dx * 1e-3])).toBe(true);
					expect(covers(shape, [mx + dy * 1e-3, my - dx * 1e-3])).toBe(false);
				}
			}
		}
	);

	test('a wedge closes in a point at the crossing', () => {
		const shape = regionShape(shapes.wedge);
		expect(kinds(shape)).toEqual(['slip', 'strength']);
		expect(edgeOf(shape, 'slip').at(-1)).toEqual([7, 67]);
		expect(edgeOf(shape, 'strength')[0]).toEqual([7, 67]);
	});

	test('a steady ratio ends in an upright slip edge over the whole height', () => {
		const shape = regionShape(shapes.upright);
		expect(kinds(shape)).toEqual(['slip', 'strength']);
		const upright = edgeOf(shape, 'slip');
		expect(upright.map(([x]) => x)).toEqual([6.03, 6.03]);
		expect(upright[0]![1]).toBe(20);
		within(upright[1]![1], 66.03, { absolute: 1e-9 });
	});

	test('where only the heavy loads are cut off the upright edge runs on into the slanting one', () => {
		const shape = regionShape(shapes.step);
		expect(kinds(shape)).toEqual(['slip', 'strength']);
		const slip = edgeOf(shape, 'slip');
		within(slip.at(-1)![1], 66.03, { absolute: 1e-9 });
		within(slip.at(-2)![1], 50, { absolute: 1e-9 });
		expect(slip.at(-2)![0]).toBe(6.03);
	});

	test('a gap opens as one rounded slip edge, and both arms stay one area', () => {
		const shape = regionShape(shapes.fork);
		expect(kinds(shape)).toEqual(['slip']);
		const nose = edgeOf(shape, 'slip').find(([x]) => x === 4.02)!;
		within(nose[1], 60, { absolute: 2.5 });
		expect(new Set(shape.rings.map((ring) => ring.area)).size).toBe(1);
	});

	test('two intervals are two areas with an edge each', () => {
		const shape = regionShape(shapes.two);
		expect(kinds(shape)).toEqual(['slip', 'slip']);
		expect(new Set(shape.rings.map((ring) => ring.area)).size).toBe(2);
	});

	test('no edge joins two unrelated intervals', () => {
		const shape = regionShape(shapes.swap);
		expect(new Set(shape.rings.map((ring) => ring.area)).size).toBe(2);
		for (const { points } of shape.edges) {
			const heights = points.map(([, y]) => y);
			expect(Math.max(...heights) <= 40 || Math.min(...heights) >= 80).toBe(true);
		}
	});

	test('an end that changes its limit meets itself at the crossing', () => {
		const shape = regionShape(shapes.roof);
		expect(kinds(shape)).toEqual(['slip', 'strength']);
		expect(edgeOf(shape, 'slip')[0]).toEqual([3.04, 70.4]);
		expect(edgeOf(shape, 'strength').at(-1)).toEqual([3.04, 70.4]);
	});

	test('the range’s own ends are no edges', () => {
		expect(regionShape(shapes.everything).edges).toEqual([]);
		expect(regionShape(shapes.everything).rings).toHaveLength(1);
		expect(regionShape(shapes.none)).toEqual({ rings: [], edges: [] });
	});
});
