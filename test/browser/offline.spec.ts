import { expect, pages, test } from './fixtures.ts';

test('after one visit every page opens without a network', async ({ page, context }) => {
	await page.goto('');
	await expect(page.getByText('Ready to use offline')).toBeVisible();
	await context.setOffline(true);
	for (const path of pages) {
		await page.goto(path);
		await expect(page.locator('main h1')).toBeAttached();
	}
	await page.goto('?v=1&slope=20');
	await expect(page.getByRole('textbox', { name: 'Hold slope' })).toHaveValue('20');
	await page.getByText('Show the working').click();
	await expect(page.locator('.katex').first()).toBeVisible();
});
