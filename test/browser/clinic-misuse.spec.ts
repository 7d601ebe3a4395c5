import { serve } from '../../scripts/serve.mjs';
import { expect, test } from './fixtures.ts';

const pagesOf = (pdf: Buffer) => pdf.toString('latin1').match(/\/Type\s*\/Page(?!s)/g)?.length ?? 0;

test('printed before any script has run, sheets carry their figures all the same', async ({
	browser,
	baseURL
}) => {
	const context = await browser.newContext({ javaScriptEnabled: false, baseURL: baseURL! });
	const page = await context.newPage();
	for (const [path, sheets] of [
		['clinic/rope/handout/', 3],
		['clinic/fair/handout/', 3],
		['clinic/session/', 1],
		['clinic/set-up/', 1]
	] as const) {
		await page.goto(path);
		expect(pagesOf(await page.pdf({ preferCSSPageSize: true })), path).toBe(sheets);
		if (path === 'clinic/session/') continue;
		await expect(page.locator('.paper-sheet figure svg path').first(), path).toBeAttached();
	}
	await context.close();
});

test('a picture that is not drawn yet is not taken away, and that is said', async ({ page }) => {
	await page.goto('clinic/rope/');
	await page.getByRole('button', { name: 'Take away: Not quite plumb: the question' }).click();
	const sheet = page.getByRole('dialog', { name: /^Take away/ });
	await expect(sheet.getByRole('button', { name: 'Drawing (SVG)' })).toBeVisible();
	// As long as a picture's part is on its way there is a figure without a drawing.
	await page.evaluate(() => document.querySelector('.ask figure.forces svg')!.remove());
	for (const file of ['Drawing (SVG)', 'Picture (PNG)']) {
		await sheet.getByRole('button', { name: file }).click();
		await expect(sheet.getByText('The picture is not drawn yet. Wait for it')).toBeVisible();
	}
});

test('a link too long for a code is said to be, and still stands on the sheet', async ({
	page
}) => {
	// The site far down in folders: the longest part of a link that a set-up cannot help.
	const prefix = `/${'a-very-long-folder-name/'.repeat(60)}`;
	const { url, close } = await serve({ folder: 'build', port: 0, prefix });
	try {
		const far = await page.context().newPage();
		await far.goto(`${url}clinic/set-up/?v=1&slope=20`);
		const sheet = far.locator('.paper-sheet');
		await expect(sheet).toContainText('too long for a QR code that a phone can read');
		await expect(sheet.getByRole('img', { name: /^QR code/ })).toHaveCount(0);
		await expect(sheet).toContainText('?v=1&slope=20');
		expect(pagesOf(await far.pdf({ preferCSSPageSize: true }))).toBeLessThanOrEqual(2);
		await far.goto(`${url}?v=1&slope=20`);
		await far.getByRole('button', { name: /^Take away: Loads/ }).click();
		await far.getByRole('button', { name: 'QR code of the link' }).click();
		await expect(far.getByText(/too long for a QR code .* Copy the link/)).toBeVisible();
	} finally {
		await close();
	}
});

for (const [damage, query] of [
	['a broken escape', '?v=1&slope=%E0%A4%A'],
	['a newer version', '?v=99&slope=20'],
	['a very long state', `?v=1&slope=20&junk=${'x'.repeat(6000)}`],
	['nothing but noise', '?%%%&=&&&;;']
] as const) {
	test(`a lesson link with ${damage} still opens the lesson`, async ({ page }) => {
		await page.goto(`clinic/window/${query}`);
		await expect(page.getByRole('heading', { level: 1, name: 'The holding window' })).toBeVisible();
		await expect(page.getByRole('heading', { name: 'Reveal' })).toBeVisible();
		await expect(page.locator('.reveal figure svg').first()).toBeVisible();
		await expect(page.locator('main')).not.toContainText(/NaN|undefined/);
	});
}
