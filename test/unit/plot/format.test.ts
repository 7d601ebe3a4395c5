import { expect, test } from 'vitest';
import { formatRatioTick, formatTick, withUnit } from '#plot/format.ts';
import { textWidth } from '#plot/text-width.ts';

test('ticks lose only the noise of their making', () => {
	expect([0.30000000000000004, -10, 1500, 25000, NaN].map(formatTick)).toEqual([
		'0.3',
		'−10',
		'1500',
		'25\u202f000',
		'–'
	]);
	expect([0.25, 0.35355, 0.5, 0.70711, 1, 1.41421, 2, 2.8284].map(formatRatioTick)).toEqual([
		'0.25',
		'0.35',
		'0.5',
		'0.7',
		'1',
		'1.4',
		'2',
		'2.8'
	]);
});

test('units stand off their number, degrees do not', () => {
	expect(withUnit('32', '°')).toBe('32°');
	expect(withUnit('70', 'kg')).toBe('70\u00a0kg');
	expect(withUnit('0.64', '')).toBe('0.64');
});

test('a longer word is wider, and width grows with the font', () => {
	expect(textWidth('slip edge', 13)).toBeLessThan(textWidth('strength edge', 13));
	expect(textWidth('holds', 26)).toBe(2 * textWidth('holds', 13));
});
