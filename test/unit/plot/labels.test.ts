import { describe, expect, test } from 'vitest';
import { boxesOverlap, boxInside, lineEntersBox, type Box } from '#plot/box.ts';
import { alongLine, aroundPoint } from '#plot/label-candidates.ts';
import { placeLabels } from '#plot/place-labels.ts';
import type { Point } from '#plot/point.ts';
import { within } from '#test/within.ts';

const box = (cx: number, cy: number, width = 20, height = 10, angle = 0): Box => ({
	...{ cx, cy, width, height, angle }
});
const frame = { left: 0, top: 0, right: 200, bottom: 100 };

describe('boxes', () => {
	test('overlap, level and turned', () => {
		expect(boxesOverlap(box(0, 0), box(19, 0))).toBe(true);
		expect(boxesOverlap(box(0, 0), box(21, 0))).toBe(false);
		// A long thin box on its diagonal passes by a corner that its upright outline would cover.
		expect(boxesOverlap(box(0, 0, 100, 4, 45), box(30, -30))).toBe(false);
		expect(boxesOverlap(box(0, 0, 100, 4, 45), box(30, 30))).toBe(true);
	});

	test('inside a frame', () => {
		expect(boxInside(box(10, 5), frame)).toBe(true);
		expect(boxInside(box(9, 5), frame)).toBe(false);
		expect(boxInside(box(10, 5, 20, 10, 90), frame)).toBe(false);
	});

	test('a line that enters, passes by, or ends short', () => {
		const through: Point[] = [
			[-50, 0],
			[50, 1]
		];
		expect(lineEntersBox(through, box(0, 0))).toBe(true);
		expect(lineEntersBox(through, box(0, 10))).toBe(false);
		expect(lineEntersBox(through, box(0, 10, 20, 10, 90))).toBe(true);
		expect(
			lineEntersBox(
				[
					[-50, 0],
					[-11, 0]
				],
				box(0, 0)
			)
		).toBe(false);
	});
});

describe('candidates', () => {
	test('along a level line: right-hand side (below) first, clear of the line by the gap', () => {
		const line: Point[] = [
			[0, 50],
			[200, 50]
		];
		const boxes = alongLine(line, { width: 60, height: 14 }, { right: 8, left: 4 });
		expect(boxes[0]).toMatchObject({ cx: 100, cy: 50 + 8 + 7, angle: 0 });
		expect(boxes.at(-1)!.cy).toBe(50 - 4 - 7);
	});

	test('text never stands on its head', () => {
		const back: Point[] = [
			[200, 20],
			[0, 60]
		];
		for (const { angle } of alongLine(back, { width: 60, height: 14 }, { right: 4, left: 4 })) {
			within(angle, (Math.atan2(-40, 200) * 180) / Math.PI, { absolute: 1e-9 });
		}
	});

	test('upright text reads upward, whichever way the line runs', () => {
		const up: Point[] = [
			[50, 200],
			[50, 0]
		];
		for (const line of [up, [...up].reverse()]) {
			const boxes = alongLine(line, { width: 60, height: 14 }, { right: 8, left: 4 });
			expect(new Set(boxes.map(({ angle }) => angle))).toEqual(new Set([-90]));
		}
		expect(alongLine(up, { width: 60, height: 14 }, { right: 8, left: 4 })[0]!.cx).toBe(65);
	});

	test('a line too short for its label offers nothing', () => {
		expect(
			alongLine(
				[
					[0, 0],
					[20, 0]
				],
				{ width: 60, height: 14 },
				{ right: 4, left: 4 }
			)
		).toEqual([]);
	});

	test('places around a point keep off its mark', () => {
		const mark = box(50, 50, 18, 18);
		for (const place of aroundPoint([50, 50], { width: 60, height: 14 }, 12)) {
			expect(boxesOverlap(place, mark)).toBe(false);
		}
	});
});

describe('placing', () => {
	const at = (id: string, ...candidates: Box[]) => ({ id, text: id, candidates });

	test('first come, first served; the next takes its second choice or stays away', () => {
		const placed = placeLabels(
			[at('a', box(50, 50)), at('b', box(52, 50), box(50, 80)), at('c', box(50, 50))],
			{ frame }
		);
		expect(placed.map(({ id, box: { cy } }) => [id, cy])).toEqual([
			['a', 50],
			['b', 80]
		]);
	});

	test('lines and obstacles are kept clear, faint lines only where that is possible', () => {
		const line: Point[] = [
			[0, 50],
			[200, 50]
		];
		const lines = { frame, lines: [line] };
		expect(placeLabels([at('a', box(50, 50), box(50, 70))], lines)[0]?.box.cy).toBe(70);
		expect(placeLabels([at('a', box(50, 50))], lines)).toEqual([]);
		const faint = { frame, faint: [line] };
		expect(placeLabels([at('a', box(50, 50), box(50, 70))], faint)[0]?.box.cy).toBe(70);
		expect(placeLabels([at('a', box(50, 50))], faint)).toHaveLength(1);
		expect(placeLabels([at('a', box(50, 50))], { frame, boxes: [box(60, 50)] })).toEqual([]);
	});

	test('one that must stand is pulled into the frame', () => {
		const [label] = placeLabels([{ ...at('you', box(-30, 200)), always: true }], { frame });
		expect(boxInside(label!.box, frame)).toBe(true);
	});
});
