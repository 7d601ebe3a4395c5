import type { Page } from '@playwright/test';
import { csvParse } from 'd3';
import { PNG } from 'pngjs';
import { bringIn } from './bring-in.ts';
import { expect, test } from './fixtures.ts';
import { parsed, saved } from './taken.ts';

const reveal = (page: Page) => page.getByRole('button', { name: 'Reveal', exact: true }).click();

/** What a room at tables found: three pairs that differ are enough for a picture. */
async function fillRoom(page: Page) {
	await page.getByText('at tables: a weighted block').click();
	for (const person of [1, 2, 3]) {
		await page.getByLabel(`Person ${person}, light: how it ended`).selectOption('slipped');
		await page.getByLabel(`Person ${person}, heavy: how it ended`).selectOption('held');
	}
}

/** The bench's invented rows, and the address that carries them: the file's link is the page's. */
async function fillBench(page: Page) {
	await page.getByRole('button', { name: /invented/ }).click();
	await page.waitForURL(/\?/);
}

/** The demo's limits: the worker computes in earnest. */
async function limits(page: Page) {
	await bringIn(page, 'seeds/demo-notebook.json');
	await page.goto('trials/limits/');
	await expect(page.getByRole('button', { name: /^Take away/ })).toHaveCount(3, {
		timeout: 150_000
	});
}

/** A picture on a page, and what must be found in its drawing; `csv` names a column. */
type Taken = {
	path: string;
	name: string;
	shown: string;
	csv?: string;
	first?: (page: Page) => Promise<void>;
};

const taken: Taken[] = [
	{
		path: 'mechanisms/?v=1&slope=31',
		name: 'The assist rope leans',
		shown: 'slip margin',
		csv: 'slip margin (ratio)'
	},
	{ path: 'compare/', name: 'Loads that hold, two set-ups', shown: 'net load' },
	{
		path: 'compare/',
		name: 'Margins of two set-ups against net load',
		shown: 'slip margin',
		csv: 'slip margin (ratio)'
	},
	{ path: 'finger/', name: 'One finger on the hold', shown: 'N' },
	{ path: 'rope/', name: 'Body at rest under the pulley', shown: 'pulley' },
	{
		path: 'rope/',
		name: 'Friction ratio needed against net load',
		shown: 'friction ratio',
		csv: 'needed under this pulley (ratio)'
	},
	{ path: 'workbook/incline/', name: '', shown: 'N' },
	{ path: 'workbook/connected-blocks/', name: '', shown: 'N' },
	{ path: 'clinic/hands/', name: 'Hand area for body mass', shown: 'Men' },
	{ path: 'clinic/rope/', name: 'Not quite plumb: the question', shown: 'friction' },
	{
		path: 'clinic/rope/?v=1&slope=31&mu=0.64&rope=5',
		name: 'Not quite plumb: margins',
		shown: 'slip margin',
		csv: 'slip margin (ratio)'
	},
	{
		path: 'clinic/window/',
		name: 'The holding window: loads that hold',
		shown: 'slip edge',
		first: reveal
	},
	{ path: 'clinic/fair/', name: 'A fair test: chance alone', shown: '7', first: reveal },
	{ path: 'clinic/cancels/', name: 'Load cancels: the question', shown: 'friction' },
	{ path: 'clinic/pressure/', name: 'Pressure and patch: the question', shown: 'friction' },
	{
		path: 'clinic/room/',
		name: 'Light against heavy: what luck alone does',
		shown: '3',
		first: fillRoom
	},
	{
		path: 'rope/',
		name: 'Angles at rest against net load',
		shown: 'net load',
		csv: 'rope (deg)'
	},
	...['hang', 'level-floor', 'pressing', 'belt', 'ladder', 'tipping', 'wedge'].map((family) => ({
		path: `workbook/${family}/`,
		name: '',
		shown: 'N'
	})),
	{ path: 'workbook/bench/', name: '', shown: 'N', first: fillBench },
	{
		path: 'trials/limits/',
		name: 'Chance of holding against net load',
		shown: 'net load',
		first: limits
	},
	{ path: 'trials/limits/', name: 'The two limits of each grip', shown: 'kg', first: limits },
	{ path: 'trials/limits/', name: 'Loads and outcomes in their order', shown: 'kg', first: limits }
];

for (const { path, name: asked, shown, csv, first } of taken) {
	test(`/${path}, ${asked || 'its drawing'}: taken away as files that open`, async ({ page }) => {
		test.slow();
		await page.emulateMedia({ colorScheme: 'dark' });
		await page.goto(path);
		await first?.(page);
		const button = page
			.getByRole('button', { name: asked ? `Take away: ${asked}` : /^Take away/ })
			.first();
		const name = (await button.getAttribute('aria-label'))!.replace('Take away: ', '');
		const svg = (await saved(page, name, 'Drawing (SVG)')).bytes.toString('utf8');
		expect(svg).not.toMatch(/var\(|NaN|undefined/);
		const file = await parsed(page, svg);
		expect(file).toMatchObject({
			...{ root: 'svg', faults: 0, title: name, styled: 0, handles: 0, lost: [] }
		});
		expect(file.shapes).toBeGreaterThan(2);
		expect(file.text).toContain(shown);
		expect(file.text).toContain('Units:');
		expect(file.text).toContain('Source:');
		expect(file.link).toContain(new URL(page.url()).pathname);
		expect(file.text.replaceAll(' ', '')).toContain(file.link);
		const png = PNG.sync.read((await saved(page, name, 'Picture (PNG)')).bytes);
		expect(png.width).toBeGreaterThanOrEqual(1400);
		expect(
			Math.abs(png.width / png.height - Number(file.size[0]) / Number(file.size[1]))
		).toBeLessThan(0.005);
		let ink = 0;
		for (let i = 0; i < png.data.length; i += 4) if (png.data[i]! < 0x90) ink++;
		expect(ink / (png.width * png.height)).toBeGreaterThan(0.002);
		if (!csv) return;
		const rows = csvParse((await saved(page, name, 'Numbers (CSV)')).bytes.toString('utf8'));
		expect(rows.columns[0]).toBe('net load (kg)');
		expect(rows.columns).toContain(csv);
		expect(rows.length).toBeGreaterThan(20);
		expect(rows.filter((row) => Number.isFinite(Number(row[csv] || NaN))).length).toBeGreaterThan(
			10
		);
	});
}
