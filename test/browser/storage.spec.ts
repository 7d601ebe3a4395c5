import { expect, test } from '@playwright/test';
import type { BrowserContext, Page } from '@playwright/test';
import { build } from 'vite';
import { serve } from '../../scripts/serve.mjs';
import type { Tools } from './storage-page/main.ts';

declare const tools: Tools;

let server: { url: string; close: () => Promise<void> };

test.beforeAll(async () => {
	// The room itself, as built for browsers, with nothing of the pages around it.
	const folder = `reports/storage-page-${test.info().workerIndex}`;
	await build({
		configFile: false,
		root: 'test/browser/storage-page',
		base: './',
		logLevel: 'error',
		worker: { format: 'es' },
		build: { outDir: `${process.cwd()}/${folder}`, emptyOutDir: true, target: 'es2022' }
	});
	server = await serve({ folder, port: 0 });
});

test.afterAll(async () => server?.close());

/** A tab with the tools; anything on the console, or any error, fails the test. */
async function tab(context: BrowserContext): Promise<Page> {
	const page = await context.newPage();
	page.on('pageerror', (error) => expect.soft(error, 'page error').toBeNull());
	page.on('console', (message) => expect.soft(message.text(), 'console').toBe(''));
	await page.goto(server.url);
	await page.waitForFunction(() => 'tools' in globalThis);
	return page;
}

async function filled(context: BrowserContext): Promise<Page> {
	const page = await tab(context);
	const outcome = await page.evaluate(async () => {
		await tools.open();
		return tools.outcome(tools.store!.apply('Demo', tools.all(tools.sample)));
	});
	expect(outcome).toBe('resolved');
	return page;
}

const notebook = (page: Page) => page.evaluate(() => tools.store!.notebook());

test('what is committed survives a reload, undo and redo with it', async ({ context }) => {
	const page = await filled(context);
	const whole = await notebook(page);
	await page.evaluate(() =>
		tools.store!.apply('Deleted', [tools.remove('trials', 'demo-trial-20')])
	);
	await page.reload();
	await page.waitForFunction(() => 'tools' in globalThis);
	const undone = await page.evaluate(async () => {
		await tools.open();
		const before = await tools.store!.list('trials');
		const { label } = await tools.store!.undo();
		return { count: before.length, label };
	});
	expect(undone).toEqual({ count: whole.trials.length - 1, label: 'Deleted' });
	expect(await notebook(page)).toEqual(whole);
	await page.reload();
	await page.waitForFunction(() => 'tools' in globalThis);
	expect(
		await page.evaluate(async () => (await tools.open()) && (await tools.store!.redo()).label)
	).toBe('Deleted');
	expect((await notebook(page)).trials).toHaveLength(whole.trials.length - 1);
});

test('two tabs see each other’s changes', async ({ context }) => {
	const one = await filled(context);
	const other = await tab(context);
	await other.evaluate(() => tools.open());
	await one.evaluate(() =>
		tools.store!.apply('Edited', [
			tools.put('trials', { ...tools.sample.trials[0]!, note: 'from the first tab' })
		])
	);
	await other.waitForFunction(() => tools.notices.length > 0);
	expect(await other.evaluate(() => tools.notices)).toEqual([
		{ touched: [{ kind: 'trials', id: 'demo-trial-01' }], from: 'elsewhere' }
	]);
	expect(await other.evaluate(() => tools.store!.get('trials', 'demo-trial-01'))).toMatchObject({
		note: 'from the first tab'
	});
	await other.evaluate(() => tools.store!.undo());
	expect(await one.evaluate(() => tools.store!.get('trials', 'demo-trial-01'))).toMatchObject({
		note: ''
	});
});

test('the device is full: typed, nothing half-written, and what fits still goes in', async ({
	context
}) => {
	const page = await tab(context);
	// Before the first use: the browser looks at the room left only now and then.
	const client = await context.newCDPSession(page);
	const origin = new URL(server.url).origin;
	await client.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 4_000_000 });
	await page.evaluate(async () => {
		await tools.open();
		await tools.store!.apply('Demo', tools.all(tools.sample));
	});
	const whole = await notebook(page);
	const outcome = await page.evaluate(() => {
		const note = 'x'.repeat(4000);
		const changes = tools.many(4000).map((trial) => tools.put('trials', { ...trial, note }));
		return tools.outcome(tools.store!.apply('Too much', changes));
	});
	expect(outcome).toBe('full');
	expect(await notebook(page)).toEqual(whole);
	expect(
		await page.evaluate(() =>
			tools.outcome(
				tools.store!.apply('One', [tools.put('trials', { ...tools.many(1)[0]!, note: 'fits' })])
			)
		)
	).toBe('resolved');
});

