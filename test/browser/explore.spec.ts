import { gzipSync } from 'node:zlib';
import type { Page } from '@playwright/test';
import { expect, test } from './fixtures.ts';

/** A computed quantity as a script reads it: the full SI value. */
async function quantity(page: Page, name: string): Promise<number> {
	return Number(await page.locator(`data[data-quantity="${name}"]`).first().getAttribute('value'));
}

const slope = (page: Page) => page.getByRole('textbox', { name: 'Hold slope' });
const verdict = (page: Page) => page.locator('.says p:not(.lead)').first();

test('the first sight is a hang near both limits', async ({ page }) => {
	await page.goto('');
	await expect(verdict(page)).toContainText('At 70 kg this hang holds.');
	expect(await quantity(page, 'slipMargin')).toBeGreaterThan(1);
	expect(await quantity(page, 'strengthMargin')).toBeGreaterThan(1);
	await expect(page.getByText('Film law: assumed, not shown by experiments.')).toBeVisible();
});

test('the whole page is used by keyboard, and a reload brings the same state', async ({
	page,
	context
}) => {
	await context.grantPermissions(['clipboard-read', 'clipboard-write']);
	await page.goto('');
	await page.keyboard.press('Tab');
	await expect(page.getByRole('link', { name: 'Skip to the content' })).toBeFocused();
	await page.keyboard.press('Enter');

	// Set a slope.
	await slope(page).focus();
	await page.keyboard.press('Control+A');
	await page.keyboard.type('31,5');
	await page.keyboard.press('Enter');
	await expect(page.locator('[data-quantity="demand"]').first()).toHaveText('0.613');

	// Move the point in the region, by its own keys.
	const point = page.getByRole('slider', { name: /net load, in the region/i });
	await point.focus();
	await page.keyboard.press('ArrowUp');
	await page.keyboard.press('ArrowUp');
	await expect.poll(() => quantity(page, 'netMass')).toBe(72);

	// Open the working.
	await page.locator('summary', { hasText: 'Show the working' }).focus();
	await page.keyboard.press('Enter');
	await expect(page.locator('.katex').first()).toBeVisible();

	// Copy the link, and reload.
	const copy = page.getByRole('button', { name: 'Copy the link to this set-up' });
	await copy.focus();
	await page.keyboard.press('Enter');
	await expect(page.getByText('Link copied.')).toBeVisible();
	const link = await page.evaluate(() => navigator.clipboard.readText());
	await page.goto(link);
	await expect(slope(page)).toHaveValue('31.5');
	await expect.poll(() => quantity(page, 'netMass')).toBe(72);
});

test('back and forward walk through the set-ups', async ({ page }) => {
	await page.goto('');
	await slope(page).fill('20');
	await expect(page).toHaveURL(/slope=20/);
	await slope(page).fill('25');
	await expect(page).toHaveURL(/slope=25/);
	await page.goBack();
	await expect(slope(page)).toHaveValue('20');
	await page.goForward();
	await expect(slope(page)).toHaveValue('25');
});

test('a field says what is allowed, keeps what was typed, and marks the picture as stale', async ({
	page
}) => {
	await page.goto('');
	for (const text of ['steep', '', '99', 'NaN']) {
		await slope(page).fill(text);
		await expect(page.getByRole('alert')).toContainText(
			'Hold slope takes a number from −15 to 60 °'
		);
		await slope(page).blur();
		await expect(slope(page)).toHaveValue(text);
		await expect(page.getByText('the pictures keep the last good values')).toBeVisible();
		await expect(verdict(page)).toContainText('At 70 kg this hang holds.');
	}
	await slope(page).fill('30');
	await expect(page.getByRole('alert')).toHaveCount(0);
	await expect(page.getByText('the pictures keep the last good values')).toHaveCount(0);
});

