import AxeBuilder from '@axe-core/playwright';
import { expect, pages, test } from './fixtures.ts';

// Both themes and both widths, paired crosswise.
const views = [
	{ theme: 'light', width: 390, height: 844 },
	{ theme: 'dark', width: 1440, height: 900 }
] as const;

for (const path of pages) {
	for (const { theme, width, height } of views) {
		test(`/${path} has nothing for axe to find, ${theme}, ${width} px`, async ({ page }) => {
			// Some hundred facts and formulas are a long read for axe too.
			test.slow();
			await page.setViewportSize({ width, height });
			await page.emulateMedia({ colorScheme: theme });
			await page.goto(path);
			await page.waitForLoadState('networkidle');
			for (const fold of await page.locator('details > summary').all()) await fold.click();
			const { violations } = await new AxeBuilder({ page }).analyze();
			expect(
				violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' | ')}`)
			).toEqual([]);
			const sideways = await page.evaluate(
				() => document.documentElement.scrollWidth - document.documentElement.clientWidth
			);
			expect(sideways).toBeLessThanOrEqual(0);
		});
	}
}
