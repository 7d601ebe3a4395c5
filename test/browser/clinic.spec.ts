import AxeBuilder from '@axe-core/playwright';
import type { BrowserContext, Page } from '@playwright/test';
import { lessons } from '../../src/lessons/index.ts';
import { expect, test } from './fixtures.ts';

/** Pages in a PDF, counted from its page objects. */
const pagesOf = (pdf: Buffer) => pdf.toString('latin1').match(/\/Type\s*\/Page(?!s)/g)?.length ?? 0;
/** Width and height of each page, points. */
const boxesOf = (pdf: Buffer) =>
	[...pdf.toString('latin1').matchAll(/\/MediaBox\s*\[\s*0 0 ([\d.]+) ([\d.]+)/g)].map(
		([, width, height]) => [Math.round(Number(width)), Math.round(Number(height))]
	);

async function keptOffline(page: Page, context: BrowserContext) {
	await page.goto('clinic/');
	await expect(page.getByText('Ready to use offline')).toBeVisible();
	await context.setOffline(true);
}

const heading = (page: Page) => page.locator('dialog h2');

test('lesson b is taught end to end by keyboard with no network, and its handouts printed', async ({
	page,
	context
}) => {
	await page.setViewportSize({ width: 1280, height: 720 });
	await keptOffline(page, context);
	await page.goto('clinic/rope/present/');
	await expect(heading(page)).toHaveText('Not quite plumb');
	// Nothing on the first screen gives the answer away.
	await expect(page.locator('dialog')).not.toContainText('past the friction limit');

	// Predict and tally: a clicker's key, then a digit for each raised hand.
	await page.keyboard.press('PageDown');
	await expect(heading(page)).toContainText('What happens to the hand?');
	for (const digit of ['1', '2', '2', '2', '2', '3', '3', '1']) await page.keyboard.press(digit);
	await page.keyboard.press('Shift+Digit1');
	const votes = (option: number) => page.getByLabel(`Votes for answer ${option}`);
	await expect(votes(1)).toHaveValue('1');
	await expect(votes(2)).toHaveValue('4');
	await expect(votes(3)).toHaveValue('2');

	// The room's mark, by keys.
	await page.keyboard.press('PageDown');
	const mark = page.locator('dialog').getByRole('slider', { name: /at which load/ });
	await page.keyboard.press('Tab');
	await expect(mark).toBeFocused();
	await page.keyboard.press('End');
	for (let i = 0; i < 5; i++) await page.keyboard.press('ArrowLeft');
	await expect(mark).toHaveAttribute('aria-valuetext', /65/);

	// Reveal: prediction against computation. The page keys work from a slider too.
	await page.keyboard.press('PageDown');
	await expect(heading(page)).toHaveText('The room’s mark and the computed one');
	await expect(page.locator('dialog svg')).toContainText('room: 65');
	await expect(page.locator('dialog svg')).toContainText('computed: 60.3');
	await page.keyboard.press('PageDown');
	await expect(heading(page)).toContainText('Lighter than 60.3');
	const edge = page.locator('dialog h2 data[data-quantity="window.from"]').first();
	// Own, not outside: (70 − m)/m · tan 10° = tan(atan 0.64 − 31°) solved for m by hand.
	expect(Math.abs(Number(await edge.getAttribute('value')) - 60.3282)).toBeLessThan(1e-3);
	await expect(page.getByRole('img', { name: 'Margins against net load' })).toBeVisible();

	// The figure is live: plumb, and the lower limit is gone.
	const rope = page.locator('dialog').getByRole('slider', { name: 'Rope angle from plumb' });
	await rope.focus();
	for (let i = 0; i < 20; i++) await page.keyboard.press('ArrowLeft');
	await expect(page.locator('dialog')).toContainText('holds 5–91.1');

	// Next, through why the popular answer tempts, to the end.
	const seen: string[] = [];
	for (let i = 0; i < 20; i++) {
		await page.keyboard.press('PageDown');
		const text = (await heading(page).textContent())!.trim();
		if (text === seen.at(-1)) break;
		seen.push(text);
		if (text === 'The room against the computation') {
			await expect(page.locator('dialog .body')).toContainText('7 votes, counted on this device');
			await expect(page.locator('dialog .body')).toContainText('– computed');
		}
		if (text === 'The formulas') {
			await expect(page.locator('dialog .katex').first()).toBeVisible();
		}
	}
	expect(seen).toEqual([
		'Forces',
		'Loads that hold',
		'The room against the computation',
		'Why the popular answer tempts',
		'The formulas',
		'Try it at a board',
		'What is not known',
		'That was lesson b'
	]);
	await page.keyboard.press('PageUp');
	await expect(heading(page)).toHaveText('What is not known');
	await page.keyboard.press('r');
	await expect(heading(page)).toHaveText('The room’s mark and the computed one');
	await page.keyboard.press('Escape');
	await expect(page).toHaveURL(/clinic\/rope\/$/);
	// The counts are still there, on this device.
	await expect(votes(2)).toHaveValue('4');

	// Handouts, still offline.
	await page.getByRole('link', { name: 'Print the handouts' }).click();
	await expect(page.locator('.paper-sheet')).toHaveCount(3);
	await expect(page.locator('.paper-sheet .katex').first()).toBeVisible();
	const all = await page.pdf({ preferCSSPageSize: true });
	expect(pagesOf(all)).toBe(3);
	expect(boxesOf(all)).toEqual(Array.from({ length: 3 }, () => [595, 842]));
	await page.getByText('exercises and answers', { exact: true }).click();
	await page.getByText('Letter', { exact: true }).click();
	const pair = await page.pdf({ preferCSSPageSize: true });
	expect(pagesOf(pair)).toBe(2);
	expect(boxesOf(pair)).toEqual([
		[612, 792],
		[612, 792]
	]);
	// The answers stand on the second page and not on the first.
	const [exercises, answers] = await page.locator('.paper-sheet').allInnerTexts();
	expect(answers).toContain('Answers for lesson b');
	expect(answers).toContain('1.18°');
	expect(exercises).not.toContain('1.18°');
	expect(exercises).toContain('clinic/rope/');
});

for (const paper of ['A4', 'Letter']) {
	test(`every handout fits its sheets on ${paper}, in a dark theme too`, async ({ page }) => {
		await page.emulateMedia({ colorScheme: 'dark' });
		for (const { key } of lessons) {
			await page.goto(`clinic/${key}/handout/`);
			await page.getByText(paper, { exact: true }).click();
			await expect(page.locator('.katex').first()).toBeVisible();
			expect(pagesOf(await page.pdf({ preferCSSPageSize: true })), key).toBe(3);
		}
		await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
		const grounds = await page.evaluate(() =>
			[document.documentElement, document.querySelector('.paper-sheet')!].map(
				(element) => getComputedStyle(element).backgroundColor
			)
		);
		expect(grounds).toEqual(['rgb(255, 255, 255)', 'rgb(255, 255, 255)']);
	});
}

for (const { key } of lessons) {
	test(`presenter view of ${key}: letters of 1/25 of the height, and nothing to scroll for`, async ({
		page
	}) => {
		for (const [width, height] of [
			[1280, 720],
			[1024, 768]
		] as const) {
			await page.setViewportSize({ width, height });
			await page.goto(`clinic/${key}/present/`);
			await expect(heading(page)).toBeVisible();
			const last = Number((await page.locator('dialog nav span').textContent())!.split(' of ')[1]);
			expect(last).toBeGreaterThan(8);
			for (let screen = 1; screen <= last; screen++) {
				await expect(page.locator('dialog nav span')).toHaveText(`${screen} of ${last}`);
				await page.waitForTimeout(150);
				const seen = await page.evaluate(() => {
					let least = Infinity;
					const walk = document.createTreeWalker(
						document.querySelector('dialog')!,
						NodeFilter.SHOW_TEXT
					);
					while (walk.nextNode()) {
						const element = walk.currentNode.parentElement!;
						if (!walk.currentNode.textContent?.trim()) continue;
						if (element.closest('.visually-hidden, .katex')) continue;
						let scale = 1;
						const drawing = element.closest('.drawing');
						if (drawing) scale = new DOMMatrix(getComputedStyle(drawing).transform).a;
						const svg = element.closest('svg');
						if (svg?.viewBox.baseVal.width) scale *= svg.clientWidth / svg.viewBox.baseVal.width;
						least = Math.min(least, parseFloat(getComputedStyle(element).fontSize) * scale);
					}
					const body = document.querySelector('dialog .body');
					return {
						letters: least / innerHeight,
						over: body ? body.scrollHeight - body.clientHeight : 0
					};
				});
				expect(seen.letters, `screen ${screen} at ${width} px`).toBeGreaterThan(1 / 25 - 1e-4);
				expect(seen.over, `screen ${screen} at ${width} px scrolls`).toBeLessThanOrEqual(1);
				await page.keyboard.press('PageDown');
			}
		}
	});

	for (const colorScheme of ['light', 'dark'] as const) {
		test(`axe finds nothing on any screen of the presenter view of ${key}, ${colorScheme}`, async ({
			page
		}) => {
			test.slow();
			await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
			await page.setViewportSize({ width: 1280, height: 720 });
			await page.goto(`clinic/${key}/present/`);
			await expect(heading(page)).toBeAttached();
			const last = Number((await page.locator('dialog nav span').textContent())!.split(' of ')[1]);
			for (let screen = 1; screen <= last; screen++) {
				await expect(page.locator('dialog nav span')).toHaveText(`${screen} of ${last}`);
				const { violations } = await new AxeBuilder({ page }).include('dialog').analyze();
				expect(
					violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' | ')}`),
					`screen ${screen}`
				).toEqual([]);
				await page.keyboard.press('PageDown');
			}
		});
	}
}

test('a curve is sketched by pointer and by keys, and laid against the computed one', async ({
	page
}) => {
	await page.goto('clinic/pressure/');
	const picture = page.locator('.ask figure').filter({ hasText: 'slip margin, ratio axis' });
	await expect(picture).toContainText('drag to sketch');
	const box = (await picture.locator('svg').boundingBox())!;
	await page.mouse.move(box.x + 60, box.y + box.height * 0.7);
	await page.mouse.down();
	await page.mouse.move(box.x + box.width - 20, box.y + box.height * 0.3, { steps: 12 });
	await page.mouse.up();
	await expect(picture.locator('figcaption')).toContainText('The room’s sketch rises');
	const last = page.getByRole('slider', { name: /Sketched slip margin at 110/ });
	await last.focus();
	await page.keyboard.press('Home');
	await expect(picture.locator('figcaption')).toContainText('The room’s sketch falls');
	await page.getByRole('button', { name: 'Reveal' }).click();
	await expect(page.locator('.room figcaption').last()).toContainText('The computed curve falls');
	await page.reload();
	await page.getByRole('button', { name: 'Reveal' }).click();
	await expect(page.locator('.room figcaption').last()).toContainText('The room’s sketch falls');
});

test('a lesson link with a damaged state gives plain words and a lesson', async ({ page }) => {
	await page.goto('clinic/rope/?v=1&slope=400&mu=abc&law=magic');
	await expect(page.getByText('outside -15 to 60; 60 is used')).toBeVisible();
	await expect(page.getByText('“mu” in the link is not a number')).toBeVisible();
	await expect(page.getByRole('heading', { name: 'Reveal' })).toBeVisible();
	await expect(page.getByText('Lighter than 60.3')).toBeVisible();
	await expect(page.locator('main')).not.toContainText(/NaN|undefined/);
});

test('where storage is blocked the counts last as long as the page, and that is said', async ({
	page
}) => {
	await page.addInitScript(() => {
		Storage.prototype.setItem = () => {
			throw new DOMException('blocked', 'SecurityError');
		};
		Storage.prototype.getItem = () => {
			throw new DOMException('blocked', 'SecurityError');
		};
	});
	await page.goto('clinic/cancels/');
	await page.getByRole('button', { name: 'One more for answer 1' }).click();
	await expect(page.getByLabel('Votes for answer 1')).toHaveValue('1');
	await expect(page.getByText('This browser keeps nothing')).toBeVisible();
	await page.goto('clinic/room/');
	await page.getByLabel('Person 1: body mass').fill('70');
	await page.getByLabel('Person 1: body mass').blur();
	await expect(page.getByText('This browser keeps nothing')).toBeVisible();
});
