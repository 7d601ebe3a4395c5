// Fills a notebook with 5,000 trials in a browser, and reports how soon the trial sheet answers: from
// key or click to the next paint (Event Timing), and the longest tasks while the file comes in. Also
// the script each trials page loads before any interaction. Build first. A report, not a test.
// Usage: node bench/trials.mjs [trials, default 5000] [throttling, default 1]
import { readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { chromiumArgs, findBrowser } from '../scripts/browser.mjs';
import { serve } from '../scripts/serve.mjs';
import { chromium } from '@playwright/test';

const trials = Number(process.argv[2] ?? 5000);
const throttling = Number(process.argv[3] ?? 1);
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

/** The invented demo, with invented trials added to its one session. */
function longNotebook() {
	const notebook = JSON.parse(readFileSync('seeds/demo-notebook.json', 'utf8'));
	const last = notebook.trials.at(-1);
	for (let i = 0; i < trials; i++) {
		notebook.trials.push({ ...last, id: `demo-long-${i}`, order: 100 + i, kind: 'test' });
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

	const context = await browser.newContext({
		viewport: { width: 390, height: 844 },
		serviceWorkers: 'block'
	});
	const page = await context.newPage();
	await page.goto(`${url}trials/notebook/`, { waitUntil: 'networkidle' });
	const watch = () =>
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
	const session = await context.newCDPSession(page);
	await session.send('Emulation.setCPUThrottlingRate', { rate: throttling });
	await watch();
	await page.getByLabel('Bring in a JSON or CSV file').setInputFiles({
		name: 'long.json',
		mimeType: 'application/json',
		buffer: Buffer.from(longNotebook())
	});
	await page.getByRole('button', { name: /^Bring in \d+ records/ }).click({ timeout: 120_000 });
	await page.getByText(/are in the notebook/).waitFor({ timeout: 240_000 });
	const bringing = await page.evaluate(() => window.seen.tasks);
	console.log(`bringing in ${trials}: tasks over 50 ms ${says(bringing)}`);

	await page.goto(`${url}trials/`);
	const load = page.getByLabel('Net load', { exact: true });
	await load.waitFor({ timeout: 60_000 });
	await page.waitForTimeout(1000);
	await watch();
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
} finally {
	await browser.close();
	await close();
}