test('a transaction that the browser aborts keeps nothing', async ({ context }) => {
	const page = await filled(context);
	const whole = await notebook(page);
	const outcome = await page.evaluate(async () => {
		const { put } = IDBObjectStore.prototype;
		let count = 0;
		IDBObjectStore.prototype.put = function (...args) {
			const request = put.apply(this, args);
			if (++count === 400) this.transaction.abort();
			return request;
		};
		const changes = tools.many(1000).map((trial) => tools.put('trials', trial));
		const ended = await tools.outcome(tools.store!.apply('x', changes));
		IDBObjectStore.prototype.put = put;
		return ended;
	});
	expect(outcome).toBe('aborted');
	expect(await notebook(page)).toEqual(whole);
	expect(await page.evaluate(() => tools.store!.operations())).toHaveLength(1);
});

test('another tab holds an older version open: blocked, and free once it is closed', async ({
	context
}) => {
	const old = await filled(context);
	await old.evaluate(() => tools.store!.close());
	expect(await old.evaluate(() => tools.hold(1))).toBe('held');
	const page = await tab(context);
	expect(await page.evaluate(() => tools.open(2))).toBe('blocked');
	await old.close();
	await expect.poll(() => page.evaluate(() => tools.open(2))).toBe('open');
});

test('an older notebook is brought up, its undo log too', async ({ context }) => {
	const page = await filled(context);
	const label = await page.evaluate(async () => {
		const person = { ...tools.sample.people[0]!, label: 'renamed' };
		await tools.store!.apply('Renamed', [tools.put('people', person)]);
		tools.store!.close();
		await tools.open(2);
		const now = (await tools.store!.list('people'))[0]!.label;
		await tools.store!.undo();
		return [now, (await tools.store!.list('people'))[0]!.label];
	});
	expect(label).toEqual(['renamed!', 'Demo: invented climber!']);
});

test('a migration that fails changes nothing', async ({ context }) => {
	const page = await filled(context);
	const whole = await notebook(page);
	const outcome = await page.evaluate(async () => {
		tools.store!.close();
		// There are no steps beyond version 2.
		return [await tools.open(4), await tools.open(1)];
	});
	expect(outcome).toEqual(['damaged', 'open']);
	expect(await notebook(page)).toEqual(whole);
});

test('a newer notebook is left alone; a tab still open on the old one says so', async ({
	context
}) => {
	const old = await filled(context);
	const newer = await tab(context);
	expect(await newer.evaluate(() => tools.open(2))).toBe('open');
	expect(
		await old.evaluate(() => tools.outcome(tools.store!.apply('x', tools.all(tools.sample))))
	).toBe('newer-schema');
	expect(await old.evaluate(() => tools.open(1))).toBe('newer-schema');
	expect((await notebook(newer)).trials).toHaveLength(35);
});

test('a browser that keeps nothing: a notebook in memory, and the reason', async ({ context }) => {
	const page = await tab(context);
	const found = await page.evaluate(async () => {
		const result: unknown[] = [];
		const { open } = IDBFactory.prototype;
		for (const name of ['SecurityError', 'InvalidStateError']) {
			IDBFactory.prototype.open = () => {
				throw new DOMException('not here', name);
			};
			const { store, fault } = await tools.openNotebookOrMemory();
			await store.apply('Demo', tools.all(tools.sample));
			result.push([fault!.kind, store.kept, (await store.list('trials')).length]);
		}
		// A notebook that is there but cannot be read is never replaced by a blank one.
		IDBFactory.prototype.open = () => {
			throw new DOMException('not readable', 'UnknownError');
		};
		result.push(await tools.outcome(tools.openNotebookOrMemory()));
		IDBFactory.prototype.open = open;
		return result;
	});
	expect(found).toEqual([['unavailable', false, 35], ['unavailable', false, 35], 'damaged']);
});

