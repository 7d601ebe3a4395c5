import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { expect, test } from './fixtures.ts';

async function filled(page: Page, loads: readonly string[]) {
	await page.goto('trials/plan/');
	await page.getByLabel('Person', { exact: true }).fill('Ada');
	await page.getByLabel('Body mass in the clothes worn').fill('70');
	await page.getByLabel('This person is an adult').check();
	await page.getByLabel('Hold', { exact: true }).fill('Board');
	await page.getByLabel('Name of the grip').fill('Open grip');
	for (const [place, load] of loads.entries()) {
		await page.getByLabel(`Net load ${place + 1}`).fill(load);
	}
	await page.getByLabel('Best guess').fill('72');
	await page.getByLabel('Never more than').fill('66');
}

/** Net load and rope side of the lines after the warm-up, as they stand on the sheet. */
const lines = async (page: Page) =>
	(
		await page.getByRole('region', { name: 'The plan, line by line' }).locator('tbody tr').all()
	).reduce(
		async (before, row) => {
			const all = await before;
			const number = (await row.locator('th').textContent())!.trim();
			if (number.startsWith('w')) return all;
			const cells = await row.locator('td').allTextContents();
			return [...all, cells.slice(0, 2).map((cell) => cell.trim().replace('\u00a0', ' '))];
		},
		Promise.resolve([] as string[][])
	);

test('a plan once kept is seen again, with its seed and every line, and printed again', async ({
	page
}) => {
	await filled(page, ['40', '60']);
	await page.getByLabel('Seed of the shuffle').fill('4711');
	await expect(page.getByText(/Seed 4711\./)).toBeVisible();
	await expect(page.getByText(/^19 trials after 7 warm-ups/)).toBeVisible();
	const before = await lines(page);
	expect(before).toHaveLength(19);
	// The check load at the start, in the middle and at the end.
	expect(before.flatMap(([load], place) => (load!.includes('check') ? [place] : []))).toEqual([
		0, 9, 18
	]);
	await page.getByRole('button', { name: 'Keep the plan and open its sheet' }).click();
	await page.getByRole('link', { name: 'This plan, on paper' }).click();
	await expect(page.getByRole('heading', { level: 1 })).toHaveText(/^Ada, Board, Open grip: /);
	await expect(page.getByText(/Seed 4711\./)).toBeVisible();
	expect(await lines(page)).toEqual(before);
	const { violations } = await new AxeBuilder({ page }).analyze();
	expect(violations.map(({ id }) => id)).toEqual([]);

	// From the notebook as well, after a reload, with a box to tick for each outcome of each line.
	await page.goto('trials/notebook/');
	await page.getByText('19 trials, seed 4711').click();
	await page.getByRole('link', { name: 'See it and print its sheet' }).click();
	await expect(page.getByText(/Seed 4711\./)).toBeVisible();
	await page.reload();
	await expect(page.getByText(/Seed 4711\./)).toBeVisible();
	await page.evaluate(() => (window.print = () => void (document.title = 'printed')));
	await page.getByRole('button', { name: 'Print the sheet' }).click();
	expect(await page.title()).toBe('printed');
	await page.emulateMedia({ media: 'print' });
	await expect(page.locator('tbody .box')).toHaveCount(26 * 5);
	await expect(page.locator('tbody .box').last()).toBeVisible();
	await expect(page.getByRole('button', { name: 'Print the sheet' })).toBeHidden();
	await page.emulateMedia({ media: 'screen' });
	await page.getByRole('button', { name: 'Open its trial sheet' }).click();
	await expect(page.getByRole('region', { name: 'Next: Warm-up 1' })).toBeVisible();

	await page.goto('trials/plan/?kept=nowhere');
	await expect(page.getByRole('heading', { name: 'This plan is not here' })).toBeVisible();
});

test('A B B A: two hangs against each other, four by four', async ({ page }) => {
	await filled(page, ['40', '60']);
	await page.getByLabel('toward wall').uncheck();
	await page.getByText('A B B A', { exact: true }).click();
	await page.getByLabel('Fours').fill('2');
	await page.getByLabel('Repeat one load').uncheck();
	await expect(page.getByText(/^8 trials after 7 warm-ups/)).toBeVisible();
	const loads = (await lines(page)).map(([load]) => load);
	expect([
		['40 kg', '60 kg', '60 kg', '40 kg', '60 kg', '40 kg', '40 kg', '60 kg'],
		['60 kg', '40 kg', '40 kg', '60 kg', '40 kg', '60 kg', '60 kg', '40 kg']
	]).toContainEqual(loads);
});

test('up and down on paper: the first load, lines to fill in, and the rule', async ({ page }) => {
	await filled(page, []);
	await page.getByText('up and down', { exact: true }).click();
	await page.getByLabel('First net load').fill('40');
	await page.getByLabel('Trials', { exact: true }).fill('6');
	await page.getByLabel('Repeat one load').uncheck();
	await expect(page.getByText(/^6 trials after \d warm-ups/)).toBeVisible();
	expect((await lines(page)).map(([load]) => load)).toEqual([
		'40 kg',
		...Array.from({ length: 5 }, () => '……')
	]);
	await expect(
		page.getByText(
			/after “held” the load times\s+1\.06;\s+after “fingers opened”\s+or “stopped” the load divided/
		)
	).toBeVisible();
});

test('another grip chosen in a plan leaves the focus where it was chosen', async ({ page }) => {
	await page.goto('trials/');
	await page.getByRole('button', { name: 'Load the demo' }).click();
	await page.getByRole('link', { name: 'Plan a session' }).click();
	const grip = page.getByRole('combobox', { name: 'Grip', exact: true });
	await expect(page.getByLabel('Net load 1')).toHaveValue('40');
	await grip.focus();
	await grip.selectOption('a new one …');
	await expect(grip).toBeFocused();
	await expect(page.getByLabel('Name of the grip')).toHaveValue('');
	await grip.selectOption('Demo: open grip');
	await expect(grip).toBeFocused();
	await expect(page.getByLabel('Net load 1')).toHaveValue('40');
});
