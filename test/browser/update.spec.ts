import { expect, test, type Page } from '@playwright/test';
import { execFileSync } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { serve } from '../../scripts/serve.mjs';

// Two real builds: the one under test, and one of the same sources with one word changed.
const parts = [
	...['src', 'static', 'seeds', 'scripts', 'package.json', 'package-lock.json'],
	...['svelte.config.js', 'vite.config.ts', 'tsconfig.json']
];
const oldWords = 'Set up a hang and see.';
const newWords = 'Set up a hang and look.';

// One after the other: they share the newer build.
test.describe.configure({ mode: 'serial' });

let room: string;
let newer: string | undefined;
let site: { url: string; close: () => Promise<void> };

function publish(build: string) {
	const target = join(room, 'site');
	rmSync(target, { recursive: true, force: true });
	cpSync(build, target, { recursive: true });
}

/** The newer build, made once. */
function newerBuild(): string {
	newer ??= buildOf((text) => text.replace(oldWords, newWords));
	return newer;
}

function buildOf(change: (text: string) => string): string {
	const tree = join(room, 'tree');
	for (const part of parts) cpSync(part, join(tree, part), { recursive: true });
	symlinkSync(resolve('node_modules'), join(tree, 'node_modules'));
	const lead = join(tree, 'src/routes/explore/Lead.svelte');
	const before = readFileSync(lead, 'utf8');
	writeFileSync(lead, change(before));
	expect(readFileSync(lead, 'utf8')).not.toBe(before);
	execFileSync(process.execPath, [join('node_modules', 'vite', 'bin', 'vite.js'), 'build'], {
		cwd: tree,
		stdio: 'pipe'
	});
	return join(tree, 'build');
}

test.beforeAll(async () => {
	test.setTimeout(240_000);
	room = mkdtempSync(join(tmpdir(), 'holding-window-update-'));
	publish('build');
	site = await serve({ folder: join(room, 'site'), port: 0, prefix: '/a/folder/' });
});
test.afterAll(async () => {
	await site?.close();
	rmSync(room, { recursive: true, force: true });
});

const field = (page: Page, name: string) => page.getByRole('textbox', { name });
const caches = (page: Page) =>
	page.evaluate(async () =>
		(await globalThis.caches.keys()).filter((key) => key.startsWith('holding-window-'))
	);

test('a newer version waits politely, drops nothing typed, and leaves other tabs alone', async ({
	context
}) => {
	test.setTimeout(240_000);
	const page = await context.newPage();
	await page.goto(site.url);
	await expect(page.getByText('Ready to use offline')).toBeVisible({ timeout: 30_000 });
	await field(page, 'Hold slope').fill('20');
	await expect(page).toHaveURL(/slope=20/);
	const other = await context.newPage();
	await other.goto(`${site.url}?v=1&slope=25`);
	await field(other, 'Body mass').fill('eighty');

	publish(newerBuild());
	await field(page, 'Body mass').fill('seventy');
	await page.evaluate(() => Object.assign(window, { sameVisit: true }));
	await page.evaluate(async () => (await navigator.serviceWorker.ready).update());
	const notice = page.getByText('A newer version is ready.');
	await expect(notice).toBeVisible();

	// It waits: the page goes on as it is, its parts that were not fetched yet included.
	await expect(page.getByText(oldWords)).toBeVisible();
	expect(await page.evaluate(() => 'sameVisit' in window)).toBe(true);
	await expect(field(page, 'Body mass')).toHaveValue('seventy');
	await page.getByText('Show the working').click();
	await expect(page.locator('.katex').first()).toBeVisible();

	await page.getByRole('button', { name: 'Reload with it' }).click();
	await expect(page.getByText(newWords)).toBeVisible();
	expect(await page.evaluate(() => 'sameVisit' in window)).toBe(false);
	await expect(field(page, 'Hold slope')).toHaveValue('20');
	await expect(field(page, 'Body mass')).toHaveValue('seventy');
	await expect(page.getByRole('alert')).toContainText('Body mass takes a number');
	await expect(page.getByText('the pictures keep the last good values')).toBeVisible();
	await expect(notice).toBeHidden();

	// The other tab was not reloaded, and can still open what it had not fetched.
	await expect(other.getByText(oldWords)).toBeVisible();
	await expect(field(other, 'Body mass')).toHaveValue('eighty');
	await other.getByText('Show the working').click();
	await expect(other.locator('.katex').first()).toBeVisible();
	expect((await caches(page)).length).toBe(2);

	// And the newer version works without a network.
	await context.setOffline(true);
	await page.goto(`${site.url}sources/`);
	await expect(page.getByRole('heading', { level: 1 })).toHaveText('Sources and cautions');
	await page.goto(site.url);
	await expect(page.getByText(newWords)).toBeVisible();
});

