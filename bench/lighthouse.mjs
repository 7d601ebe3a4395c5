// Lighthouse's scores for the pages that a first visitor opens: a phone with Lighthouse's own
// throttling, and a desktop. Build first. A report, not a test. Lighthouse brings some two hundred
// packages, so it is no dependency of this project; it is taken from a folder of your own:
//   mkdir somewhere && cd somewhere && npm init -y && npm i -E lighthouse@12.8.2
//   LIGHTHOUSE=somewhere node bench/lighthouse.mjs [runs, default 3] [page …]
// The median of the runs is shown: a busy machine makes single runs of performance slow.
import { existsSync } from 'node:fs';
import { createRequire } from 'node:module';
import { createServer } from 'node:net';
import { resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { chromium } from '@playwright/test';
import { chromiumArgs, findBrowser } from '../scripts/browser.mjs';
import { serve } from '../scripts/serve.mjs';

const folder = resolve(process.env.LIGHTHOUSE ?? '.');
if (!existsSync(`${folder}/node_modules/lighthouse`)) {
	console.error(`No lighthouse in ${folder}: set LIGHTHOUSE to the folder it is installed in.`);
	process.exit(1);
}
const entry = createRequire(`${folder}/package.json`).resolve('lighthouse');
const { default: lighthouse, desktopConfig } = await import(pathToFileURL(entry).href);

const [runs = '3', ...asked] = process.argv.slice(2);
const paths = asked.length > 0 ? asked : ['', 'clinic/', 'trials/', 'workbook/'];
const categories = ['performance', 'accessibility', 'best-practices', 'seo'];

const port = await freePort();
const { url, close } = await serve({ folder: process.env.FOLDER ?? 'build', port: 0 });
const browser = await chromium.launch({
	executablePath: await findBrowser(),
	args: [...chromiumArgs, `--remote-debugging-port=${port}`]
});
const median = (values) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];

try {
	for (const path of paths) {
		for (const [device, config] of [
			['phone', undefined],
			['desktop', desktopConfig]
		]) {
			const reports = [];
			for (let run = 0; run < Number(runs); run++) {
				const options = { port, logLevel: 'silent', onlyCategories: categories };
				reports.push((await lighthouse(url + path, options, config)).lhr);
			}
			const scores = categories.map((category) => {
				const all = reports.map((one) => Math.round(one.categories[category].score * 100));
				const spread = new Set(all).size > 1 ? ` (${all.join(', ')})` : '';
				return `${category} ${median(all)}${spread}`;
			});
			console.log(`/${path} ${device}: ${scores.join('; ')}`);
			for (const line of faults(reports.at(-1))) console.log(`    ${line}`);
		}
	}
} finally {
	await browser.close();
	await close();
}

/** What cost points: every weighed audit under its full score, with the first things it names. */
function faults({ audits, categories: found }) {
	const weighed = Object.values(found).flatMap(({ auditRefs }) =>
		auditRefs.filter(({ weight }) => weight > 0).map(({ id }) => audits[id])
	);
	return weighed
		.filter(({ score }) => score !== null && score < 0.9)
		.map(({ id, displayValue, details }) => {
			const items = (details?.items ?? []).slice(0, 3);
			const named = items.map((item) => item.node?.snippet ?? item.url ?? item.description);
			return [id, displayValue, ...named].filter(Boolean).join(' · ');
		});
}

function freePort() {
	return new Promise((done) => {
		const probe = createServer().listen(0, '127.0.0.1', () => {
			const { port: free } = probe.address();
			probe.close(() => done(free));
		});
	});
}
