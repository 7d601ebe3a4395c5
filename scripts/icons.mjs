// Draws the installed site's icons: the site's mark at the sizes that phones and desktops ask for.
// Run by hand after static/icon.svg has changed: node scripts/icons.mjs
import { readFileSync, writeFileSync } from 'node:fs';
import { chromiumArgs, findBrowser } from './browser.mjs';

const { chromium } = await import('@playwright/test');
const mark = readFileSync('static/icon.svg', 'utf8');
// A mask may cut off all but the middle four fifths, and a phone rounds the corners itself.
const square = mark.replace(' rx="6"', '');
const ground = /<rect[^>]*fill="([^"]+)"/.exec(mark)[1];
const icons = [
	{ name: 'icon-192.png', size: 192, svg: mark, inset: 0 },
	{ name: 'icon-512.png', size: 512, svg: mark, inset: 0 },
	{ name: 'icon-maskable-512.png', size: 512, svg: square, inset: 0.1 },
	{ name: 'icon-180.png', size: 180, svg: square, inset: 0.04 }
];

const browser = await chromium.launch({
	executablePath: await findBrowser(),
	args: chromiumArgs
});
const page = await browser.newPage();
for (const { name, size, svg, inset } of icons) {
	const pad = Math.round(size * inset);
	await page.setViewportSize({ width: size, height: size });
	await page.setContent(
		`<style>*{margin:0}svg{position:absolute;left:${pad}px;top:${pad}px;width:${size - 2 * pad}px;height:${size - 2 * pad}px}</style>${svg}`
	);
	if (inset > 0) await page.addStyleTag({ content: `html{background:${ground}}` });
	writeFileSync(`static/${name}`, await page.screenshot({ omitBackground: inset === 0 }));
}
await browser.close();