test('a newer version that comes in the middle of a lesson waits until the lesson is over', async ({
	context
}) => {
	test.setTimeout(240_000);
	publish('build');
	const page = await context.newPage();
	await page.goto(`${site.url}clinic/rope/`);
	await expect(page.getByText('Ready to use offline')).toBeVisible({ timeout: 30_000 });
	await page.getByRole('link', { name: 'Present it' }).click();
	const heading = page.locator('dialog h2');
	await expect(heading).toHaveText('Not quite plumb');
	await page.keyboard.press('PageDown');
	await expect(heading).toContainText('What happens to the hand?');
	for (const digit of ['1', '2', '2', '3']) await page.keyboard.press(digit);
	await page.evaluate(() => Object.assign(window, { sameVisit: true }));

	publish(newerBuild());
	await page.evaluate(async () => {
		const registration = await navigator.serviceWorker.ready;
		await registration.update();
	});
	await page.waitForFunction(
		async () => (await navigator.serviceWorker.ready).waiting !== null,
		undefined,
		{ timeout: 60_000 }
	);

	// Nothing is laid over the lesson, and it goes on: tally, mark, and a figure not fetched before.
	const votes = (option: number) => page.getByLabel(`Votes for answer ${option}`);
	await expect(page.locator('dialog')).not.toContainText('newer version');
	await page.keyboard.press('2');
	await expect(votes(2)).toHaveValue('3');
	await page.keyboard.press('PageDown');
	const mark = page.locator('dialog').getByRole('slider', { name: /at which load/ });
	await page.keyboard.press('Tab');
	await expect(mark).toBeFocused();
	await page.keyboard.press('End');
	await page.keyboard.press('PageDown');
	await page.keyboard.press('PageDown');
	await expect(page.getByRole('img', { name: 'Margins against net load' })).toBeVisible();
	await page.keyboard.press('PageUp');
	await expect(heading).toHaveText('The room’s mark and the computed one');
	await page.keyboard.press('Escape');
	await expect(page).toHaveURL(/clinic\/rope\/$/);
	expect(await page.evaluate(() => 'sameVisit' in window)).toBe(true);

	// After the lesson the notice is there; what is half typed comes along when it is taken up.
	await expect(page.getByText('A newer version is ready.')).toBeVisible();
	await expect(votes(2)).toHaveValue('3');
	await votes(3).fill('7');
	await page.getByRole('button', { name: 'Reload with it' }).click();
	await page.waitForFunction(() => !('sameVisit' in window));
	await expect(page.getByText('Ready to use offline')).toBeVisible({ timeout: 30_000 });
	await expect(votes(1)).toHaveValue('1');
	await expect(votes(2)).toHaveValue('3');
	await expect(votes(3)).toHaveValue('7');
	await expect(page.getByText('11 votes.')).toBeVisible();
	await expect(page.getByRole('slider', { name: /at which load/ })).toHaveAttribute(
		'aria-valuetext',
		/70/
	);
});
