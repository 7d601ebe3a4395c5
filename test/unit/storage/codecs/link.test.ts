import { describe, expect, test } from 'vitest';
import { readLink, writeLink } from '#storage/codecs/link.ts';
import { firstSight, numberKeys, numberSpecs } from '#storage/codecs/setup.ts';

describe('links', () => {
	test('no query is first sight, without remarks', () => {
		expect(readLink('')).toEqual({ setup: firstSight, notes: [] });
	});

	test('first sight is written as its version alone', () => {
		expect(writeLink(firstSight)).toBe('v=1');
	});

	test('a version 1 link written once reads the same for ever', () => {
		const { setup, notes } = readLink(
			'v=1&body=82.5&change=-20&slope=36&law=power&mu=0.64&exponent=1.2&axis=slope&overRope=1'
		);
		expect(notes).toEqual([]);
		expect(setup).toEqual({
			...firstSight,
			body: 82.5,
			change: -20,
			slope: 36,
			law: 'power',
			mu: 0.64,
			exponent: 1.2,
			axis: 'slope',
			overRope: true
		});
	});

	test.each([
		['v=1&slope=steep', '“slope” in the link is not a number; 33.5 is used.'],
		['v=1&slope=', '“slope” in the link is not a number; 33.5 is used.'],
		['v=1&slope=75', '“slope” in the link is 75, outside -15 to 60; 60 is used.'],
		['v=1&fingers=2.4', '“fingers” in the link is 2.4, outside 1 to 4; 2 is used.'],
		['v=1&law=magic', '“law” in the link is not known here; “film” is used.'],
		['v=1&colour=red', 'The link has a part this page does not know; it is left aside.'],
		['slope=30', 'This link does not say which version wrote it; it is read as version 1.'],
		['v=x', 'This link’s version cannot be read; it is read as version 1.'],
		['v=1&change=-100', 'The link takes away more load than there is; the lightest hang is shown.']
	])('%s: %s', (query, note) => {
		expect(readLink(query).notes).toEqual([note]);
	});

	test('a link from a newer version is read as far as it is known', () => {
		const { setup, notes } = readLink('v=7&slope=20&gloves=2');
		expect(setup.slope).toBe(20);
		expect(notes[0]).toContain('newer version');
	});

	test('first sight itself is allowed in every field', () => {
		for (const key of numberKeys) {
			const { min, max, none } = numberSpecs[key];
			const value = firstSight[key];
			expect(value === none || (value >= min && value <= max), key).toBe(true);
		}
	});
});
