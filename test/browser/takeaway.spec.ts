import { csvParse } from 'd3';
import jsQR from 'jsqr';
import { PNG } from 'pngjs';
import { expect, test } from './fixtures.ts';
import { open, parsed, saved } from './taken.ts';

const pictures = [
	{ name: 'Loads that hold, across contact area', shown: 'slip edge' },
	{ name: 'Forces on the person and on a hand, to scale', shown: 'friction needed' },
	{ name: 'Margins against net load', shown: 'slip margin' }
] as const;

for (const { name, shown } of pictures) {
	test(`${name}: the SVG stands alone and is light in either theme`, async ({ page }) => {
		const files: string[] = [];
		for (const colorScheme of ['light', 'dark'] as const) {
			await page.emulateMedia({ colorScheme });
			await page.goto('?v=1&slope=31.5');
			const file = await saved(page, name, 'Drawing (SVG)');
			expect(file.name).toMatch(/^holding-window-[a-z-]+\.svg$/);
			files.push(file.bytes.toString('utf8'));
		}
		const [light, dark] = files;
		expect(dark).toBe(light);
		expect(light).not.toMatch(/var\(|NaN|undefined/);
		const file = await parsed(page, light!);
		expect(file).toMatchObject({
			root: 'svg',
			faults: 0,
			title: name,
			styled: 0,
			handles: 0,
			lost: []
		});
		expect(file.shapes).toBeGreaterThan(5);
		expect(file.text).toContain(shown);
		expect(file.text).toContain('Units:');
		expect(file.text).toContain('Source: computed by Holding Window');
		expect(file.link).toBe(new URL('?v=1&slope=31.5', page.url()).href);
		expect(file.text.replaceAll(' ', '')).toContain(file.link);
	});
}

test('the PNG decodes, is sharp, and is light in the dark theme', async ({ page }) => {
	await page.emulateMedia({ colorScheme: 'dark' });
	await page.goto('');
	const name = pictures[0].name;
	const { size } = await parsed(page, (await saved(page, name, 'Drawing (SVG)')).bytes.toString());
	const png = PNG.sync.read((await saved(page, name, 'Picture (PNG)')).bytes);
	expect(png.width).toBeGreaterThanOrEqual(1400);
	expect(Math.abs(png.width / png.height - Number(size[0]) / Number(size[1]))).toBeLessThan(0.005);
	const at = (x: number, y: number) => [
		...png.data.subarray((y * png.width + x) * 4).subarray(0, 3)
	];
	// The light sheet, as the page's style sheet has it: #fdfdfb.
	expect(at(3, 3)).toEqual([0xfd, 0xfd, 0xfb]);
	let ink = 0;
	for (let i = 0; i < png.data.length; i += 4) if (png.data[i]! < 0x60) ink++;
	expect(ink / (png.width * png.height)).toBeGreaterThan(0.005);
});

test('the curves are CSV with units in the header', async ({ page }) => {
	await page.goto('');
	const region = await saved(page, pictures[0].name, 'Numbers (CSV)');
	const edges = csvParse(region.bytes.toString('utf8'));
	expect(edges.columns).toContain('lightest load that holds (kg)');
	expect(edges.columns[1]).toBe('contact area (mm2)');
	expect(edges.length).toBeGreaterThan(200);
	// Beside the set-up's own 240 mm² the edges are those that the sentence tells: 64.8 and 72.2 kg.
	const beside = edges.filter((row) => Math.abs(Number(row['contact area (mm2)']) - 240) < 0.6);
	expect(beside.length).toBeGreaterThan(0);
	for (const row of beside) {
		expect(Math.abs(Number(row['lightest load that holds (kg)']) - 64.8)).toBeLessThan(0.3);
		expect(Math.abs(Number(row['heaviest load that holds (kg)']) - 72.2)).toBeLessThan(0.3);
	}
	const margin = await saved(page, pictures[2].name, 'Numbers (CSV)');
	const curves = csvParse(margin.bytes.toString('utf8'));
	expect(curves.columns).toEqual([
		'net load (kg)',
		'slip margin (ratio)',
		'strength margin (ratio)'
	]);
	// The drawing of forces has no curves.
	const forces = await open(page, pictures[1].name);
	await expect(forces.getByRole('button', { name: 'Drawing (SVG)' })).toBeVisible();
	await expect(forces.getByRole('button', { name: 'Numbers (CSV)' })).toHaveCount(0);
});

test('the QR code is read back to the link, and the link to the set-up', async ({ page }) => {
	await page.emulateMedia({ colorScheme: 'dark' });
	await page.goto('?v=1&slope=27.5&law=adhesion&shear=6');
	const sheet = await open(page, pictures[0].name);
	await sheet.getByRole('button', { name: 'QR code of the link' }).click();
	const code = PNG.sync.read(await sheet.getByRole('img', { name: /^QR code/ }).screenshot());
	const read = jsQR(new Uint8ClampedArray(code.data), code.width, code.height)?.data;
	expect(read).toBe(page.url());
	await page.goto(read!);
	await expect(page.getByRole('textbox', { name: 'Hold slope' })).toHaveValue('27.5');
});

test('a stale picture is taken away as what it is: the last good set-up', async ({ page }) => {
	await page.goto('?v=1&slope=30');
	await page.getByRole('textbox', { name: 'Hold slope' }).fill('steep');
	await expect(page.getByText('the pictures keep the last good values')).toBeVisible();
	const file = await parsed(
		page,
		(await saved(page, pictures[0].name, 'Drawing (SVG)')).bytes.toString('utf8')
	);
	expect(file.text).toContain('last good picture');
	expect(file.link).toContain('slope=30');
	await expect(page.getByRole('textbox', { name: 'Hold slope' })).toHaveValue('steep');
});

test('on a phone the picture in sight is the one that is taken away', async ({ page }) => {
	await page.setViewportSize({ width: 390, height: 844 });
	await page.goto('');
	await expect(page.getByRole('button', { name: /^Take away/ })).toHaveCount(1);
	await page.getByText('Forces', { exact: true }).click();
	const file = await saved(page, pictures[1].name, 'Drawing (SVG)');
	expect((await parsed(page, file.bytes.toString('utf8'))).faults).toBe(0);
});

test('the manifest names icons that are there and decode', async ({ page, request }) => {
	await page.goto('');
	const address = await page
		.locator('link[rel="manifest"]')
		.evaluate((link) => (link as HTMLLinkElement).href);
	const manifest = (await (await request.get(address)).json()) as {
		icons: { src: string; sizes: string; type: string; purpose: string }[];
	};
	const pngs = manifest.icons.filter(({ type }) => type === 'image/png');
	expect(new Set(pngs.map(({ sizes }) => sizes))).toEqual(new Set(['192x192', '512x512']));
	expect(pngs.some(({ purpose }) => purpose === 'maskable')).toBe(true);
	for (const { src, sizes } of pngs) {
		const png = PNG.sync.read(await (await request.get(new URL(src, address).href)).body());
		expect(`${png.width}x${png.height}`).toBe(sizes);
	}
});
