import fc from 'fast-check';
import { expect, test } from 'vitest';
import { boxesOverlap, boxInside, type Box } from '#plot/box.ts';
import { formatNumber } from '#core/units/format-number.ts';
import { placeLabels } from '#plot/place-labels.ts';
import type { Point } from '#plot/point.ts';
import { clipToHeights, nearestOnLine, placesAlong, lineLength, simplify } from '#plot/polyline.ts';
import { linearScale, logScale } from '#plot/scales.ts';
import { isWithin, within } from '#test/within.ts';

const real = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const point = fc.tuple(real(0, 700), real(0, 400)) as fc.Arbitrary<Point>;
const line = fc.array(point, { minLength: 2, maxLength: 40 });
const box: fc.Arbitrary<Box> = fc.record({
	cx: real(-50, 750),
	cy: real(-50, 450),
	width: real(5, 160),
	height: real(8, 20),
	angle: real(-90, 90)
});

test('a scale’s inverse undoes it', () => {
	const ends = fc.tuple(real(0.1, 1000), real(0.1, 1000)).filter(([a, b]) => Math.abs(a - b) > 0.1);
	fc.assert(
		fc.property(ends, real(0.1, 1000), (domain, value) => {
			for (const build of [linearScale, logScale]) {
				const scale = build(domain, [20, 620]);
				within(scale.invert(scale(value)), value, { relative: 1e-6 });
			}
		})
	);
});

test('three digits are never NaN or infinite, never more than three, and near the value', () => {
	fc.assert(
		fc.property(fc.double(), (value) => {
			const text = formatNumber(value);
			expect(text).not.toMatch(/NaN|Infinity|undefined/);
			// Outside these nothing on a screen means anything; inside, no exponent is shown.
			if (!(Math.abs(value) >= 1e-4 && Math.abs(value) < 1e15)) return;
			expect(text.replace(/\D/g, '').replace(/^0+/, '').replace(/0+$/, '').length).toBeLessThan(4);
			const read = Number(text.replace('−', '-'));
			expect(isWithin(read, value, { relative: 0.00501 }), `${value} → ${text}`).toBe(true);
		}),
		{ numRuns: 4000 }
	);
});

test('placed labels overlap neither one another nor an obstacle, and stay in the frame', () => {
	const frame = { left: 0, top: 0, right: 700, bottom: 400 };
	const requests = fc.array(fc.array(box, { minLength: 1, maxLength: 8 }), { maxLength: 10 });
	fc.assert(
		fc.property(requests, fc.array(box, { maxLength: 3 }), line, (all, boxes, edge) => {
			const placed = placeLabels(
				all.map((candidates, i) => ({ id: `${i}`, text: '', candidates, always: i === 0 })),
				{ frame, boxes, lines: [edge] }
			);
			if (all.length > 0) expect(placed[0]?.id).toBe('0');
			placed.forEach((one, i) => {
				expect(boxInside(one.box, frame)).toBe(true);
				for (const other of placed.slice(i + 1)) {
					expect(boxesOverlap(one.box, other.box)).toBe(false);
				}
				if (i > 0) for (const taken of boxes) expect(boxesOverlap(one.box, taken)).toBe(false);
			});
		})
	);
});

test('a simplified line strays no farther than its tolerance, and keeps its ends', () => {
	fc.assert(
		fc.property(line, real(0.1, 20), (whole, tolerance) => {
			const short = simplify(whole, tolerance);
			expect([short[0], short.at(-1)]).toEqual([whole[0], whole.at(-1)]);
			for (const p of whole) {
				expect(nearestOnLine(p, short)!.distance).toBeLessThanOrEqual(tolerance + 1e-9);
			}
		})
	);
});

test('places along a line lie on it', () => {
	fc.assert(
		fc.property(line, real(0, 1), (whole, share) => {
			const [place] = placesAlong(whole, [share * lineLength(whole)]);
			expect(nearestOnLine(place!, whole)!.distance).toBeLessThan(1e-6);
		})
	);
});

test('a clipped line stays between its heights', () => {
	const wild = fc.array(fc.tuple(real(0, 700), fc.double()) as fc.Arbitrary<Point>, {
		maxLength: 30
	});
	fc.assert(
		fc.property(wild, (whole) => {
			for (const [x, y] of clipToHeights(whole, 100, 300).flat()) {
				expect(Number.isFinite(x)).toBe(true);
				expect(y >= 100 - 1e-9 && y <= 300 + 1e-9).toBe(true);
			}
		})
	);
});
