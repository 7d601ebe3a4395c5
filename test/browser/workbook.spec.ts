import { gzipSync } from 'node:zlib';
import { expect, test } from './fixtures.ts';

test('a student solves, changes and shares a published problem', async ({ page }) => {
	// OpenStax, University Physics volume 1, example 6.10: 20.0 kg crate, 0.700 and 0.600, g 9.80.
	await page.goto('workbook/');
	await page.getByRole('link', { name: 'Block on a level floor' }).click();
	await expect(page.getByRole('heading', { level: 1 })).toHaveText('Block on a level floor');
	await page.getByRole('button', { name: 'Empty all fields' }).click();
	await page.getByRole('textbox', { name: 'Mass', exact: true }).fill('20');
	await page.getByRole('textbox', { name: 'Static friction coefficient' }).fill('0,700');
	await page.getByRole('textbox', { name: 'Kinetic friction coefficient' }).fill('0.600');
	await page.getByRole('textbox', { name: 'Push or pull' }).fill('0.18 kN');
	await page.getByText('9.8', { exact: true }).click();
	await page.getByRole('combobox', { name: 'Asked' }).selectOption('friction');
	await expect(page.locator('data[data-quantity="friction"]')).toHaveText('118 N');
	await expect(page.locator('[data-regime]')).toHaveText('It slides.');
	await expect(page.locator('svg text', { hasText: 'weight 196 N' })).toBeVisible();
	await expect(page).toHaveURL(/v=1&a=1&ask=friction&mass=20/);
	await page.reload();
	await expect(page.getByRole('textbox', { name: 'Push or pull' })).toHaveValue('0.18 kN');
	await expect(page.locator('data[data-quantity="friction"]')).toHaveText('118 N');
});

test('bad input names the given at fault and keeps the drawing', async ({ page }) => {
	await page.goto('workbook/incline/?v=1&a=1&ask=holdForce&mass=10&slope=40&muStatic=0.3');
	await expect(page.locator('data[data-quantity="holdForce"]')).toBeVisible();
	await page.getByRole('textbox', { name: 'Slope', exact: true }).fill('100');
	await expect(page.getByText('The slope is 100°; it must lie between 0° and 90°')).toBeVisible();
	await page.getByRole('textbox', { name: 'Mass', exact: true }).fill('20 N');
	await expect(page.getByRole('alert')).toContainText('measures a force');
	await expect(page.getByText('keeps the last numbers that could be drawn')).toBeVisible();
});

test('the answer check agrees, names a slip with its step, or says that none matches', async ({
	page
}) => {
	await page.goto('workbook/incline/?v=1&a=1&ask=normal&mass=10&slope=25&gravity=9.81');
	const box = page.getByRole('textbox', { name: /Check your own answer/ });
	const says = page.locator('[data-verdict]');
	await box.fill('88.9');
	await box.press('Enter');
	await expect(says).toContainText('agrees with the right answer');
	// 98.1 sin 25° = 41.459 N.
	await box.fill('41.46 N');
	await box.press('Enter');
	await expect(says).toHaveAttribute('data-verdict', 'slip');
	await expect(says).toContainText('sine was taken for the cosine');
	await expect(says.locator('.katex').first()).toBeVisible();
	await box.fill('71.3');
	await box.press('Enter');
	await expect(says).toContainText('none of the common slips');
	await expect(says).not.toContainText(/^\s*wrong/i);
});

test('the working opens line by line and what would change the regime is said', async ({
	page
}) => {
	await page.goto('workbook/incline/?v=1&a=1&ask=friction&mass=10&slope=20&muStatic=0.5&force=0');
	await page.getByText('Show the working').click();
	await expect(page.locator('ol .katex-display').nth(3)).toBeVisible();
	await page.getByText('What would change what happens?').click();
	await expect(page.getByText(/Once the slope rises past 26\.6°, it slides/)).toBeVisible();
});

