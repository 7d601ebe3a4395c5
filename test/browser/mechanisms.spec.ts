import type { Page } from '@playwright/test';
import { expect, test } from './fixtures.ts';

/** A computed quantity as a script reads it: the full SI value. */
async function quantity(page: Page, name: string, within = 'main'): Promise<number> {
	const place = page.locator(`${within} data[data-quantity="${name}"]`).first();
	return Number(await place.getAttribute('value'));
}

const card = (key: string) => `#mechanism-${key}`;
const choose = (page: Page, name: string) => page.getByRole('combobox', { name, exact: true });
const names = (page: Page) => page.locator('.board h3').allInnerTexts();
const fold = (page: Page, key: string) => page.locator(`${card(key)} summary`).click();

test('the board shows every mechanism at the set-up that Explore has, geometry first', async ({
	page
}) => {
	await page.goto('?v=1&slope=31&law=constant&mu=0.64');
	const there = await quantity(page, 'slipMargin');
	await page.getByRole('link', { name: 'Mechanisms', exact: true }).click();
	await expect(page.getByRole('heading', { level: 1 })).toHaveText('Why might load matter?');
	expect(await quantity(page, 'slipMargin')).toBe(there);
	await expect(page.locator('.board article')).toHaveCount(22);
	await expect(page.locator('.board article svg')).toHaveCount(19);
	expect((await names(page)).slice(0, 3)).toEqual([
		'The assist rope leans',
		'A steady push outward',
		'The counterweight stays on while plates are added'
	]);
	for (const family of await page
		.locator('.board .family')
		.allInnerTexts()
		.then((all) => all.slice(0, 7))) {
		expect(family).toBe('where the pull points');
	}
	await expect(page.locator(card('adhesion'))).toContainText('strong published support', {
		ignoreCase: true
	});
	await expect(page.locator(card('squeeze'))).toContainText('shown on this board only');
	await expect(page.locator(card('capillary'))).toContainText('No curve.');
});

test('a number moved in place redraws its curve; the other way about, its sign turns', async ({
	page
}) => {
	await page.goto('mechanisms/');
	const rope = page.locator(card('rope-lean'));
	await expect(rope.locator('[data-sign]')).toContainText('heavier is easier');
	const before = await rope.locator('path.curve').first().getAttribute('d');
	await fold(page, 'rope-lean');
	const field = rope.getByRole('textbox');
	await expect(field).toHaveValue('5');
	await field.fill('-5');
	await expect(rope.locator('[data-sign]')).toContainText('lighter is easier');
	expect(await rope.locator('path.curve').first().getAttribute('d')).not.toBe(before);
	expect(await quantity(page, 'effectPerDoubling', card('rope-lean'))).toBeLessThan(0);
	// Text that cannot be used keeps the last good curve and says what is allowed.
	await field.fill('steep');
	await expect(rope.getByRole('alert')).toContainText('takes a number from');
	await expect(rope.locator('svg.stale')).toBeVisible();
	await rope.getByRole('button', { name: /^Reset/ }).click();
	await expect(rope.locator('[data-sign]')).toContainText('heavier is easier');
});

test('outside the range worth trying all of a curve is dashed, and it says so', async ({
	page
}) => {
	await page.goto('mechanisms/');
	const rope = page.locator(card('rope-lean'));
	await expect(rope.locator('path.curve').first()).not.toHaveAttribute('d', '');
	await fold(page, 'rope-lean');
	await rope.getByRole('textbox').fill('30');
	await expect(rope).toContainText('All dashed');
	await expect(rope).toContainText('outside the range worth trying (−20.1° to 20.1°)');
	await expect(rope.locator('path.curve').first()).toHaveAttribute('d', '');
	await expect(rope.locator('path.doubtful')).not.toHaveAttribute('d', '');
});

test('sorting and picking show what was asked, and nothing says so too', async ({ page }) => {
	await page.goto('mechanisms/');
	await choose(page, 'Sort by').selectOption('size');
	const sizes = await page
		.locator('.board [data-quantity="effectPerDoubling"]')
		.evaluateAll((all) => all.map((one) => Math.abs(Number(one.getAttribute('value')))));
	expect(sizes).toHaveLength(19);
	expect(sizes).toEqual([...sizes].sort((a, b) => b - a));
	await choose(page, 'Load').selectOption('lighter is easier');
	for (const sign of await page.locator('.board [data-sign]').all()) {
		await expect(sign).toHaveAttribute('data-sign', 'lighter is easier');
	}
	await choose(page, 'Evidence').selectOption('weak');
	await choose(page, 'Size for a doubling').selectOption('0.1');
	await expect(page.getByText('0 of 22 shown')).toBeVisible();
	await expect(page.getByText('No mechanism answers to all of that.')).toBeVisible();
});

