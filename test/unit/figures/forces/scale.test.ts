import { describe, expect, test } from 'vitest';
import { boxToSegment, crosses, segmentsCross } from '#figures/forces/geometry.ts';
import { fitScale, scaleBar } from '#figures/forces/scale.ts';
import { digits, force, reading } from '#figures/forces/text.ts';
import { within } from '#test/within.ts';

describe('force scale', () => {
	const room = { x: 0, y: 0, width: 100, height: 100 };

	test('the longest arrow just fits, at a step of the series', () => {
		// 50 px of room for 100 N: at most 0.5 px/N; the step below is 10^(−0.4).
		const scale = fitScale([{ tail: { x: 50, y: 50 }, force: { x: 0, y: 100 } }], room);
		within(scale, 10 ** -0.4, { relative: 1e-12 });
	});

	test('no force at all still gives a scale', () => {
		expect(fitScale([{ tail: { x: 50, y: 50 }, force: { x: 0, y: 0 } }], room)).toBeGreaterThan(0);
	});

	test('the bar is a round number of the unit shown', () => {
		const bar = scaleBar(0.1, 'N', { x: 0, y: 90 }, 60, 12);
		expect(bar.text).toBe('500 N');
		within(bar.segment.to.x, 50, { absolute: 1e-9 });
		expect(scaleBar(0.1, 'kgf', { x: 0, y: 90 }, 60, 12).text).toBe('50 kgf');
	});
});

describe('numbers on the drawing', () => {
	test('three digits, a real minus sign, no exponent', () => {
		expect(
			[686.4655, 1372.9, 17.3648, 0.05, 1e-9, -73.5499, 0, 0.6400001].map((value) => digits(value))
		).toEqual(['686', '1370', '17.4', '0.05', '0', '−73.5', '0', '0.64']);
	});

	test('a scale’s reading stands beside newtons only', () => {
		expect(force(686.4655, 'N') + reading(686.4655, 'N')).toBe('686 N (70 kg)');
		expect(force(686.4655, 'kgf') + reading(686.4655, 'kgf')).toBe('70 kgf');
	});
});

describe('geometry of boxes and lines', () => {
	const box = { x: 10, y: 10, width: 20, height: 10 };

	test('a line through, beside and past the corner of a box', () => {
		const line = (x1: number, y1: number, x2: number, y2: number) => ({
			from: { x: x1, y: y1 },
			to: { x: x2, y: y2 }
		});
		expect(crosses(line(0, 0, 40, 30), box)).toBe(true);
		expect(crosses(line(15, 12, 16, 13), box)).toBe(true);
		expect(crosses(line(0, 15, 25, -10), box)).toBe(false);
		within(boxToSegment(box, line(0, 0, 7, 6)), 5, { absolute: 1e-12 });
		within(boxToSegment(box, line(0, 25, 60, 25)), 5, { absolute: 1e-12 });
		expect(segmentsCross(line(0, 0, 10, 10), line(0, 10, 10, 0))).toBe(true);
		expect(segmentsCross(line(0, 0, 4, 4), line(0, 10, 10, 0))).toBe(false);
	});
});
