import jsQR from 'jsqr';
import { describe, expect, test } from 'vitest';
import { firstSight, type Setup } from '#storage/codecs/setup.ts';
import { writeLink } from '#storage/codecs/link.ts';
import { qrPicture, type QrPicture } from '../../../src/ui/qr-picture.ts';

/** Draws the path's bars, each square `scale` dots wide, and lets another library read them. */
function decoded({ size, path }: QrPicture, scale = 4): string | undefined {
	const width = size * scale;
	const dots = new Uint8ClampedArray(width * width * 4).fill(255);
	for (const [, x, y, length] of path.matchAll(/M(\d+) (\d+)h(\d+)v1h-\d+z/g)) {
		for (let row = Number(y) * scale; row < (Number(y) + 1) * scale; row++) {
			for (let dot = Number(x) * scale; dot < (Number(x) + Number(length)) * scale; dot++) {
				dots.fill(0, (row * width + dot) * 4, (row * width + dot) * 4 + 3);
			}
		}
	}
	return jsQR(dots, width, width)?.data;
}

const home = 'https://example.org/some/deep/folder/?';

describe('QR codes', () => {
	test('a set-up’s link is read back by another library', () => {
		const link = home + writeLink({ ...firstSight, slope: 20, mu: 0.655, law: 'adhesion' });
		expect(decoded(qrPicture(link)!)).toBe(link);
	});

	test('the longest set-up that the fields allow still fits', () => {
		const long: Setup = { ...firstSight };
		for (const [key, value] of Object.entries(firstSight)) {
			if (typeof value === 'number') Object.assign(long, { [key]: value + 0.123456789 });
			if (typeof value === 'boolean') Object.assign(long, { [key]: !value });
		}
		const link =
			home + writeLink({ ...long, law: 'deformation', patch: 'growing', axis: 'holdTime' });
		expect(link.length).toBeGreaterThan(500);
		expect(decoded(qrPicture(link)!)).toBe(link);
	});

	test('letters outside ASCII are kept', () => {
		expect(decoded(qrPicture('μ = 0,64 – prüfen')!)).toBe('μ = 0,64 – prüfen');
	});

	test('a text too long for a code that a phone can read gives none', () => {
		expect(qrPicture(home + 'x'.repeat(3000))).toBeUndefined();
	});

	test('the quiet border is four squares wide', () => {
		const { size, path } = qrPicture(home)!;
		for (const [, x, y, length] of path.matchAll(/M(\d+) (\d+)h(\d+)/g)) {
			expect(Number(x)).toBeGreaterThanOrEqual(4);
			expect(Number(y)).toBeGreaterThanOrEqual(4);
			expect(Number(x) + Number(length)).toBeLessThanOrEqual(size - 4);
		}
	});
});
