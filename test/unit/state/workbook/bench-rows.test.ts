import { describe, expect, test } from 'vitest';
import { readRows } from '#state/workbook/bench-rows.ts';
import { within } from '#test/within.ts';

describe('bench rows', () => {
	test('all separators, decimal commas, a heading and empty rows', () => {
		const { pairs, faults } = readRows('N f\n2 1\n\n2,5;1,5\n3\t2\n4,3\n5,5 2,5', 'pairs', 'N');
		expect(faults).toEqual([]);
		expect(pairs).toEqual([
			{ normal: 2, friction: 1 },
			{ normal: 2.5, friction: 1.5 },
			{ normal: 3, friction: 2 },
			{ normal: 4, friction: 3 },
			{ normal: 5.5, friction: 2.5 }
		]);
	});
	test('bad rows are named by their line and left out', () => {
		const { pairs, faults } = readRows('2 1\nx y\n3\n-1 2\n3 -2', 'pairs', 'N');
		expect(pairs).toHaveLength(1);
		expect(faults.map((each) => each.slice(0, 5))).toEqual(['Row 2', 'Row 3', 'Row 4', 'Row 5']);
	});
	test('a scale in kilograms is read as weight; tilts are in degrees', () => {
		within(readRows('1 0.5', 'pairs', 'kg').pairs[0]!.normal, 9.80665, { absolute: 1e-12 });
		const tilts = readRows('30°\n45\n95', 'tilts', 'N');
		within(tilts.angles[0]!, Math.PI / 6, { absolute: 1e-12 });
		expect(tilts.faults).toHaveLength(1);
		const [loaded] = readRows('10 30', 'loaded', 'N').pairs;
		within(loaded!.friction, 5, { absolute: 1e-12 });
	});
});
