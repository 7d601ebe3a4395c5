import { readdirSync } from 'node:fs';
import { expect, pages, test } from './fixtures.ts';

test('after one visit every page opens without a network', async ({ page, context }) => {
	test.setTimeout(240_000);
	await page.goto('');
	await expect(page.getByText('Ready to use offline')).toBeVisible({ timeout: 30_000 });
	await context.setOffline(true);
	for (const path of pages) {
		await page.goto(path);
		await expect(page.locator('main h1'), path).toBeAttached({ timeout: 20_000 });
	}
	await page.goto('?v=1&slope=20');
	await expect(page.getByRole('textbox', { name: 'Hold slope' })).toHaveValue('20');
	await page.getByText('Show the working').click();
	await expect(page.locator('.katex').first()).toBeVisible();
});

test('without a network pages open by their links, without their last slash, and give files', async ({
	page,
	context
}) => {
	await page.goto('');
	await expect(page.getByText('Ready to use offline')).toBeVisible({ timeout: 30_000 });
	await context.setOffline(true);
	await page.getByRole('link', { name: 'All cautions and sources' }).click();
	await expect(page.getByRole('heading', { level: 1, name: 'Sources and cautions' })).toBeVisible();
	await page.getByRole('link', { name: 'How the product checks itself' }).click();
	await expect(page.getByRole('heading', { level: 1 })).toHaveText('How the product checks itself');
	await page.goto('glossary');
	await expect(page.getByRole('heading', { level: 1 })).toHaveText('Words and symbols');
	await page.goto('');
	await page.getByRole('button', { name: /^Take away: Loads/ }).click();
	const sheet = page.getByRole('dialog', { name: /^Take away: Loads/ });
	const [download] = await Promise.all([
		page.waitForEvent('download'),
		sheet.getByRole('button', { name: 'Picture (PNG)' }).click()
	]);
	expect(await download.failure()).toBeNull();
});

test('every script that a page may ask for, workers too, is kept', async ({ page, context }) => {
	const scripts = readdirSync('build/_app', { recursive: true, encoding: 'utf8' }).filter((path) =>
		path.endsWith('.js')
	);
	expect(scripts.length).toBeGreaterThan(10);
	await page.goto('');
	await expect(page.getByText('Ready to use offline')).toBeVisible({ timeout: 30_000 });
	await context.setOffline(true);
	await page.goto('glossary/');
	const lost = await page.evaluate(async (paths) => {
		const answers = await Promise.all(
			paths.map((path) =>
				fetch(`../_app/${path}`).then(
					({ ok }) => ok,
					() => false
				)
			)
		);
		return paths.filter((_, i) => !answers[i]);
	}, scripts);
	expect(lost).toEqual([]);
});