test('a message goes with its text: when the value comes from elsewhere, and with the page', async ({
	page
}) => {
	const stale = page.getByText('the pictures keep the last good values');
	await page.goto('');
	await slope(page).fill('steep');
	await expect(stale).toBeVisible();
	await page.getByRole('slider', { name: 'Hold slope, slider' }).press('ArrowUp');
	await expect(stale).toHaveCount(0);
	await expect(page.getByRole('alert')).toHaveCount(0);

	await slope(page).fill('steep');
	await expect(stale).toBeVisible();
	await page.getByRole('navigation', { name: 'Pages' }).getByText('Compare').click();
	await page.waitForURL(/compare\//);
	await page.getByRole('navigation', { name: 'Pages' }).getByText('Explore').click();
	await expect(verdict(page)).toContainText('At 70 kg');
	await expect(stale).toHaveCount(0);
});

test('a damaged link gives plain words and the nearest sensible set-up', async ({ page }) => {
	await page.goto('?v=1&slope=400&mu=abc&law=magic&colour=red');
	await expect(page.getByText('outside -15 to 60; 60 is used')).toBeVisible();
	await expect(page.getByText('“mu” in the link is not a number')).toBeVisible();
	await expect(slope(page)).toHaveValue('60');
	await expect(page.getByRole('img', { name: 'Holding region' })).toBeVisible();
});

test('pounds are remembered, and a mass typed in pounds is kept', async ({ page }) => {
	await page.goto('');
	await page.getByText('lb', { exact: true }).click();
	await page.reload();
	const body = page.getByRole('textbox', { name: 'Body mass' });
	await expect(body).toHaveValue('154.32');
	await body.fill('200');
	await expect(verdict(page)).toContainText('At 200 lb');
});

test('the constant law laid over has a name on the drawing', async ({ page }) => {
	await page.goto('');
	await page.getByLabel('lay over a constant ratio').check();
	await expect(page.getByRole('img', { name: 'Holding region' })).toContainText('constant ratio');
	await page.getByLabel(/lay over a rope/).check();
	await expect(page.getByRole('img', { name: 'Holding region' })).toContainText('rope 5°');
});

test('the point can be dragged', async ({ page }) => {
	await page.goto('');
	const handle = page.getByRole('slider', { name: /net load, in the region/i });
	const box = (await handle.locator('xpath=..').boundingBox())!;
	await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
	await page.mouse.down();
	await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2 + 60, { steps: 5 });
	await page.mouse.up();
	await expect.poll(() => quantity(page, 'netMass')).toBeLessThan(65);
	await expect(verdict(page)).toContainText('slips');
});

test('extremes of every slider leave finite words and pictures', async ({ page }) => {
	await page.goto('');
	for (const slider of await page.getByRole('slider', { name: /, slider$/ }).all()) {
		if (!(await slider.isVisible())) continue;
		for (const key of ['End', 'Home']) {
			await slider.focus();
			await page.keyboard.press(key);
			await page.waitForTimeout(60);
			const text = await page.locator('main').innerText();
			expect(text).not.toMatch(/NaN|Infinity|undefined/);
			for (const path of await page.locator('main svg path').all()) {
				expect(await path.getAttribute('d')).not.toMatch(/NaN|Infinity/);
			}
		}
	}
});

test('the forces’ handles move the set-up, by keyboard too', async ({ page }) => {
	await page.goto('?v=1&change=-20');
	const forces = page.getByRole('region', { name: 'Forces, to scale' });
	const tilt = forces.getByRole('slider', { name: 'Hold slope' });
	await tilt.focus();
	await page.keyboard.press('ArrowUp');
	await expect(slope(page)).not.toHaveValue('33.5');
	const rope = forces.getByRole('slider', { name: 'Rope angle' });
	await rope.focus();
	await page.keyboard.press('ArrowRight');
	await expect(page).toHaveURL(/rope=/);
	const assist = forces.getByRole('slider', { name: 'Rope assist' });
	const before = await quantity(page, 'netMass');
	await assist.focus();
	await page.keyboard.press('ArrowUp');
	await expect.poll(() => quantity(page, 'netMass')).not.toBe(before);
});

test('a patch larger than the pad and a pull off the hold are said at their controls', async ({
	page
}) => {
	await page.goto('?v=1&area=300&padWidth=12');
	await expect(page.locator('.first')).toContainText('larger than the fingertip pad');
	await page.goto('?v=1&slope=60&rope=30&change=-60');
	await expect(page.locator('.first')).toContainText('it leads off the hold');
	await expect(verdict(page)).toContainText('the pull leads off the hold');
});

test.describe('before anyone is there', () => {
	// The plain browser page: no sign of a person is given by the fixtures.
	test('the pictures stand drawn, and at most 75 kB of script is loaded', async ({ context }) => {
		const page = await context.newPage();
		const scripts: Promise<number>[] = [];
		page.on('response', (response) => {
			if (response.request().resourceType() !== 'script') return;
			scripts.push(response.body().then((body) => gzipSync(body).length));
		});
		await page.goto('', { waitUntil: 'networkidle' });
		await expect(page.locator('.pictures')).toHaveAttribute('data-live', 'false');
		for (const name of ['Holding region', 'Margins against net load']) {
			await expect(page.getByRole('img', { name })).toBeVisible();
		}
		await expect(page.getByRole('group', { name: /Free-body diagram/ })).toBeVisible();
		const total = (await Promise.all(scripts)).reduce((sum, size) => sum + size, 0);
		expect(total).toBeGreaterThan(10_000);
		expect(total).toBeLessThanOrEqual(75_000);
	});

	test('who lands on a handle of a still stands on the same handle of the live picture', async ({
		context
	}) => {
		const page = await context.newPage();
		await page.goto('', { waitUntil: 'networkidle' });
		const handle = page.getByRole('slider', { name: 'Net load, in the region' });
		await handle.focus();
		await expect(page.locator('.pictures')).toHaveAttribute('data-live', 'true');
		await expect(handle).toBeFocused();
		await page.keyboard.press('ArrowUp');
		await expect(page.locator('[data-quantity="netMass"]').first()).toHaveText('71 kg');
	});
});
