import { expect, pages, test } from './fixtures.ts';

for (const path of pages) {
	test(`/${path} has a strict policy, no inline handlers and no absolute addresses`, async ({
		page,
		request
	}) => {
		const html = await (await request.get(path)).text();
		expect(html).toContain('content-security-policy');
		expect(html).toMatch(/default-src 'none'/);
		expect(html).not.toMatch(/<[^>]+\son\w+=/i);
		expect(html).not.toMatch(/(?:src|href)="\//);
		await page.goto(path);
		expect(await page.title()).not.toBe('');
	});
}
