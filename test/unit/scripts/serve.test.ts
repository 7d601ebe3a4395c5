import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { get } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { serve } from '../../../scripts/serve.mjs';

const folder = mkdtempSync(join(tmpdir(), 'serve-'));
let served: { url: string; close: () => Promise<void> };

beforeAll(async () => {
	mkdirSync(join(folder, 'site', 'page'), { recursive: true });
	mkdirSync(join(folder, 'site-of-others'));
	writeFileSync(join(folder, 'site', 'page', 'index.html'), 'here');
	writeFileSync(join(folder, 'site-of-others', 'a.txt'), 'not ours');
	served = await serve({ folder: join(folder, 'site'), port: 0 });
});
afterAll(async () => {
	await served.close();
	rmSync(folder, { recursive: true, force: true });
});

/** Asks for a path as it is written: fetch would tidy it up first. */
const ask = (path: string) =>
	new Promise<{ status: number; text: string }>((resolve, reject) => {
		get({ host: '127.0.0.1', port: new URL(served.url).port, path }, (response) => {
			let text = '';
			response.on('data', (part: Buffer) => (text += part.toString()));
			response.on('end', () => resolve({ status: response.statusCode ?? 0, text }));
		}).on('error', reject);
	});

test.each(['//', '/%zz', '/../site-of-others/a.txt', '/..%2fsite-of-others/a.txt', '/none'])(
	'%s is not found, and the server goes on',
	async (path) => {
		expect((await ask(path)).status).toBe(404);
		expect(await ask('/page/?x=1')).toEqual({ status: 200, text: 'here' });
	}
);
