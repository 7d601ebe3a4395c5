import { describe, expect, test } from 'vitest';
import { textWidth } from '#plot/text-width.ts';
import { fileName } from '#figures/take-away/save-file.ts';
import { brokenLink, sheetLines, wrapped } from '#figures/take-away/sheet-lines.ts';

const text = {
	title: 'Loads that hold',
	caption: 'At 240 mm² the loads from 64.8 to 72.2 kg hold. '.repeat(6).trim(),
	units: 'Units: kg and mm².',
	source: 'Source: computed.',
	link: `https://example.org/?v=1&${'abcdefgh=0.123456789&'.repeat(20)}z=1`
};

describe('the text under a picture', () => {
	test('nothing is lost and nothing is wider than the sheet', () => {
		const { lines, height } = sheetLines(text, 320);
		for (const { text, size } of lines) expect(textWidth(text, size)).toBeLessThanOrEqual(320);
		const of = (kind: string) => lines.filter((line) => line.kind === kind).map(({ text }) => text);
		expect(of('link').join('')).toBe(text.link);
		expect(of('text').join(' ')).toBe([text.caption, text.units, text.source].join(' '));
		expect(height).toBeGreaterThan(lines.at(-1)!.y);
		lines.slice(1).forEach(({ y }, i) => expect(y).toBeGreaterThan(lines[i]!.y));
	});

	test('a word wider than the line stands alone; a piece of a link is broken', () => {
		expect(wrapped('a verylongwordindeed b', 12, 30)).toEqual(['a', 'verylongwordindeed', 'b']);
		expect(brokenLink('x'.repeat(100), 12, 60).join('')).toBe('x'.repeat(100));
		expect(wrapped('', 12, 30)).toEqual([]);
	});

	test('file names are plain', () => {
		expect(fileName('Loads that hold, across contact area', 'svg')).toBe(
			'holding-window-loads-that-hold-across-contact-area.svg'
		);
		expect(fileName('±°', 'png')).toBe('holding-window-picture.png');
	});
});
