import { describe, expect, test } from 'vitest';
import { tiltLine, tiltsIn } from '#storage/codecs/notebook/tilt-note.ts';

describe('slip angles in a session’s note', () => {
	test('come back as they were written, series by series', () => {
		const note = `Windy.\n${tiltLine([31.5, 32, 30.9], 0.61, 0.012)}\nSkin dry\n${tiltLine([28.4, 29], 0.55, 0.01)}`;
		expect(tiltsIn(note)).toEqual([
			[31.5, 32, 30.9],
			[28.4, 29]
		]);
	});
	test('a decimal comma put in by hand is read; words, other lines and odd angles are not', () => {
		expect(tiltsIn('Tilt to slip: 31,5°; 95°; 0°; about 30')).toEqual([[31.5]]);
		expect(tiltsIn('The slope is 30°\ntilt to slip: 31°\nTilt to slip: none')).toEqual([]);
	});
});
