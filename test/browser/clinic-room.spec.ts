import { expect, test } from './fixtures.ts';

test('a room hangs: caps hold, outcomes are compared in pairs, and a reload brings them back', async ({
	page
}) => {
	await page.goto('clinic/room/');
	const first = page.getByRole('row').nth(1);
	await expect(first).toContainText('not marked 18 or over');
	await page.getByLabel('Person 1 is 18 or over and unhurt').check();
	await expect(first).toContainText('masses not known yet');
	await page.getByLabel('Person 1: body mass').fill('seventy');
	await page.getByLabel('Person 1: body mass').blur();
	await expect(first.getByRole('alert')).toHaveText('takes 20 to 250 kg');
	await expect(page.getByLabel('Person 1: body mass')).toHaveValue('seventy');
	await page.getByLabel('Person 1: body mass').fill('70');
	await page.getByLabel('Person 1: heaviest net load held').fill('60');
	await page.getByLabel('Person 1: heaviest net load held').blur();
	await expect(first).toContainText('above 1.10 × what was held');
	await page.getByLabel('Person 1: heaviest net load held').fill('67');
	await page.getByLabel('Person 1: heaviest net load held').blur();
	await expect(first).toContainText(/heavy, 73\.7\skg \(lowered\)/);
	await first.getByRole('combobox').first().selectOption('pain');
	await expect(first).toContainText('not after what happened before');
	await expect(page.getByText('Outcomes are entered, so the plan stands still')).toBeVisible();
	await page.reload();
	await expect(first.getByRole('combobox').first()).toHaveValue('pain');
});

test('the table version asks the same, and says what may be said', async ({ page }) => {
	await page.goto('clinic/room/');
	await page.getByText('at tables: a weighted block').click();
	await expect(page.getByText('18 or over, unhurt')).toHaveCount(0);
	for (let person = 1; person <= 8; person++) {
		const [light, heavy] = person === 8 ? ['held', 'slipped'] : ['slipped', 'held'];
		await page.getByLabel(`Person ${person}, light: how it ended`).selectOption(light);
		await page.getByLabel(`Person ${person}, heavy: how it ended`).selectOption(heavy);
	}
	await expect(page.getByText('7 stayed only heavy, 1 only light')).toBeVisible();
	await expect(page.getByText('That is uncommon, not rare')).toBeVisible();
	const chance = page.locator('data[data-quantity="exact"]').first();
	await expect(chance).toHaveAttribute('value', '0.0703125');

	await page.getByRole('link', { name: 'Print this plan' }).click();
	await expect(page.getByText('shuffle number 1, at tables')).toBeVisible();
	const sheet = page.locator('.paper-sheet');
	await expect(sheet.getByRole('row')).toHaveCount(13);
	await expect(sheet).toContainText('0.5 kg, 1 kg, 2 kg; the board stands at 25°');
});

test('thirty people take two session sheets, each order equally often', async ({ page }) => {
	await page.goto('clinic/room/');
	await page.getByLabel('People', { exact: true }).fill('30');
	await page.getByLabel('People', { exact: true }).blur();
	await expect(page.getByRole('row')).toHaveCount(31);
	await page.goto('clinic/session/');
	await expect(page.locator('.paper-sheet')).toHaveCount(2);
	const orders = await page
		.locator('.paper-sheet tbody tr')
		.evaluateAll((rows) =>
			rows.map((row) => [...row.querySelectorAll('.go')].map((cell) => cell.textContent).join())
		);
	expect(orders).toHaveLength(30);
	const kinds = [...new Set(orders)];
	const counts = kinds.map((kind) => orders.filter((order) => order === kind).length);
	expect(counts).toEqual([5, 5, 5, 5, 5, 5]);
	const pdf = await page.pdf({ preferCSSPageSize: true });
	expect(pdf.toString('latin1').match(/\/Type\s*\/Page(?!s)/g)).toHaveLength(2);
});

test('a set-up sheet says its link, draws it as a code, and prints on one page', async ({
	page
}) => {
	await page.goto('clinic/set-up/?v=1&slope=20&law=constant&mu=0.64');
	const sheet = page.locator('.paper-sheet');
	await expect(sheet.getByRole('img', { name: /QR code/ })).toBeVisible();
	await expect(sheet).toContainText(/\?v=1&slope=20&law=constant&mu=0\.64/);
	await expect(sheet).toContainText('slope of the hold 20°');
	const pdf = await page.pdf({ preferCSSPageSize: true });
	expect(pdf.toString('latin1').match(/\/Type\s*\/Page(?!s)/g)).toHaveLength(1);
	// A set-up that cannot be computed is said, and the last good one stays on the sheet.
	await page.goto('clinic/set-up/?v=1&edge=21&padLength=15');
	await expect(page.getByText('There is no figure to print for it')).toBeVisible();
	await expect(sheet).toBeVisible();
});
