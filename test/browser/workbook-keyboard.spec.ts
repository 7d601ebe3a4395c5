import { expect, test } from './fixtures.ts';
import { subPages } from '../../src/routes/pages.ts';
import type { Page } from '@playwright/test';

/** Goes from control to control by Tab alone until one with this name has the focus. */
async function tabTo(page: Page, name: RegExp, most = 90): Promise<void> {
	for (let step = 0; step < most; step += 1) {
		await page.keyboard.press('Tab');
		const found = await page.evaluate(() => {
			const at = document.activeElement as HTMLElement | null;
			if (!at) return '';
			const labels = (at as HTMLInputElement).labels;
			const text = labels?.length ? [...labels].map((each) => each.textContent).join(' ') : '';
			return (text || at.getAttribute('aria-label') || at.textContent || '')
				.replace(/\s+/g, ' ')
				.trim();
		});
		if (name.test(found)) return;
	}
	throw new Error(`no control named ${name} is reached by Tab`);
}

async function typeInto(page: Page, name: RegExp, text: string): Promise<void> {
	await tabTo(page, name);
	await page.keyboard.press('ControlOrMeta+a');
	await page.keyboard.type(text);
}

test('the whole task by keyboard alone: family, numbers, another unknown, working, check, practice', async ({
	page
}) => {
	await page.goto('workbook/');
	await tabTo(page, /^Block on an incline$/);
	await page.keyboard.press('Enter');
	await expect(page.getByRole('heading', { level: 1 })).toHaveText('Block on an incline');

	// The asked quantity by its letters, in the list that a keyboard opens.
	await tabTo(page, /^Asked/);
	await page.keyboard.type('Normal force');
	await tabTo(page, /^Empty all fields$/);
	await page.keyboard.press('Enter');
	await typeInto(page, /^Mass$/, '12 kg');
	await typeInto(page, /^Slope$/, '30');
	await typeInto(page, /^Static friction coefficient$/, '0,7');
	await typeInto(page, /^Applied force$/, '0');
	// 12 · 9.80665 · cos 30° = 101.9 N.
	await expect(page.locator('data[data-quantity="normal"]')).toHaveText('102 N');

	await typeInto(page, /^Check your own answer/, '58.8');
	await page.keyboard.press('Enter');
	// The planted slip: 12 · 9.80665 · sin 30° = 58.84 N.
	await expect(page.locator('[data-verdict]')).toHaveAttribute('data-verdict', 'slip');
	await expect(page.locator('[data-verdict]')).toContainText('sine');
	await tabTo(page, /^Show the working/);
	await page.keyboard.press('Enter');
	await expect(page.locator('ol .katex-display').first()).toBeVisible();
	await tabTo(page, /^What would change what happens/);
	await page.keyboard.press('Enter');
	await expect(page.getByText(/Once the slope rises past 35°, it slides/)).toBeVisible();

	// Another unknown of the same problem: the slope that the normal force tells.
	await page.evaluate(() => (document.activeElement as HTMLElement).blur());
	await page.goto(
		'workbook/incline/?v=1&a=1&ask=slope&mass=12&muStatic=0.7&force=0&normal=101.922'
	);
	await expect(page.locator('data[data-quantity="slope"]').first()).toHaveText('30°');

	await page.goto('workbook/');
	await tabTo(page, /^Practice$/);
	await page.keyboard.press('Enter');
	await expect(page.getByRole('heading', { level: 1 })).toHaveText('Practice');
	await tabTo(page, /^Family/);
	await page.keyboard.type('Ladder');
	const statement = page.locator('.statement');
	await expect(statement).toContainText(/ladder|plank|rod/i);
	await tabTo(page, /^Give me a hint/);
	await page.keyboard.press('Enter');
	await expect(page.getByText('Draw each body by itself')).toBeVisible();
	await tabTo(page, /^Show the answer/);
	await page.keyboard.press('Enter');
	await expect(page.locator('data[data-quantity]').first()).toBeVisible();
});

for (const { path } of [
	{ path: '/workbook/' },
	...subPages.filter((each) => each.path.startsWith('/workbook/'))
])
	test(`${path} at 400 % zoom (320 px wide): nothing lost, no sideways scroll`, async ({
		page
	}) => {
		await page.setViewportSize({ width: 1280, height: 1024 });
		await page.goto(path.slice(1));
		await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
		const controls = () =>
			page
				.locator('main :is(a, button, input, select, textarea, summary)')
				.evaluateAll((all) => all.filter((each) => each.checkVisibility()).length);
		const wide = await controls();
		await page.setViewportSize({ width: 320, height: 256 });
		expect(wide).toBeGreaterThan(3);
		expect(await controls()).toBe(wide);
		await page.locator('main details').evaluateAll((all) => {
			for (const fold of all as HTMLDetailsElement[]) fold.open = true;
		});
		if (/workbook\/(?!published|misc|tables|practice|bench)./.test(path))
			await expect(page.locator('ol .katex').first()).toBeVisible();
		const report = await page.evaluate(() => {
			const page = document.documentElement;
			// A wide table or formula scrolls in a frame of its own that the keyboard reaches.
			const inFrame = (each: Element) => {
				for (let at: Element | null = each; at && at !== document.body; at = at.parentElement) {
					const style = getComputedStyle(at);
					if (['auto', 'scroll'].includes(style.overflowX)) return true;
					if (style.overflow === 'hidden' || style.clipPath !== 'none') return true;
				}
				return false;
			};
			const out = [...document.querySelectorAll('main *')]
				.filter((each) => each.checkVisibility() && !inFrame(each) && !each.closest('svg'))
				.filter((each) => {
					const box = each.getBoundingClientRect();
					return box.width > 0 && (box.right > page.clientWidth + 1 || box.left < -1);
				})
				.map((each) => `${each.tagName} ${each.textContent?.trim().slice(0, 40)}`);
			return { over: page.scrollWidth - page.clientWidth, out: out.slice(0, 5) };
		});
		expect(report).toEqual({ over: 0, out: [] });
	});
