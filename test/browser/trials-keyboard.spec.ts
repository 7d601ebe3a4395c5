import { readFile } from 'node:fs/promises';
import type { Page } from '@playwright/test';
import { expect, test } from './fixtures.ts';

/** What has the focus, as far as somebody sees who uses no pointer. */
const focused = (page: Page) =>
	page.evaluate(() => {
		const at = document.activeElement as HTMLInputElement | null;
		if (!at || at === document.body) return { name: '', seen: false };
		const name = at.getAttribute('aria-label') ?? at.labels?.[0]?.innerText ?? at.innerText;
		// A hidden radio button is shown by its label.
		const shown = at.matches('.visually-hidden') ? at.closest('label')! : at;
		const { top, left, width, height } = shown.getBoundingClientRect();
		const over = document.elementFromPoint(left + width / 2, top + height / 2);
		const outlined = [shown, ...shown.querySelectorAll('span')].some(
			(one) => getComputedStyle(one).outlineStyle !== 'none'
		);
		return {
			name: name.trim().replace(/\s+/g, ' '),
			seen: outlined && over !== null && (shown.contains(over) || over.contains(shown))
		};
	});

/** Presses a key; what has the focus then must be in sight, and be what is expected. */
async function press(page: Page, key: string, then?: RegExp) {
	await page.keyboard.press(key);
	if (then) await expect.poll(async () => (await focused(page)).name).toMatch(then);
	// The page may still be laying out what the press before brought.
	const seen = { name: expect.any(String), seen: true };
	await expect.poll(() => focused(page), { message: `after ${key}` }).toEqual(seen);
	return (await focused(page)).name;
}

/** Walks by Tab until something of this name has the focus. */
async function walk(page: Page, to: RegExp, key: 'Tab' | 'Shift+Tab' = 'Tab') {
	for (let steps = 0; steps < 60; steps++) if (to.test(await press(page, key))) return;
	throw new Error(`${to} was not reached`);
}

for (const size of [
	{ width: 1440, height: 900 },
	{ width: 390, height: 700 }
]) {
	test(`a session by keyboard alone, ${size.width} × ${size.height}`, async ({ page }) => {
		await page.setViewportSize(size);
		await page.goto('trials/');
		await expect(page.getByRole('button', { name: 'Load the demo' })).toBeVisible();
		await walk(page, /^Load the demo/);
		// The whole page changes; the focus goes to its heading, not to nowhere.
		await press(page, 'Enter', /^Trial sheet/);

		await walk(page, /^Net load/);
		await page.keyboard.press('ControlOrMeta+A');
		await page.keyboard.type('45');
		await walk(page, /^held/);
		await press(page, 'Enter', /^held/);
		for (const [place, outcome] of ['slipped', 'fingers opened', 'stopped'].entries()) {
			await expect(page.getByRole('region', { name: `Next: Trial ${29 + place}` })).toBeVisible();
			// A second outcome within 400 ms counts as the same press.
			await page.waitForTimeout(450);
			expect(await press(page, 'Tab')).toBe(outcome);
			await press(page, 'Enter', new RegExp(`^${outcome}`));
		}
		await expect(page.getByRole('region', { name: 'Next: Trial 32' })).toBeVisible();
		await walk(page, /^other/, 'Shift+Tab');
		await press(page, 'Space', /^other/);

		// Corrected in place, asked about deleting it, kept after all.
		await walk(page, /^Trial 29: .*Correct it$/, 'Shift+Tab');
		await press(page, 'Enter', /^Trial 29: /);
		await walk(page, /^Note/);
		await page.keyboard.type('wet edge');
		await walk(page, /^Delete/);
		await press(page, 'Enter', /^Keep it/);
		await press(page, 'Enter', /^Delete/);
		await walk(page, /^Done/, 'Shift+Tab');
		await press(page, 'Enter', /^Trial 29: .*Correct it$/);

		await walk(page, /^Undo: Corrected trial 29/, 'Shift+Tab');
		await press(page, 'Enter', /^Undo: /);
		await walk(page, /^Do again/);
		// Nothing is left to be done again: its button goes, and the focus with it to the undo button.
		await press(page, 'Enter', /^Undo: Corrected trial 29/);

		await walk(page, /hang clock/);
		await press(page, 'Enter', /^Off the hold/);
		await press(page, 'Enter', /^Start the hang clock|^Clear/);

		await walk(page, /^Notebook, files/);
		await page.keyboard.press('Enter');
		await expect(page.getByRole('heading', { name: 'Notebook', exact: true })).toBeVisible();
		await walk(page, /^Download JSON/);
		const [file] = await Promise.all([page.waitForEvent('download'), page.keyboard.press('Enter')]);
		const { trials } = JSON.parse(await readFile((await file.path())!, 'utf8'));
		trials.sort((one: { order: number }, other: { order: number }) => one.order - other.order);
		expect(
			trials.slice(-4).map((one: Record<string, unknown>) => [one.loadKg, one.outcome, one.note])
		).toEqual([
			[45, 'held', ''],
			[45, 'slipped', 'wet edge'],
			[45, 'opened', ''],
			[45, 'stopped', '']
		]);
		await walk(page, /^Empty the notebook/);
		await press(page, 'Enter', /^Keep everything/);
		await press(page, 'Enter', /^Empty the notebook/);
	});
}