test('a tab closed in the middle of writing: all that was acknowledged is there', async ({
	context
}) => {
	test.setTimeout(240_000);
	// The writing never ends by itself, so the tab always closes in the middle of it; how much was
	// acknowledged before decides when, not a clock.
	for (const enough of [1, 10, 60]) {
		const page = await filled(context);
		const acknowledged: string[] = [];
		await page.exposeFunction('acknowledge', (id: string) => acknowledged.push(id));
		await page.evaluate(() => {
			const acknowledge = (globalThis as unknown as { acknowledge: (id: string) => void })
				.acknowledge;
			const [trial] = tools.many(1);
			void (async () => {
				for (let i = 1; ; i++) {
					const next = { ...trial!, id: `demo-quick-${String(i).padStart(6, '0')}` };
					await tools.store!.apply('Logged', [tools.put('trials', next)]);
					document.body.textContent = next.id;
					acknowledge(next.id);
				}
			})();
		});
		await expect(page.locator('body')).toHaveText(/^demo-quick-/);
		await expect.poll(() => acknowledged.length).toBeGreaterThanOrEqual(enough);
		await page.close();
		const after = await tab(context);
		await after.evaluate(() => tools.open());
		const found = await after.evaluate(async () => {
			const trials = await tools.store!.list('trials');
			return trials.map(({ id }) => id).filter((id) => id.startsWith('demo-quick-'));
		});
		expect(found).toEqual(expect.arrayContaining(acknowledged));
		await after.evaluate(async () => {
			const { trials } = await tools.store!.notebook();
			const quick = trials.filter(({ id }) => id.startsWith('demo-quick-'));
			await tools.store!.apply(
				'Cleared',
				quick.map(({ id }) => tools.remove('trials', id))
			);
		});
		await after.close();
	}
});

test('a tab closed in the middle of a long change: all of it or nothing', async ({ context }) => {
	test.setTimeout(240_000);
	for (const delay of [20, 200, 500]) {
		const page = await filled(context);
		await page.evaluate(() => {
			const changes = tools.many(8000).map((trial) => tools.put('trials', trial));
			void tools.store!.apply('Long', changes);
		});
		await page.waitForTimeout(delay);
		await page.close();
		const after = await tab(context);
		await after.evaluate(() => tools.open());
		const [many, operations] = await after.evaluate(async () => [
			(await tools.store!.list('trials')).filter(({ id }) => id.startsWith('demo-many-')).length,
			(await tools.store!.operations()).filter(({ label }) => label === 'Long').length
		]);
		expect([
			[0, 0],
			[8000, 1]
		]).toContainEqual([many, operations]);
		await after.evaluate(async () => {
			const [last] = await tools.store!.operations(1);
			if (last?.label === 'Long') await tools.store!.undo();
		});
		await after.close();
	}
});

test('20,000 rows: read in a worker with progress, merged and written, undone; or cancelled', async ({
	context
}) => {
	test.setTimeout(240_000);
	const page = await filled(context);
	const found = await page.evaluate(async () => {
		const long: number[] = [];
		const text = tools.exportCsv({ ...tools.sample, trials: tools.many(20_000) });
		const file = new Blob([text]);
		const existing = await tools.store!.notebook();
		await new Promise((resolve) => setTimeout(resolve, 300));
		const observer = new PerformanceObserver((list) => {
			for (const entry of list.getEntries()) long.push(Math.round(entry.duration));
		});
		observer.observe({ type: 'longtask' });
		const progress: number[] = [];
		const began = performance.now();
		const draft = await tools.readInWorker(file, '2026-03-09', {
			progress: (done) => progress.push(done)
		});
		const read = performance.now();
		const merge = await tools.planMerge(existing, draft);
		const merged = performance.now();
		const operation = await tools.store!.apply('Imported', tools.mergeChanges(merge, 'keep'));
		const written = performance.now();
		await new Promise((resolve) => setTimeout(resolve, 100));
		observer.disconnect();
		const cancel = new AbortController();
		const cancelled = await tools.outcome(
			tools.readInWorker(file, '2026-03-09', {
				progress: (done) => void (done > 0 && cancel.abort()),
				signal: cancel.signal
			})
		);
		const asked = performance.now();
		const trials = await tools.store!.trialsOf('demo-session');
		const listed = performance.now() - asked;
		await tools.store!.undo();
		return {
			refused: draft.refused,
			progress: progress.length,
			count: operation!.count,
			trials: trials.length,
			cancelled,
			left: (await tools.store!.list('trials')).length,
			times: {
				read: Math.round(read - began),
				merge: Math.round(merged - read),
				write: Math.round(written - merged),
				list: Math.round(listed),
				long
			}
		};
	});
	// Times are told, not asserted: they belong to the machine.
	test.info().annotations.push({ type: 'ms', description: JSON.stringify(found.times) });
	expect(found).toMatchObject({
		refused: 0,
		count: 20_000,
		trials: 20_035,
		cancelled: 'cancelled',
		left: 35
	});
	expect(found.progress).toBeGreaterThan(50);
});
