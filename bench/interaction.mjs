// Drags every slider of Explore from end to end in a browser and reports the scripting per input
// event (the main thread's own time, so that a busy machine does not count), tasks over 50 ms, and
// the script loaded before any interaction. Build first. A report, not a test.
// Usage: node bench/interaction.mjs [throttling, default 1]
import { gzipSync } from 'node:zlib';
import { chromium } from '@playwright/test';
import { chromiumArgs, findBrowser } from '../scripts/browser.mjs';
import { serve } from '../scripts/serve.mjs';

const throttling = Number(process.argv[2] ?? 1);
const steps = 40;
const { url, close } = await serve({ folder: 'build', port: 0 });
const browser = await chromium.launch({ executablePath: await findBrowser(), args: chromiumArgs });

const quantile = (values, share) =>
	[...values].sort((a, b) => a - b)[Math.min(values.length - 1, Math.floor(values.length * share))];
const shown = (values) =>
	`median ${quantile(values, 0.5).toFixed(1)} ms, p95 ${quantile(values, 0.95).toFixed(1)} ms, worst ${Math.max(...values).toFixed(1)} ms`;

try {
	const context = await browser.newContext({
		viewport: { width: 1440, height: 900 },
		serviceWorkers: 'block'
	});
	const page = await context.newPage();
	const scripts = [];
	page.on('response', (response) => {
		if (response.request().resourceType() === 'script') scripts.push(response.body());
	});
	await page.goto(url, { waitUntil: 'networkidle' });
	const bytes = (await Promise.all(scripts)).map((body) => gzipSync(body).length);
	const total = bytes.reduce((sum, length) => sum + length, 0);
	console.log(`JavaScript before any interaction: ${(total / 1000).toFixed(1)} kB gzip`);

	const session = await context.newCDPSession(page);
	await session.send('Performance.enable', { timeDomain: 'threadTicks' });
	const scripting = async () => {
		const { metrics } = await session.send('Performance.getMetrics');
		return metrics.find(({ name }) => name === 'ScriptDuration').value * 1000;
	};
	await page.evaluate(() => {
		globalThis.longTasks = [];
		new PerformanceObserver((list) =>
			globalThis.longTasks.push(...list.getEntries().map(({ duration }) => duration))
		).observe({ type: 'longtask' });
	});
	await session.send('Emulation.setCPUThrottlingRate', { rate: throttling });

	// The pictures wake as the pointer comes near the first slider, a second before it is there.
	const asleep = await scripting();
	await page.mouse.move(300, 760);
	await page.locator('[data-live="true"]').waitFor();
	await page.waitForTimeout(1000);
	console.log(
		`pictures wake in ${((await scripting()) - asleep).toFixed(1)} ms of scripting; tasks over 50 ms: ${await page.evaluate(() => globalThis.longTasks.length)}`
	);

	const all = [];
	// Handles, not locators: looking a slider up again at each step would count as the page's work.
	const sliders = () => page.$$('main input[type="range"][id]');
	// First the five that are in sight, as a person finds the page; then all folds are opened.
	for (const slider of await sliders()) await drag(slider);
	const asked = all.length / (steps + 1);
	await page.evaluate(() => {
		for (const fold of document.querySelectorAll('main details')) fold.open = true;
	});
	await page.locator('#radius').waitFor();
	await page.waitForTimeout(500);
	for (const slider of (await sliders()).slice(asked)) await drag(slider);

	async function drag(slider) {
		const times = [];
		for (let step = 0; step <= steps; step++) {
			const before = await scripting();
			await slider.evaluate(async (input, share) => {
				input.value = String(Number(input.min) + (input.max - input.min) * share);
				input.dispatchEvent(new Event('input', { bubbles: true }));
				// Two frames: the second begins when the work of the first is done.
				await new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)));
			}, step / steps);
			times.push((await scripting()) - before);
		}
		console.log(`${(await slider.getAttribute('id')).padEnd(12)} ${shown(times)}`);
		all.push(...times);
	}
	const longTasks = await page.evaluate(() => globalThis.longTasks);
	console.log(
		`all sliders  ${shown(all)}; tasks over 50 ms: ${longTasks.length}; throttling ${throttling}×`
	);
} finally {
	await browser.close();
	await close();
}
