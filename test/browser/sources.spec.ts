import { expect, test } from './fixtures.ts';

test('facts and works narrow while one types, without a reload', async ({ page }) => {
	await page.goto('sources/');
	await page.evaluate(() => Object.assign(window, { sameVisit: true }));
	const facts = page.locator('main section li:not([id^="source-"])');
	const works = page.locator('main li[id^="source-"]:visible');
	const all = await facts.count();
	expect(all).toBeGreaterThan(300);
	await page.getByRole('searchbox', { name: 'Find' }).fill('Schoffl crimp');
	await expect(page.getByRole('status').first()).toContainText(/^\s*\d+ of \d+ facts/);
	const few = await facts.count();
	expect(few).toBeGreaterThan(2);
	expect(few).toBeLessThan(40);
	await expect(facts.first()).toContainText(/crimp/i);
	await page.getByRole('combobox', { name: 'How it is known' }).selectOption('assumed');
	for (const text of await facts.allInnerTexts()) expect(text).toContain('assumed');
	await page.getByRole('searchbox', { name: 'Find' }).fill('zzzz');
	await expect(page.getByText('Nothing has all of these words: try fewer.')).toBeVisible();
	await expect(works).toHaveCount(0);
	await page.getByRole('searchbox', { name: 'Find' }).fill('');
	await page.getByRole('combobox', { name: 'How it is known' }).selectOption('any');
	await expect(facts).toHaveCount(all);
	await expect(works).not.toHaveCount(0);
	expect(await page.evaluate(() => 'sameVisit' in window)).toBe(true);
});

test('reached by a click, the works are fetched, and narrow too', async ({ page }) => {
	await page.goto('sources/formulas/');
	await page.locator('main a[href*="#source-"]').first().click();
	const works = page.locator('main li[id^="source-"]:visible');
	await expect(works.first()).toBeAttached();
	const all = await works.count();
	expect(all).toBeGreaterThan(100);
	await expect(page.locator('li:target')).toBeInViewport();
	await page.getByRole('searchbox', { name: 'Find' }).fill('tribology');
	await expect.poll(() => works.count()).toBeLessThan(all / 2);
	await expect(works.first()).toContainText(/tribology/i);
});

test('every pointer to a work leads to one', async ({ page }) => {
	for (const path of ['sources/', 'sources/formulas/', 'sources/checks/']) {
		await page.goto(path);
		const keys = await page
			.locator('main a[href*="#source-"]')
			.evaluateAll((links) => links.map((link) => (link as HTMLAnchorElement).hash.slice(1)));
		expect(keys.length, path).toBeGreaterThan(10);
		await page.goto('sources/');
		const lost = await page.evaluate(
			(ids) => ids.filter((id) => document.getElementById(id) === null),
			[...new Set(keys)]
		);
		expect(lost).toEqual([]);
	}
});

test('the navigation says where one is, and each page leads on', async ({ page }) => {
	await page.goto('');
	const here = page.getByRole('navigation', { name: 'Pages' }).locator('[aria-current]');
	await expect(here).toHaveText('Explore');
	await expect(
		page.getByText('Which loads can you hold on a slick, sloping hold')
	).toBeInViewport();
	const visited = new Set<string>();
	for (let step = 0; step < 20; step++) {
		const path = new URL(page.url()).pathname;
		if (visited.has(path)) break;
		visited.add(path);
		await page.locator('main .next a').click();
		await expect.poll(() => new URL(page.url()).pathname).not.toBe(path);
	}
	expect(visited.size).toBeGreaterThan(3);
	await page.goto('sources/checks/');
	await expect(here).toHaveText('Sources and cautions');
	await expect(
		page.getByText(/\d+ passed, 0 failed|No whole run has been written down/)
	).toBeVisible();
});

test('a word on Explore leads to its meaning, and each word there has one', async ({ page }) => {
	await page.goto('');
	await page.getByRole('link', { name: 'slip margin', exact: true }).click();
	await expect(page.locator('#slip-margin')).toBeInViewport();
	await expect(page.locator('#slip-margin')).toContainText('not a margin to injury');
	const lost = await page
		.locator('main dl a[href^="#"]')
		.evaluateAll((links) =>
			links
				.map((link) => (link as HTMLAnchorElement).hash.slice(1))
				.filter((id) => document.getElementById(id) === null)
		);
	expect(lost).toEqual([]);
	await page.goto('');
	for (const link of await page.locator('.words a').all()) {
		const id = new URL((await link.getAttribute('href'))!, page.url()).hash.slice(1);
		const html = await (await page.request.get('glossary/')).text();
		expect(html).toContain(`id="${id}"`);
	}
});
