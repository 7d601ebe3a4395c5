import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { expect } from './fixtures.ts';

/** Brings the demo in as any file comes in: through the notebook's import. */
export async function bringIn(page: Page, file: string | Buffer) {
	await page.goto('trials/notebook/');
	const buffer = typeof file === 'string' ? readFileSync(file) : file;
	await page
		.locator('input[type="file"]')
		.setInputFiles({ name: 'notebook.json', mimeType: 'application/json', buffer });
	await page.getByRole('button', { name: /^Bring in \d+ records/ }).click();
	await expect(page.getByText('are in the notebook')).toBeVisible({ timeout: 30_000 });
}
