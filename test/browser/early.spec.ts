import type { Page } from '@playwright/test';
import { expect, test } from './fixtures.ts';

/** Opens a page whose own scripts are held back until `go` is called. */
async function openHeldBack(page: Page, path: string): Promise<() => void> {
	let go = () => {};
	const held = new Promise<void>((done) => (go = done));
	await page.route('**/_app/**/*.js', async (route) => {
		await held;
		await route.continue();
	});
	await page.goto(path, { waitUntil: 'commit' });
	await expect(page.locator('main h1')).toBeAttached();
	return go;
}

test('what is typed and ticked before the scripts are there is taken up', async ({ page }) => {
	const go = await openHeldBack(page, 'clinic/room/');
	const first = page.getByRole('row').nth(1);
	await page.getByLabel('Person 1 is 18 or over and unhurt').check();
	await page.getByLabel('Person 1: body mass').fill('70');
	await page.getByLabel('Person 1: heaviest net load held').fill('67');
	await expect(first).toContainText('not marked 18 or over');
	go();
	await expect(first).toContainText(/heavy, 73\.7\skg \(lowered\)/);
	await expect(page.getByLabel('Person 1 is 18 or over and unhurt')).toBeChecked();
	await expect(page.getByLabel('Person 1: body mass')).toHaveValue('70');
	await page.reload();
	await expect(page.getByLabel('Person 1: heaviest net load held')).toHaveValue('67');
});

test('a slope typed early moves the pictures, and a vote typed early counts', async ({ page }) => {
	const go = await openHeldBack(page, '');
	await page.getByRole('textbox', { name: 'Hold slope' }).fill('20');
	go();
	await expect(page).toHaveURL(/slope=20/);
	await expect(page.getByRole('textbox', { name: 'Hold slope' })).toHaveValue('20');
	await page.unroute('**/_app/**/*.js');
	const on = await openHeldBack(page, 'clinic/fair/');
	await page.getByLabel('Votes for answer 2').fill('12');
	on();
	await expect(page.getByText('12 votes.')).toBeVisible();
	await expect(page.getByLabel('Votes for answer 2')).toHaveValue('12');
});
