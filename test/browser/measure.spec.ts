import type { Page } from '@playwright/test';
import { expect, test } from './fixtures.ts';

/** A phone's sensor, as the browser's own tools emulate it. */
async function phone(page: Page) {
	const session = await page.context().newCDPSession(page);
	return (beta: number, gamma = 0) =>
		session.send('DeviceOrientation.setDeviceOrientationOverride', { alpha: 0, beta, gamma });
}

/** To a hundredth, which is finer than the sensor. */
const degrees = (radians: string | null) => Math.round((Number(radians) * 18_000) / Math.PI) / 100;

test('slope by the phone’s level, with its zero taken off, goes to Explore', async ({ page }) => {
	await page.goto('measure/');
	const lay = await phone(page);
	await lay(1.5);
	await page.getByRole('button', { name: 'Use this phone’s level' }).click();
	await page.getByRole('button', { name: 'First reading' }).click();
	await expect(page.getByText('Now turn the phone half round')).toBeVisible({ timeout: 10_000 });
	await lay(-0.5);
	await page.getByRole('button', { name: 'Second, turned round' }).click();
	await expect(page.getByText(/Zero: the phone reads 0\.5° on a level surface/)).toBeVisible({
		timeout: 10_000
	});
	await lay(31.5);
	await page.getByRole('button', { name: 'Read the slope here' }).click();
	const slope = page.locator('data[data-quantity="slope"]');
	await expect(slope).toHaveText(/^31° ± /, { timeout: 10_000 });
	expect(degrees(await slope.getAttribute('value'))).toBe(31);
	await page.getByRole('link', { name: 'See it in Explore' }).click();
	await expect(page.getByRole('textbox', { name: 'Hold slope' })).toHaveValue('31');
});

test('several spots on a rounded hold, and the rope by the phone laid along it', async ({
	page
}) => {
	await page.goto('measure/');
	const lay = await phone(page);
	await lay(20);
	await page.getByRole('button', { name: 'Use this phone’s level' }).click();
	await page.getByRole('button', { name: 'Read the slope here' }).click();
	await expect(page.locator('data[data-quantity="slope"]')).toHaveCount(1, { timeout: 10_000 });
	await lay(35);
	await page.getByLabel('Spot', { exact: true }).fill('lower edge');
	await page.getByRole('button', { name: 'Read the slope here' }).click();
	await expect(page.locator('data[data-quantity="slope"]')).toHaveCount(2, { timeout: 10_000 });
	await expect(page.getByText(/^Slope 35° ± .* lower edge/)).toBeVisible();

	await page.getByText('Lean of the rope').click();
	await lay(84);
	await page.getByText('toward wall').click();
	await page.getByRole('button', { name: 'Phone lies along the rope: read it' }).click();
	const lean = page.locator('data[data-quantity="ropeLean"]');
	await expect(lean).toHaveText(/^6 ± /, { timeout: 10_000 });
	expect(degrees(await lean.getAttribute('value'))).toBe(-6);
});

test('everything works by typing alone', async ({ page }) => {
	await page.goto('measure/');
	await page.getByLabel('or type the slope below horizontal').fill('33,5');
	await page.getByRole('button', { name: 'Take it' }).click();
	await expect(page.locator('data[data-quantity="slope"]')).toHaveText('33.5°');

	await page.getByText('Lean of the rope').click();
	await page.getByLabel('offset from a plumb line').fill('100');
	await page.getByLabel('over a length of').fill('1000');
	await expect(page.locator('data[data-quantity="ropeLean"]')).toHaveText(/^5\.71 ± /);

	await page.getByText('Net load, by a scale').click();
	await page.getByLabel('Before the hang').fill('71.2');
	await page.getByLabel('In the hang', { exact: true }).fill('16.2');
	await page.getByLabel('After it, if read').fill('71.2');
	await expect(page.locator('data[data-quantity="netMass"]')).toHaveText(/^55.kg ± 0\.035/);

	await page.getByText('Efficiency of the pulley').click();
	await page.getByLabel('Pull that raises it').fill('12');
	await page.getByLabel('Pull that lowers it').fill('8.3');
	await expect(page.locator('data[data-quantity="efficiency"]')).toHaveText(/^0\.832 ± /);

	await page.getByText('Friction by tilting').click();
	await page.getByLabel('Go 1', { exact: true }).fill('32.62');
	await page.getByLabel('Go 2', { exact: true }).fill('32.62');
	await expect(page.locator('data[data-quantity="ratio"]')).toHaveText(/^0\.64 ± 0/);

	await page.getByText('Area of a fingertip').click();
	await page.getByLabel('Squares wholly inside').fill('200');
	await page.getByLabel('Squares cut by the edge').fill('60');
	await expect(page.locator('data[data-quantity="padArea"]')).toHaveText(/^230 ± 2\.4/);
});

