import { expect, test } from 'vitest';
import { marginText } from '../../../src/routes/margin-text.ts';

test('a margin that falls short of 1 is never rounded up to it', () => {
	expect([0.99996, 0.9996, 0.9994, 1, 1.0004, Infinity].map(marginText)).toEqual([
		'0.999',
		'0.999',
		'0.999',
		'1',
		'1',
		'no limit'
	]);
});
