import { pages as sitePages, subPages } from '../../src/routes/pages.ts';
import { test as base, expect } from '@playwright/test';

/** Every test fails on a console error or warning, a failed request, a bad status or another host. */
export const test = base.extend<{ clean: void }>({
	clean: [
		async ({ page, baseURL }, use) => {
			const faults: string[] = [];
			page.on('console', (message) => {
				if (['error', 'warning'].includes(message.type())) faults.push(message.text());
			});
			page.on('pageerror', (error) => faults.push(error.message));
			page.on('requestfailed', (request) => {
				// A page that is left stops its requests; that is no fault of theirs.
				if (request.failure()?.errorText !== 'net::ERR_ABORTED') {
					faults.push(`${request.url()} ${request.failure()?.errorText}`);
				}
			});
			page.on('response', (response) => {
				if (response.status() >= 400) faults.push(`${response.status()} ${response.url()}`);
			});
			page.on('request', (request) => {
				const { protocol, host } = new URL(request.url());
				if (protocol.startsWith('http') && host !== new URL(baseURL!).host) {
					faults.push(`another host is asked: ${request.url()}`);
				}
			});
			await use();
			expect(faults).toEqual([]);
		},
		{ auto: true }
	],
	/** A person is there: Explore's pictures come alive at the first sign of one. */
	page: async ({ page }, use) => {
		const goto = page.goto.bind(page);
		page.goto = async (url, options) => {
			const response = await goto(url, options);
			// Who waits for the first bytes alone has something else in mind.
			if (options?.waitUntil === 'commit') return response;
			const asleep = page.locator('[data-live="false"]');
			for (let x = 1; (await asleep.count()) > 0; x = (x % 9) + 1) {
				await page.mouse.move(x, 1);
				await page.waitForTimeout(30);
			}
			return response;
		};
		await use(page);
	}
});

export { expect };

/** The pages of the site, as paths under its folder. */
export const pages = [...sitePages, ...subPages].map(({ path }) => path.slice(1));
