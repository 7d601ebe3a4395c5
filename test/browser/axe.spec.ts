import AxeBuilder from '@axe-core/playwright';
import { expect, pages, test } from './fixtures.ts';

for (const path of pages) {
	for (const theme of ['light', 'dark'] as const) {
		for (const width of [390, 1440]) {
			test(`/${path} has nothing for axe to find, ${theme}, ${width} px`, async ({ page }) => {
				// Some hundred facts and formulas are a long read for axe too.
				test.slow(path.startsWith('sources/'));
				await page.setViewportSize({ width, height: width === 390 ? 844 : 900 });
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
}
