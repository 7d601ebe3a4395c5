import { expect, pages, test } from './fixtures.ts';

// A window of 1280 × 1024 at 400 %: what then is lost, or reached only by scrolling sideways.
const zoomed = { width: 320, height: 256 };

for (const path of pages) {
	test(`/${path} loses nothing at 400 %`, async ({ page }) => {
		await page.setViewportSize(zoomed);
		await page.goto(path);
		await page.waitForLoadState('networkidle');
		for (const fold of await page.locator('main details > summary').all()) await fold.click();
		const lost = await page.evaluate(() => {
			const wide = document.documentElement.clientWidth;
			const found: string[] = [];
			const name = (element: Element) =>
				`${element.localName}.${element.getAttribute('class') ?? ''} “${(element.textContent ?? '').trim().slice(0, 40)}”`;
			/** Whether some box around it scrolls sideways, so that it can be reached. */
			const reachable = (element: Element) => {
				for (let box: Element | null = element; box; box = box.parentElement) {
					if (/auto|scroll/.test(getComputedStyle(box).overflowX)) return true;
				}
				return false;
			};
			/** Where its letters end; a formula's invisible struts and MathML do not count. */
			const lowest = (element: Element) => {
				const walk = document.createTreeWalker(element, NodeFilter.SHOW_TEXT);
				let bottom = -Infinity;
				while (walk.nextNode()) {
					const { parentElement } = walk.currentNode;
					if (parentElement?.closest('svg, .katex-mathml, .visually-hidden, .vlist-s')) continue;
					if (!walk.currentNode.textContent?.trim()) continue;
					const range = document.createRange();
					range.selectNodeContents(walk.currentNode);
					// A line of letters is taller than its ink.
					const { bottom: end, height } = range.getBoundingClientRect();
					bottom = Math.max(bottom, end - height * 0.2);
				}
				return bottom;
			};
			if (document.documentElement.scrollWidth > wide) found.push('the page scrolls sideways');
			for (const element of document.querySelectorAll('body *')) {
				if (element.closest('svg, select, .visually-hidden, .katex, .skip, [popover]')) continue;
				const style = getComputedStyle(element);
				if (style.visibility === 'hidden' || style.display === 'none') continue;
				const box = element.getBoundingClientRect();
				if (box.width === 0 || box.height === 0) continue;
				if ((box.right > wide + 1 || box.left < -1) && !reachable(element)) {
					found.push(`beyond the edge: ${name(element)}`);
				}
				if (!element.textContent?.trim() || element.ariaLive) continue;
				const hides = (overflow: string) => /hidden|clip/.test(overflow);
				if (
					(hides(style.overflowX) && element.scrollWidth > element.clientWidth + 1) ||
					(hides(style.overflowY) && lowest(element) > box.bottom + 1)
				) {
					found.push(`cut off: ${name(element)}`);
				}
			}
			return found;
		});
		expect(lost).toEqual([]);
	});
}
