import { expect, test } from 'vitest';
import { readLink } from '#storage/codecs/link.ts';
import { firstSight } from '#storage/codecs/setup.ts';
import { measuredLink } from '../../../../src/state/measure/send.ts';

const opened = (measured: Parameters<typeof measuredLink>[1], setup = { ...firstSight }) =>
	readLink(measuredLink(setup, measured));

test('a measured value goes in, everything else stays as it was', () => {
	const { setup, notes } = opened({ slope: 31.23456 }, { ...firstSight, body: 82 });
	expect(setup).toEqual({ ...firstSight, body: 82, slope: 31.23 });
	expect(notes).toEqual([]);
});

test('what Explore cannot show becomes the nearest that it can', () => {
	expect(opened({ slope: 75 }).setup.slope).toBe(60);
	expect(opened({ area: 900 }).setup.area).toBe(330);
	// Something must hang from the hands.
	expect(opened({ body: 70, change: -69 }).setup.change).toBe(-65);
});
