import { describe, expect, test } from 'vitest';
import { joined, readOwn, startOf, without, writeOwn } from '../../../src/routes/own-numbers.ts';

const specs = {
	up: { min: 0, max: 4, step: 0.1, start: 0.6 },
	out: { min: -1, max: 1.5, step: 0.01, start: 0.3 }
};

describe('a page’s own numbers in its address', () => {
	test('what equals the start is left out, and what is written is read back', () => {
		expect(writeOwn(specs, startOf(specs))).toEqual([]);
		const values = { up: 1.25, out: -0.37 };
		const query = joined('v=1&slope=30', writeOwn(specs, values));
		expect(query).toBe('v=1&slope=30&up=1.25&out=-0.37');
		expect(readOwn(specs, new URLSearchParams(query))).toEqual({ values, notes: [] });
		expect(without(new URLSearchParams(query), ['up', 'out'])).toBe('v=1&slope=30');
	});

	test('what cannot be read becomes the nearest sensible value, and is said', () => {
		const { values, notes } = readOwn(specs, new URLSearchParams('up=tall&out=9'));
		expect(values).toEqual({ up: 0.6, out: 1.5 });
		expect(notes).toEqual([
			'“up” in the link is not a number; 0.6 is used.',
			'“out” in the link is 9, outside −1 to 1.5; 1.5 is used.'
		]);
		expect(readOwn(specs, new URLSearchParams('up=')).notes).toHaveLength(1);
	});
});
