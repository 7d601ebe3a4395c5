// Drags the sliders of the mechanisms board in a browser, with every fold open, and reports the time
// from an input event until the page is computed and laid out again. Build first. A report, not a test.
// Usage: node bench/board.mjs [throttling, default 1]
import { gzipSync } from 'node:zlib';
import { chromium } from '@playwright/test';
import { chromiumArgs, findBrowser } from '../scripts/browser.mjs';
import { serve } from '../scripts/serve.mjs';

const throttling = Number(process.argv[2] ?? 1);
const { url, close } = await serve({ folder: 'build', port: 0 });
const browser = await chromium.launch({ executablePath: await findBrowser(), args: chromiumArgs });
const quantile = (values, share) =>
	[...values].sort((a, b) => a - b)[Math.min(values.length - 1, Math.floor(values.length * share))];

try {
	const context = await browser.newContext({
		viewport: { width: 1440, height: 900 },
		serviceWorkers: 'block'
	});
	for (const path of ['mechanisms/', 'mechanisms/stories/']) {
		const page = await context.newPage();
		let bytes = 0;
		page.on('response', async (response) => {
			if (response.request().resourceType() !== 'script') return;
			const body = await response.body();
			bytes += gzipSync(body).length;
		});
		await page.goto(url + path, { waitUntil: 'networkidle' });
		await page.waitForTimeout(500);
		console.log(`${path}: JavaScript before any interaction ${(bytes / 1000).toFixed(1)} kB gzip`);
		await page.close();
	}

	const page = await context.newPage();
	await page.goto(`${url}mechanisms/`, { waitUntil: 'networkidle' });
	const session = await context.newCDPSession(page);
	await session.send('Emulation.setCPUThrottlingRate', { rate: throttling });
	const rows = await page.evaluate(async () => {
		const frame = () => new Promise((done) => requestAnimationFrame(() => done()));
		for (const fold of document.querySelectorAll('main details')) fold.open = true;
		await frame();
		await frame();
		const rows = [];
		for (const { id } of document.querySelectorAll('input[type="range"]')) {
			const slider = document.getElementById(id);
			slider.scrollIntoView({ block: 'center' });
			await frame();
			await frame();
			const { min, max, value } = slider;
			const [script, whole] = [[], []];
			const steps = 40;
			for (let step = 0; step <= steps; step++) {
				slider.value = String(Number(min) + ((Number(max) - Number(min)) * step) / steps);
				const began = performance.now();
				slider.dispatchEvent(new Event('input', { bubbles: true }));
				// Svelte flushes in a microtask; waiting for one more lets it finish.
				await Promise.resolve();
				await Promise.resolve();
				script.push(performance.now() - began);
				document.body.getBoundingClientRect();
				whole.push(performance.now() - began);
				await frame();
			}
			slider.value = value;
			slider.dispatchEvent(new Event('input', { bubbles: true }));
			await frame();
			rows.push({ id: slider.id, script, whole });
		}
		return rows;
	});
	const say = (id, script, whole) =>
		console.log(
			`${id.padEnd(34)} script p95 ${quantile(script, 0.95).toFixed(1)} ms, with layout median ${quantile(whole, 0.5).toFixed(1)} ms, p95 ${quantile(whole, 0.95).toFixed(1)} ms`
		);
	for (const { id, script, whole } of rows) say(id, script, whole);
	say(
		`all, throttling ${throttling}×`,
		rows.flatMap(({ script }) => script),
		rows.flatMap(({ whole }) => whole)
	);
} finally {
	await browser.close();
	await close();
}