test('a published problem opens in its family with the same answer', async ({ page }) => {
	await page.goto('workbook/published/');
	await page.getByLabel('Show').selectOption('differs');
	await expect(page.getByText('printed 1000 N')).toBeVisible();
	await page.getByLabel('Show').selectOption('level-floor');
	await page.getByRole('link', { name: 'Greatest static friction' }).first().click();
	// The list shows printed answers of its own until the family's page is there.
	await page.waitForURL(/level-floor\//);
	await expect(page.locator('data[data-quantity="frictionLimit"]')).toHaveText('137 N');
});

test('practice: the same link makes the same problem; hints come in steps; answers stand apart', async ({
	page
}) => {
	await page.goto('workbook/practice/?v=1&family=ladder&seed=7');
	const statement = page.locator('.statement');
	await expect(statement).toContainText('ladder');
	const first = await statement.textContent();
	await page.getByRole('button', { name: 'Next problem' }).click();
	await expect(statement).not.toHaveText(first!);
	await page.goto('workbook/practice/?v=1&family=ladder&seed=7');
	await expect(statement).toHaveText(first!);
	await page.getByRole('button', { name: /Give me a hint/ }).click();
	await expect(page.getByText('Draw each body by itself')).toBeVisible();
	await page.getByRole('button', { name: /sheet of six/ }).click();
	await expect(page.getByRole('heading', { name: /Answers to problems 7 to 12/ })).toBeVisible();
	expect(
		await page.locator('.answers').evaluate((element) => {
			const rules = [...document.styleSheets].flatMap((sheet) => [...sheet.cssRules]);
			const print = rules.filter(
				(rule): rule is CSSMediaRule =>
					rule instanceof CSSMediaRule && rule.media.mediaText === 'print'
			);
			return print.some((media) =>
				[...media.cssRules].some(
					(rule) =>
						rule instanceof CSSStyleRule &&
						rule.style.breakBefore === 'page' &&
						element.matches(rule.selectorText)
				)
			);
		})
	).toBe(true);
});

test('bench data: bad rows are named, the law is said plainly and opens in Explore', async ({
	page
}) => {
	await page.goto('workbook/bench/');
	// In proportion, coefficient 0.4, with small scatter made up for this test.
	const rows = '2 0.81\n4 1.59\n8 3.21\noops\n12 4.79\n16 6.41';
	await page.getByLabel('Type or paste rows').fill(rows);
	await expect(page.getByText(/Row 4 \(“oops”\)/)).toBeVisible();
	await expect(page.locator('[data-supported="proportional"]')).toContainText('0.4');
	await page.getByRole('link', { name: 'Open this law in Explore' }).first().click();
	await expect(page.getByRole('textbox', { name: 'Friction coefficient' })).toHaveValue(/^0\.4/);
});

test('a misconception’s case moves by keyboard and opens in its family', async ({ page }) => {
	await page.goto('workbook/misconceptions/');
	const part = page.locator('#heavier-slides');
	const angle = part.locator('data[data-quantity="reposeAngle"]');
	const before = await angle.textContent();
	await part.getByRole('slider').press('End');
	await expect(part.locator('label strong')).toHaveText('100 kg');
	await expect(angle).toHaveText(before!);
	await part.getByRole('link', { name: 'Open this case' }).click();
	await expect(page.getByRole('textbox', { name: 'Mass', exact: true })).toHaveValue('100');
});

for (const path of [
	'',
	...['level-floor/', 'incline/', 'connected-blocks/', 'ladder/', 'tipping/', 'wedge/'],
	...['belt/', 'pressing/', 'hang/'],
	'published/',
	'misconceptions/',
	'tables/',
	'practice/',
	'bench/'
]) {
	test(`workbook/${path} needs at most 100 kB of script`, async ({ page, request }) => {
		await page.goto(`workbook/${path}`);
		await page.waitForLoadState('networkidle');
		// What the page itself asked for; the service worker fetches the rest for later.
		const scripts = await page.evaluate(() =>
			performance
				.getEntriesByType('resource')
				.map(({ name }) => name)
				.filter((name) => name.endsWith('.js') && !name.includes('service-worker'))
		);
		let bytes = 0;
		for (const script of new Set(scripts))
			bytes += gzipSync(await (await request.get(script)).body()).length;
		expect(bytes).toBeGreaterThan(10_000);
		expect(bytes).toBeLessThanOrEqual(100 * 1024);
	});
}
