import type { Page } from '@playwright/test';
import { expect, test } from './fixtures.ts';

const pair = (page: Page, name: string) => page.getByRole('button', { name, exact: true });
const margin = async (page: Page, name: string, place: number) =>
	Number(await page.locator(`td data[data-quantity="${name}"]`).nth(place).getAttribute('value'));

test('the second set-up starts as the other grip, and both windows stand on one axis', async ({
	page
}) => {
	await page.goto('compare/');
	await expect(page.getByText('At 70 kg the first holds')).toBeVisible();
	await expect(page.getByRole('row', { name: /contact area/ })).toContainText('160 mm²');
	const picture = page.getByRole('img', { name: 'Loads that hold, both set-ups' });
	await expect(picture).toContainText('slips 64.8 kg');
	await expect(picture).toContainText('net load, times own body mass');
});

test('at which body mass the better one changes is said and marked', async ({ page }) => {
	await page.goto('compare/');
	const change = page.locator('[data-quantity="betterChangesAt"]').first();
	await expect(change).toHaveText(/kg/);
	const mass = Number(await change.getAttribute('value'));
	// Give both bodies that mass: the smaller margins must meet.
	await page.goto(
		`compare/?v=1&body=${mass}&with=${encodeURIComponent(`v=1&body=${mass}&area=160`)}`
	);
	const smaller = async (place: number) =>
		Math.min(await margin(page, 'slipMargin', place), await margin(page, 'strengthMargin', place));
	await expect.poll(() => smaller(0)).toBeGreaterThan(0);
	expect(Math.abs((await smaller(0)) / (await smaller(1)) - 1)).toBeLessThan(1e-6);
	await page.getByText('keeps its ratio to mass').click();
	await expect(page.getByText('The same body in both, at 1 times its mass')).toBeVisible();
});

test('equal strength for their mass: multiples agree under a constant ratio', async ({ page }) => {
	await page.goto('compare/?v=1&law=constant&mu=0.7&slope=30');
	await pair(
		page,
		'Very light and very strong against heavy, the same strength for their mass'
	).click();
	const row = page.getByRole('row', { name: /times own body mass/ });
	const cells = await row.getByRole('cell').allInnerTexts();
	const upper = cells.map((text) => text.split(' to ')[1]);
	expect(upper[0]).toBe(upper[1]);
	await expect(page.getByText('only mass differs')).toBeVisible();
});

test('either set-up is changed; the address keeps both; back undoes', async ({ page }) => {
	await page.goto('compare/');
	const slope = page.getByRole('textbox', { name: 'Hold slope' });
	await slope.fill('28');
	await expect(page).toHaveURL(/with=[^&]*slope%3D28/);
	await page.getByText('first: yours', { exact: true }).last().click();
	await expect(slope).toHaveValue('33.5');
	await slope.fill('30');
	await expect(page).toHaveURL(/[?&]slope=30/);
	await page.reload();
	await expect(page.getByRole('row', { name: /hold slope/ })).toContainText('28°');
	await page.goBack();
	await expect(page.getByRole('row', { name: /hold slope/ })).toContainText('33.5°');
});

test('the first set-up is the one of the other pages', async ({ page }) => {
	await page.goto('?v=1&slope=25');
	await page.getByRole('link', { name: 'Compare' }).click();
	await expect(page.getByRole('heading', { level: 1 })).toHaveText('Grips and bodies compared');
	await page.getByText('first: yours', { exact: true }).last().click();
	await expect(page.getByRole('textbox', { name: 'Hold slope' })).toHaveValue('25');
});

test('a damaged second set-up is mended and said; bad text keeps the picture', async ({ page }) => {
	await page.goto(`compare/?v=1&with=${encodeURIComponent('v=1&slope=400&mu=x')}`);
	await expect(page.getByText('Second set-up: “slope” in the link is 400')).toBeVisible();
	await expect(page.getByText('Second set-up: “mu” in the link is not a number')).toBeVisible();
	await page.getByRole('textbox', { name: 'Hold slope' }).fill('steep');
	await expect(page.getByRole('alert')).toContainText('takes a number');
	await expect(page.getByText('the pictures keep the last good values')).toBeVisible();
});

test('big hands and surfaces: the answer, the data, and where nothing was found', async ({
	page
}) => {
	await page.goto('compare/');
	await expect(page.getByText('Neither, to first order')).toBeVisible();
	await expect(page.getByRole('img', { name: 'Spread of body measures' })).toContainText(
		'177 · 193 · 210 mm'
	);
	await page.getByText('women', { exact: true }).last().click();
	await expect(page.getByRole('main')).toContainText(
		'goes as height to the 1.5, body mass as height to the 2.19'
	);
	await expect(page.getByRole('row', { name: /painted wood/ })).toContainText('no value found');
	await expect(page.getByRole('row', { name: /moulded climbing resin/ })).toContainText(
		'no value found'
	);
	await expect(page.getByRole('row', { name: /limestone bare hand/ })).toContainText('0.64');
});

test('every pair leaves finite words and pictures', async ({ page }) => {
	await page.goto('compare/');
	for (const button of await page.getByRole('group', { name: 'Pairs' }).getByRole('button').all()) {
		await button.click();
		await page.waitForTimeout(60);
		expect(await page.locator('main').innerText()).not.toMatch(/NaN|Infinity|undefined/);
		for (const path of await page.locator('main svg path').all())
			expect(await path.getAttribute('d')).not.toMatch(/NaN|Infinity/);
	}
});
