// Drags every slider of Explore from end to end in a browser and reports the scripting per input
// event, long tasks, and the script loaded before any interaction. Build first. A report, not a test.
// Usage: node bench/interaction.mjs [throttling, default 1]
import { gzipSync } from 'node:zlib';
import { chromiumArgs, findBrowser } from '../scripts/browser.mjs';
import { serve } from '../scripts/serve.mjs';
import { chromium } from '@playwright/test';

const throttling = Number(process.argv[2] ?? 1);
const { url, close } = await serve({ folder: 'build', port: 0 });
const browser = await chromium.launch({
	executablePath: await findBrowser(),
	args: chromiumArgs
});

const quantile = (values, share) =>
	[...values].sort((a, b) => a - b)[Math.min(values.length - 1, Math.floor(values.length * share))];

try {
	const context = await browser.newContext({
		viewport: { width: 1440, height: 900 },
		serviceWorkers: 'block'
	});
	const page = await context.newPage();
	let scriptBytes = 0;
	page.on('response', async (response) => {
		if (response.request().resourceType() !== 'script') return;
		scriptBytes += gzipSync(await response.body()).length;
	});
	await page.goto(url, { waitUntil: 'networkidle' });
	console.log(`JavaScript before any interaction: ${(scriptBytes / 1000).toFixed(1)} kB gzip`);

	const session = await context.newCDPSession(page);
	await session.send('Emulation.setCPUThrottlingRate', { rate: throttling });
	const rows = await page.evaluate(async () => {
		const longTasks = [];
		new PerformanceObserver((list) => {
			for (const entry of list.getEntries()) longTasks.push(entry.duration);
		}).observe({ type: 'longtask', buffered: false });
		const frame = () => new Promise((done) => requestAnimationFrame(() => done()));
		for (const fold of document.querySelectorAll('main details')) fold.open = true;
		await frame();
		const rows = [];
		for (const slider of document.querySelectorAll('input[type="range"]')) {
			if (!slider.id) continue;
			const { min, max, value } = slider;
			const times = [];
			const steps = 60;
			for (let step = 0; step <= steps; step++) {
				slider.value = String(Number(min) + ((Number(max) - Number(min)) * step) / steps);
				const began = performance.now();
				slider.dispatchEvent(new Event('input', { bubbles: true }));
				// Svelte flushes in a microtask; waiting for one more lets it finish.
				await Promise.resolve();
				await Promise.resolve();
				times.push(performance.now() - began);
				await frame();
			}
			slider.value = value;
			slider.dispatchEvent(new Event('input', { bubbles: true }));
			await frame();
			rows.push({ id: slider.id, times });
		}
		await new Promise((done) => setTimeout(done, 300));
		return { rows, longTasks };
	});
	const all = rows.rows.flatMap(({ times }) => times);
	for (const { id, times } of rows.rows) {
		console.log(
			`${id.padEnd(12)} median ${quantile(times, 0.5).toFixed(1)} ms, p95 ${quantile(times, 0.95).toFixed(1)} ms, worst ${Math.max(...times).toFixed(1)} ms`
		);
	}
	console.log(
		`all sliders   median ${quantile(all, 0.5).toFixed(1)} ms, p95 ${quantile(all, 0.95).toFixed(1)} ms; tasks over 50 ms: ${rows.longTasks.length}; throttling ${throttling}×`
	);
} finally {
	await browser.close();
	await close();
}
