import type { Page } from '@playwright/test';
import { expect, test } from './fixtures.ts';

async function quantity(page: Page, name: string): Promise<number> {
	return Number(await page.locator(`data[data-quantity="${name}"]`).first().getAttribute('value'));
}
const out = (page: Page) => page.getByRole('textbox', { name: 'Pulley out from plumb' });

test('the pulley that gives the needed lean makes the lighter hang fail', async ({ page }) => {
	await page.goto('rope/?v=1&law=constant&mu=0.64&slope=31&change=-15');
	const lean = await quantity(page, 'leanToSlip');
	// tan ε = m/(M − m) · tan(arctan μ − σ), by hand: 55/15 · tan(32.6192° − 31°) = tan 5.917°.
	expect(Math.abs(lean - (5.917 * Math.PI) / 180)).toBeLessThan(2e-5);
	const offset = await quantity(page, 'pulleyOffset');
	await out(page).fill((offset + 0.01).toFixed(4));
	await expect(page.getByText('lighter slips')).toBeVisible();
	await out(page).fill((offset - 0.01).toFixed(4));
	await expect(page.getByText('lighter slips')).toHaveCount(0);
	expect(await quantity(page, 'slipMargin')).toBeGreaterThan(1);
});

test('more assist makes the rope stand steeper', async ({ page }) => {
	await page.goto('rope/?v=1&change=-10');
	const before = await quantity(page, 'ropeAngle');
	await page.getByRole('textbox', { name: 'Taken off the hands' }).fill('40');
	await expect.poll(() => quantity(page, 'ropeAngle')).toBeLessThan(before);
});

test('the pulley is dragged, and moved by keys', async ({ page }) => {
	await page.goto('rope/');
	const handle = page.getByRole('slider', { name: 'Pulley out from plumb', exact: true });
	const box = (await handle.boundingBox())!;
	await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
	await page.mouse.down();
	await page.mouse.move(box.x + box.width / 2 + 60, box.y + box.height / 2, { steps: 5 });
	await page.mouse.up();
	await expect.poll(async () => Number(await out(page).inputValue())).toBeGreaterThan(0.5);
	await handle.focus();
	await page.keyboard.press('Home');
	await expect(out(page)).toHaveValue('-1');
	await page.getByRole('slider', { name: 'Pulley height above the hold', exact: true }).focus();
	await page.keyboard.press('ArrowUp');
	await expect(page.getByRole('textbox', { name: 'Pulley above the hold' })).toHaveValue('0.65');
});

test('the settled angle goes to Explore, and the address keeps the rig', async ({ page }) => {
	await page.goto('rope/?v=1&change=-20&out=0.5&up=1');
	await expect(out(page)).toHaveValue('0.5');
	const angle = (await quantity(page, 'ropeAngle')) * (180 / Math.PI);
	await page.getByRole('link', { name: /Open this hang in Explore/ }).click();
	await expect(page.getByRole('img', { name: 'Holding region' })).toBeVisible();
	const sent = Number(new URL(page.url()).searchParams.get('rope'));
	expect(Math.abs(sent - angle)).toBeLessThan(6e-4);
	await page.goBack();
	await expect(out(page)).toHaveValue('0.5');
	await out(page).fill('0.8');
	await expect(page).toHaveURL(/out=0\.8/);
});

test('two pulls give the efficiency; swapped ones are questioned', async ({ page }) => {
	await page.goto('rope/');
	await page.getByRole('textbox', { name: 'Pull that just raises it' }).fill('10');
	await page.getByRole('textbox', { name: 'Pull that just lets it down' }).fill('8,1');
	expect(Math.abs((await quantity(page, 'efficiency')) - 0.9)).toBeLessThan(1e-9);
	await page.getByRole('button', { name: 'Use this efficiency' }).click();
	await expect(page.getByRole('textbox', { name: 'Pulley efficiency in use' })).toHaveValue('0.9');
	await page.getByRole('textbox', { name: 'Pull that just lets it down' }).fill('12');
	await expect(page.getByText('are the two readings swapped?')).toBeVisible();
});

test('bad text keeps the last good picture; a body that cannot rest says so', async ({ page }) => {
	await page.goto('rope/');
	await out(page).fill('far');
	await expect(page.getByRole('alert')).toContainText('takes a number from');
	await expect(page.getByText('the pictures keep the last good values')).toBeVisible();
	await page.goto('rope/?v=1&change=-55&tie=1.5&middle=0.8&out=300');
	await expect(page.getByText('“out” in the link is 300')).toBeVisible();
	await expect(page.getByText('Nothing comes to rest here')).toBeVisible();
	const text = await page.locator('main').innerText();
	expect(text).not.toMatch(/NaN|Infinity|undefined/);
});

test('extremes leave finite words and pictures', async ({ page }) => {
	await page.goto('rope/?v=1&change=-20');
	for (const name of [
		'Pulley out from plumb, slider',
		'Pulley above the hold, slider',
		'Pulley to one side, slider',
		'Taken off the hands, slider',
		'Hold slope, slider'
	]) {
		for (const key of ['End', 'Home']) {
			await page.getByRole('slider', { name, exact: true }).focus();
			await page.keyboard.press(key);
			await page.waitForTimeout(60);
			const text = await page.locator('main').innerText();
			expect(text).not.toMatch(/NaN|Infinity|undefined/);
			for (const path of await page.locator('main svg path').all())
				expect(await path.getAttribute('d')).not.toMatch(/NaN|Infinity/);
		}
	}
});

test('someone who follows a link right after a change is not called back', async ({ page }) => {
	await page.goto('rope/');
	const slider = page.getByRole('main').locator('input[type="range"]').first();
	// The next page takes longer to come than the address waits for a change to settle.
	await page.route('**/_app/**/*.js', async (route) => {
		await new Promise((done) => setTimeout(done, 800));
		await route.continue();
	});
	await slider.press('ArrowRight');
	await page.getByRole('navigation', { name: 'Pages' }).getByText('Finger').click();
	await expect(page.getByRole('heading', { level: 1 })).toContainText(/finger/i);
	expect(new URL(page.url()).pathname).toMatch(/\/finger\/$/);
});
