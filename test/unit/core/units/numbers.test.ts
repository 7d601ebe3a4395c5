import { describe, expect, test } from 'vitest';
import { formatNumber } from '#core/units/format-number.ts';
import { parseNumber } from '#core/units/parse-number.ts';

describe('numbers on screen', () => {
	test.each([
		[0.624869, '0.625'],
		[63.6149, '63.6'],
		[343.23, '343'],
		[1204.4, '1200'],
		[0, '0'],
		[-0.0001, '−0.0001'],
		[-12.5, '−12.5'],
		[9.996, '10'],
		[1e-9, '0'],
		[0.02, '0.02'],
		[1, '1'],
		[Infinity, '–'],
		[NaN, '–']
	])('%f is written %s', (value, text) => {
		expect(formatNumber(value)).toBe(text);
	});

	test('fixed decimals are kept, and a rounded zero has no minus', () => {
		expect(formatNumber(1, { fixed: 2 })).toBe('1.00');
		expect(formatNumber(-0.001, { fixed: 2 })).toBe('0.00');
	});
});

describe('numbers as typed', () => {
	test.each([
		['72,5', 72.5],
		[' 72.5 ', 72.5],
		['−10', -10],
		['.5', 0.5],
		['1e2', 100],
		['1 204', 1204]
	])('“%s” is %f', (text, value) => {
		expect(parseNumber(text)).toBe(value);
	});

	test.each(['', 'abc', '1,2,3', '1.2.3', '12kg', 'NaN', 'Infinity', '1e999', '-', '1.234,5'])(
		'“%s” is not one plain number',
		(text) => {
			expect(parseNumber(text)).toBeUndefined();
		}
	);
});