test('a result goes to the session on the sheet', async ({ page }) => {
	await page.goto('trials/');
	await page.getByRole('button', { name: 'Load the demo' }).click();
	await page.getByRole('link', { name: 'Measure', exact: true }).first().click();
	await page.getByText('Lean of the rope').click();
	await page.getByLabel('offset from a plumb line').fill('100');
	await page.getByLabel('over a length of').fill('1000');
	await page.getByText('toward wall').click();
	await page.getByRole('button', { name: /^Put it on trial 28/ }).click();
	await page.getByLabel('or type the slope below horizontal').fill('31');
	await page.getByRole('button', { name: 'Take it' }).click();
	await page.getByRole('button', { name: 'Write it to Demo: slick board' }).click();
	await expect(page.getByText('Done: Write it to Demo: slick board.')).toBeVisible();
	await page.goto('trials/');
	await expect(page.getByText('rope leans 5.7°')).toBeVisible();
	await expect(page.getByText('rope toward the wall')).toBeVisible();
	await page.goto('trials/notebook/');
	await expect(page.getByText('slope 31°')).toBeVisible();
});

test('two results in a session’s note stay two lines when the note is edited', async ({ page }) => {
	await page.goto('trials/');
	await page.getByRole('button', { name: 'Load the demo' }).click();
	await page.getByRole('link', { name: 'Measure', exact: true }).first().click();
	await page.getByText('Friction by tilting').click();
	await page.getByLabel('Go 1', { exact: true }).fill('32');
	await page.getByLabel('Go 2', { exact: true }).fill('33');
	const write = page.getByRole('button', { name: 'Write it to the session’s note' });
	await write.click();
	await expect(page.getByText('Done: Write it to the session’s note.')).toBeVisible();
	await page.goto('trials/notebook/');
	await page
		.getByText(/^14 March 2026, /)
		.first()
		.click();
	const note = page.getByLabel('Note', { exact: true });
	await expect(note).toHaveValue(/\nTilt to slip: 32°; 33°/);
	await note.press('End');
	await note.press('Control+Home');
	await note.pressSequentially('Windy. ');
	const undo = page.getByRole('button', { name: /^Undo: / });
	const before = await undo.innerText();
	await note.blur();
	// Written once it can be undone: only then may the page go.
	await expect(undo).not.toHaveText(before);
	await page.reload();
	await page
		.getByText(/^14 March 2026, /)
		.first()
		.click();
	await expect(page.getByLabel('Note', { exact: true })).toHaveValue(
		/^Windy\. .*\nTilt to slip: 32°; 33°/
	);
});

test('a rope that leans is not called plumb', async ({ page }) => {
	await page.goto('measure/');
	await page.getByText('Lean of the rope').click();
	await page.getByText('plumb', { exact: true }).click();
	await page.getByLabel('offset from a plumb line').fill('100');
	await page.getByLabel('over a length of').fill('1000');
	await expect(page.getByText(/^It leans, so it is not plumb/)).toBeVisible();
	await expect(page.locator('data[data-quantity="ropeLean"]')).toHaveCount(0);
	await page.getByLabel('offset from a plumb line').fill('0');
	await expect(page.locator('data[data-quantity="ropeLean"]')).toHaveText(/^0 ± /);
});
