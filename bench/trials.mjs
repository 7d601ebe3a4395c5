// Fills a notebook with 5,000 trials in a browser, and reports how soon the trial sheet answers: from
// key or click to the next paint (Event Timing), and the longest tasks while the file comes in; the same
// tasks for a table of 20,000 rows, its preview and its writing; and how the limits page answers while a
// worker computes. Also the script each trials page loads before any interaction. Build first. A report, not a test.
// Usage: node bench/trials.mjs [trials, default 5000] [throttling, default 1]
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { chromiumArgs, findBrowser } from '../scripts/browser.mjs';
import { serve } from '../scripts/serve.mjs';
import { chromium } from '@playwright/test';

const trials = Number(process.argv[2] ?? 5000);
const throttling = Number(process.argv[3] ?? 1);
const folder = mkdtempSync(join(tmpdir(), 'trials-bench-'));
const { url, close } = await serve({ folder: 'build', port: 0 });
const browser = await chromium.launch({
	executablePath: await findBrowser(),
	args: chromiumArgs
});

const quantile = (values, share) =>
	[...values].sort((a, b) => a - b)[Math.min(values.length - 1, Math.floor(values.length * share))];
const says = (values) =>
	values.length === 0
		? 'none'
		: `median ${quantile(values, 0.5)} ms, p95 ${quantile(values, 0.95)} ms, worst ${Math.max(...values)} ms (${values.length})`;

/** The invented demo, its test trials repeated in its one session as often as it takes. */
function longNotebook() {
	const notebook = JSON.parse(readFileSync('seeds/demo-notebook.json', 'utf8'));
	const like = notebook.trials.filter(({ kind }) => kind === 'test');
	for (let i = 0; i < trials; i++) {
		notebook.trials.push({ ...like[i % like.length], id: `demo-long-${i}`, order: 100 + i });
	}
	return JSON.stringify(notebook);
}

try {
	for (const path of ['trials/', 'trials/plan/', 'trials/notebook/', 'measure/']) {
		const context = await browser.newContext({ serviceWorkers: 'block' });
		const page = await context.newPage();
		await page.goto(url + path, { waitUntil: 'networkidle' });
		// A busy machine falls silent between two files: wait for what only the whole page shows.
		await page.locator('main :is(section, details)').first().waitFor();
		await page.waitForTimeout(1500);
		const scripts = await page.evaluate(() =>
			performance
				.getEntriesByType('resource')
				.map(({ name }) => new URL(name).pathname)
				.filter((name) => name.endsWith('.js'))
		);
		const bytes = [...new Set(scripts)]
			.map((name) => gzipSync(readFileSync(`build${name}`)).length)
			.reduce((sum, one) => sum + one, 0);
		console.log(
			`${path.padEnd(18)} script before interaction ${(bytes / 1000).toFixed(1)} kB gzip`
		);
		await context.close();
	}

	const opened = async () => {
		const context = await browser.newContext({
			viewport: { width: 390, height: 844 },
			serviceWorkers: 'block'
		});
		const page = await context.newPage();
		await page.goto(`${url}trials/notebook/`, { waitUntil: 'networkidle' });
		const session = await context.newCDPSession(page);
		await session.send('Emulation.setCPUThrottlingRate', { rate: throttling });
		return page;
	};
	const watch = (page) =>
		page.evaluate(() => {
			window.seen = { tasks: [], events: [] };
			new PerformanceObserver((list) => {
				for (const { duration } of list.getEntries()) window.seen.tasks.push(Math.round(duration));
			}).observe({ type: 'longtask' });
			new PerformanceObserver((list) => {
				for (const { duration, interactionId } of list.getEntries()) {
					if (interactionId) window.seen.events.push(duration);
				}
			}).observe({ type: 'event', durationThreshold: 16 });
		});
	const bringIn = async (page, name, text) => {
		// From the disk, as a person picks it: a file handed over in memory is unpacked by the driver on the
		// page's own thread, in one long task that no visitor ever has.
		writeFileSync(join(folder, name), text);
		await watch(page);
		const began = Date.now();
		await page.getByLabel('Bring in a JSON or CSV file').setInputFiles(join(folder, name));
		const write = page.getByRole('button', { name: /^Bring in \d+ records/ });
		await write.waitFor({ timeout: 120_000 });
		const previewed = Date.now();
		await write.click();
		await page.getByText(/are in the notebook/).waitFor({ timeout: 240_000 });
		await page.waitForTimeout(500);
		const { tasks } = await page.evaluate(() => window.seen);
		console.log(
			`bringing in ${name}: preview after ${previewed - began} ms, written after ${Date.now() - 500 - began} ms, tasks over 50 ms ${says(tasks)}`
		);
	};

	const rows = Array.from({ length: 20_000 }, (_, i) => `2026-01-01,${i + 1},A,Open,50,held`);
	const table = ['day,trial,person,grip,net load [kg],outcome', ...rows].join('\n');
	const other = await opened();
	await bringIn(other, '20000-rows.csv', table);
	await other.context().close();

	const page = await opened();
	await bringIn(page, `${trials}-trials.json`, longNotebook());

	await page.goto(`${url}trials/`);
	const load = page.getByLabel('Net load', { exact: true });
	await load.waitFor({ timeout: 60_000 });
	await page.waitForTimeout(1000);
	await watch(page);
	for (let i = 0; i < 20; i++) {
		await load.click();
		await page.keyboard.press('End');
		await page.keyboard.type('.5');
		await page.keyboard.press('Backspace');
		await page.keyboard.press('Backspace');
		await page.getByRole('button', { name: 'More by a step' }).click();
		await page.getByRole('button', { name: 'Less by a step' }).click();
		await page.getByRole('button', { name: 'held', exact: true }).click();
		await page.waitForTimeout(600);
	}
	const { tasks, events } = await page.evaluate(() => window.seen);
	console.log(`sheet with ${trials}: event to paint ${says(events)}; throttling ${throttling}×`);
	console.log(`sheet with ${trials}: tasks over 50 ms ${says(tasks)}`);

	// The limits page while its worker is at it: folding and choosing must still answer.
	await page.goto(`${url}trials/limits/`);
	await page.getByText(/^Working out/).waitFor({ timeout: 60_000 });
	await page.waitForTimeout(1000);
	await watch(page);
	const began = Date.now();
	const pound = page.getByRole('combobox', { name: 'Session' });
	for (let i = 0; i < 20; i++) {
		await pound.focus();
		await page.keyboard.press('ArrowDown');
		await page.keyboard.press('ArrowUp');
		await page.waitForTimeout(200);
	}
	const busy = await page.evaluate(() => window.seen);
	console.log(
		`limits with ${trials}: event to paint ${says(busy.events)}; tasks over 50 ms ${says(busy.tasks)}`
	);
	await page
		.getByText(/trials analysed/)
		.waitFor({ timeout: 120_000 })
		.then(
			() => console.log(`limits with ${trials}: all there ${Date.now() - began} ms after`),
			() => console.log(`limits with ${trials}: not there 120 s after`)
		);
	const drawn = await page.evaluate(() => window.seen);
	console.log(`limits with ${trials}: drawing it, tasks over 50 ms ${says(drawn.tasks)}`);
} finally {
	rmSync(folder, { recursive: true, force: true });
	await browser.close();
	await close();
}
