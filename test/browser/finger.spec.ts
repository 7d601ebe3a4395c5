import type { Page } from '@playwright/test';
import { expect, test } from './fixtures.ts';

const cell = async (page: Page, name: string) =>
	Number(await page.locator(`td data[data-quantity="${name}"]`).first().getAttribute('value'));
const field = (page: Page, name: string) => page.getByRole('textbox', { name, exact: true });

test('tensions follow the load of the shared set-up', async ({ page }) => {
	await page.goto('finger/');
	await expect(page.getByText('At 70 kg one hand carries 343 N')).toBeVisible();
	const light = await cell(page, 'fdp');
	await page.goto('finger/?v=1&change=70');
	await page.goto('finger/?v=1&body=140');
	await expect.poll(() => cell(page, 'fdp')).toBeGreaterThan(1.9 * light);
});

test('joints, contact and tendon arms are moved by keys', async ({ page }) => {
	await page.goto('finger/');
	const slider = (name: string) => page.getByRole('slider', { name, exact: true });
	await slider('Bend of the last joint').focus();
	await page.keyboard.press('ArrowUp');
	await expect(field(page, 'Bend of the last joint')).toHaveValue('21');
	await slider('Bend of the middle joint').focus();
	await page.keyboard.press('PageUp');
	await expect(field(page, 'Bend of the middle joint')).toHaveValue('30');
	await slider('Pitch of the end segment').focus();
	await page.keyboard.press('End');
	await expect(field(page, 'Pitch of the end segment')).toHaveValue('60');

	await slider('Centre of pressure from the last joint').focus();
	const before = await cell(page, 'dipMoment');
	await page.keyboard.press('PageDown');
	await expect.poll(() => cell(page, 'dipMoment')).toBeLessThan(before);

	await slider('Arm of the deep flexor at the last joint').focus();
	const pull = await cell(page, 'fdp');
	await page.keyboard.press('ArrowDown');
	await expect.poll(() => cell(page, 'fdp')).toBeGreaterThan(pull);
	await page.getByRole('button', { name: 'Back to the table’s arms' }).click();
	await expect.poll(() => cell(page, 'fdp')).toBeLessThan(pull * 1.0001);
});

test('a joint is dragged', async ({ page }) => {
	await page.goto('finger/');
	const knuckle = page.getByRole('slider', { name: 'Bend of the middle joint', exact: true });
	const box = (await knuckle.boundingBox())!;
	const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
	await page.mouse.move(x, y);
	await page.mouse.down();
	await page.mouse.move(x - 120, y - 10, { steps: 6 });
	await page.mouse.up();
	const bend = async () => Number(await field(page, 'Bend of the middle joint').inputValue());
	await expect.poll(bend).toBeGreaterThan(40);
	await expect(page).toHaveURL(/pip=/);
});

test('4 mm toward the palm eases the deep flexor and loads the superficial one', async ({
	page
}) => {
	await page.goto('finger/');
	const [fdp, fds] = [await cell(page, 'fdp'), await cell(page, 'fds')];
	await page.getByRole('button', { name: 'Move it 4 mm toward the palm' }).click();
	await expect.poll(() => cell(page, 'fdp')).toBeLessThan(fdp);
	expect(await cell(page, 'fds')).toBeGreaterThan(fds);
	await page.getByRole('button', { name: 'Put it back' }).click();
	await expect.poll(() => cell(page, 'fdp')).toBe(fdp);
});

test('shares are edited; both sets of arms; cautions and honest words stand there', async ({
	page
}) => {
	await page.goto('finger/');
	await field(page, 'Share of the index finger').fill('40');
	await expect(page.getByText('add up to 113 %')).toBeVisible();
	await page.getByRole('button', { name: 'Back to the assumed shares' }).click();
	await expect(page.getByText('add up to')).toHaveCount(0);
	await page.getByText('ring', { exact: true }).first().click();
	await expect(page.getByText('no value found').first()).toBeVisible();
	await expect(page.getByText('Do not crimp as hard as you can')).toBeVisible();
	await expect(page.getByText('does not reach the published FDP:FDS')).toBeVisible();
	await expect(page.getByText('never a margin to injury').first()).toBeVisible();
});

test('a link brings the pose back; a damaged one says what was mended', async ({ page }) => {
	await page.goto('finger/?v=1&pip=87&dip=-15&passive=0.25&finger=middle');
	await expect(field(page, 'Bend of the middle joint')).toHaveValue('87');
	await page.reload();
	await expect(field(page, 'Bend of the last joint')).toHaveValue('-15');
	await page.goto('finger/?v=1&pip=bent&finger=toe');
	await expect(page.getByText('“pip” in the link is not a number')).toBeVisible();
	await expect(page.getByText('“finger” in the link is not known')).toBeVisible();
	await field(page, 'Bend of the last joint').fill('much');
	await expect(page.getByRole('alert')).toContainText('takes a number from −30 to 80');
});

test('extremes leave finite words and pictures', async ({ page }) => {
	await page.goto('finger/');
	for (const name of [
		'Bend of the last joint, slider',
		'Bend of the middle joint, slider',
		'Contact nearer the palm by, slider',
		'Pitch of the end segment, slider'
	]) {
		for (const key of ['End', 'Home']) {
			await page.getByRole('slider', { name, exact: true }).focus();
			await page.keyboard.press(key);
			await page.waitForTimeout(60);
			expect(await page.locator('main').innerText()).not.toMatch(/NaN|Infinity|undefined/);
			for (const path of await page.locator('main svg path').all())
				expect(await path.getAttribute('d')).not.toMatch(/NaN|Infinity/);
		}
	}
});