test('what a hang can hold opens in Explore with the same margin', async ({ page }) => {
	await page.goto('mechanisms/?v=1&slope=30&change=-10');
	const here = await quantity(page, 'slipMargin');
	for (const key of ['steady-push', 'adhesion', 'rounded-hold', 'powder-film']) {
		await page.goto('mechanisms/?v=1&slope=30&change=-10');
		await page
			.locator(card(key))
			.getByRole('link', { name: /Open in Explore/ })
			.click();
		await expect(page.locator('.says p[aria-live]').first()).toContainText('At 60 kg');
		const there = await quantity(page, 'slipMargin');
		expect(Math.abs(there / here - 1), key).toBeLessThan(2e-3);
	}
});

test('the lean at which the lighter hang slips is where Explore has slip margin 1', async ({
	page
}) => {
	const setup = 'v=1&law=constant&mu=0.64&slope=31&change=-15';
	await page.goto(`mechanisms/?${setup}`);
	await fold(page, 'rope-lean');
	const yours = page.locator('tr', { hasText: '55 kg, yours' });
	const lean = Number(await yours.locator('[data-quantity="leanToSlip"]').getAttribute('value'));
	expect(lean).toBeGreaterThan(0);
	await page.goto(`?${setup}&rope=${(lean * 180) / Math.PI}`);
	await expect.poll(() => quantity(page, 'netMass')).toBe(55);
	expect(Math.abs((await quantity(page, 'slipMargin')) - 1)).toBeLessThan(1e-6);
});

test('the test that separates what is still ticked best is marked in the table', async ({
	page
}) => {
	await page.goto('mechanisms/');
	const best = page.locator('tr[data-best]');
	await expect(best).not.toHaveCount(0);
	await page.locator('summary', { hasText: 'Which do you still hold possible?' }).click();
	await page.getByRole('button', { name: 'Tick none' }).click();
	await expect(best).toHaveCount(0);
	await expect(page.getByText('Tick at least two mechanisms')).toBeVisible();
	// A tick on a card is the same tick.
	await page.locator(card('powder-film')).getByLabel('still possible for me').check();
	await page.locator('.ticks').getByLabel('Skin is pressed into grains or ridges').check();
	await expect(page.locator('tr[data-test="brush-and-wipe"]')).toHaveAttribute('data-best', 'true');
	await expect(page.locator('tr[data-test="more-load"]')).not.toHaveAttribute('data-best', 'true');
	expect(await quantity(page, 'pairsToldApart')).toBe(1);
	await page.locator(card('powder-film')).getByLabel('still possible for me').uncheck();
	await page.locator('.ticks').getByLabel('Skin is deformed by a rough surface').check();
	await expect(page.getByText('No test of this table separates')).toBeVisible();
});

test('the board follows the set-up, by keyboard, and the address says it', async ({ page }) => {
	await page.goto('mechanisms/');
	const set = page.locator('summary', { hasText: 'Your set-up' });
	await set.focus();
	await page.keyboard.press('Enter');
	const before = await quantity(page, 'slipMargin');
	await page.getByRole('slider', { name: 'Hold slope, slider' }).focus();
	for (let i = 0; i < 4; i++) await page.keyboard.press('ArrowLeft');
	await expect.poll(() => quantity(page, 'slipMargin')).toBeGreaterThan(before);
	await expect(page).toHaveURL(/slope=31\.5/);
	await page.reload();
	await expect.poll(() => quantity(page, 'slipMargin')).toBeGreaterThan(before);
	// A card out of sight follows once the inputs rest.
	const low = page.locator(card('sitting-time'));
	await expect(low.locator('svg')).toHaveAttribute('aria-label', /where you are/);
});

test('an edge that needs no friction says what to do, and the board comes back', async ({
	page
}) => {
	await page.goto('mechanisms/?v=1&slope=-5');
	await expect(page.getByText('no friction is needed')).toBeVisible();
	await expect(page.locator('.board svg')).toHaveCount(0);
	await page.locator('summary', { hasText: 'Your set-up' }).click();
	await page.getByRole('textbox', { name: 'Hold slope' }).fill('25');
	await expect(page.locator('.board svg')).toHaveCount(19);
});

test('extremes of every number leave finite words and pictures', async ({ page }) => {
	test.setTimeout(180_000);
	await page.goto('mechanisms/');
	for (const one of await page.locator('main details > summary').all()) await one.click();
	const faults = await page.evaluate(async () => {
		const faults: string[] = [];
		const frame = () => new Promise((done) => requestAnimationFrame(done));
		const ids = [...document.querySelectorAll<HTMLInputElement>('input[type="range"]')];
		for (const { id } of ids) {
			for (const end of ['min', 'max', ''] as const) {
				const slider = document.getElementById(id) as HTMLInputElement;
				const value = end === '' ? slider.defaultValue : slider[end];
				slider.scrollIntoView();
				await frame();
				slider.value = value;
				slider.dispatchEvent(new Event('input', { bubbles: true }));
				await frame();
				const words = document.querySelector('main')!.innerText;
				const paths = [...document.querySelectorAll('main svg path')];
				const bad = /NaN|Infinity|undefined/;
				if (bad.test(words)) faults.push(`${id} at ${end}: words`);
				if (paths.some((path) => bad.test(path.getAttribute('d') ?? ''))) {
					faults.push(`${id} at ${end}: paths`);
				}
			}
		}
		return faults;
	});
	expect(faults).toEqual([]);
});
