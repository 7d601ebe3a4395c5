import { describe, expect, test } from 'vitest';
import { barsWords, windowBars, type Bar } from '#figures/compare/window-bars.ts';

const bar = (key: Bar['key'], patch: Partial<Bar> = {}): Bar => ({
	key,
	name: key,
	window: [{ from: 50, to: 80, lowerLimit: 'slip', upperLimit: 'strength' }],
	bodyMass: 70,
	netMass: 70,
	...patch
});
const view = (bars: Bar[], width = 620) =>
	windowBars({ bars, range: { from: 5, to: 130 }, massUnit: 'kg', width, height: 300 });

describe('windows on one load axis', () => {
	test('bars of equal windows lie at the same place, and as multiples they part with body mass', () => {
		const drawn = view([bar('first'), bar('second', { bodyMass: 100 })]);
		const [mass, multiple] = drawn.panels;
		expect(mass!.rows[0]!.blocks[0]!.from).toBe(mass!.rows[1]!.blocks[0]!.from);
		expect(multiple!.rows[0]!.blocks[0]!.from).toBeGreaterThan(multiple!.rows[1]!.blocks[0]!.from);
		expect(multiple!.rows[0]!.body).toBe(multiple!.rows[1]!.body);
	});

	test('each limit is named with its load; nothing stands outside the frame', () => {
		for (const width of [340, 620]) {
			const { labels } = view([bar('first'), bar('second', { window: [] })], width);
			const texts = labels.map(({ text }) => text);
			expect(texts).toContain('second: no load holds');
			expect(texts.some((text) => text.startsWith('slips 50'))).toBe(true);
			expect(texts.some((text) => text.startsWith('opens 80'))).toBe(true);
			for (const { box } of labels) {
				expect(box.cx - box.width / 2).toBeGreaterThanOrEqual(0);
				expect(box.cx + box.width / 2).toBeLessThanOrEqual(width);
			}
		}
	});

	test('words say both windows', () => {
		const words = barsWords({
			bars: [bar('first'), bar('second', { window: [] })],
			massUnit: 'kg'
		});
		expect(words).toContain('The first set-up holds from 50');
		expect(words).toContain('The second set-up holds no load in this range');
	});
});
