import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { expect } from './fixtures.ts';

/** Opens what can be taken away of a picture. */
export async function open(page: Page, name: string) {
	await page.getByRole('button', { name: `Take away: ${name}` }).click();
	return page.getByRole('dialog', { name: `Take away: ${name}` });
}

/** Presses a button that saves a file, and reads the file. */
export async function saved(page: Page, name: string, button: string) {
	const sheet = await open(page, name);
	const [download] = await Promise.all([
		page.waitForEvent('download'),
		sheet.getByRole('button', { name: button }).click()
	]);
	await expect(sheet.getByRole('status')).toContainText('Saved as');
	await sheet.getByRole('button', { name: 'Close' }).click();
	return { name: download.suggestedFilename(), bytes: readFileSync(await download.path()) };
}

/** What a parser without the page makes of an SVG file. */
export async function parsed(page: Page, svg: string) {
	return page.evaluate((text) => {
		const file = new DOMParser().parseFromString(text, 'image/svg+xml');
		const all = [...file.querySelectorAll('*')];
		const ids = new Set(all.map(({ id }) => id).filter(Boolean));
		const used = [...text.matchAll(/url\(#([^)]+)\)/g)].map((match) => match[1]!);
		return {
			root: file.documentElement.localName,
			faults: file.querySelectorAll('parsererror').length,
			title: file.querySelector('title')?.textContent,
			text: [...file.querySelectorAll('text')].map((one) => one.textContent).join(' '),
			link: file.querySelector('a')?.getAttribute('href'),
			size: [
				file.documentElement.getAttribute('width'),
				file.documentElement.getAttribute('height')
			],
			styled: all.filter((one) => one.hasAttribute('class') || one.hasAttribute('style')).length,
			handles: file.querySelectorAll('[tabindex], [role="slider"]').length,
			lost: used.filter((id) => !ids.has(id)),
			shapes: file.querySelectorAll('path, line, polygon').length
		};
	}, svg);
}
