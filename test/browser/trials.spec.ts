import { readFile } from 'node:fs/promises';
import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { expect, test } from './fixtures.ts';

const outcomeNames = ['held', 'slipped', 'fingers opened', 'stopped', 'cause not seen'] as const;

async function download(page: Page, format: 'JSON' | 'CSV'): Promise<string> {
	const [file] = await Promise.all([
		page.waitForEvent('download'),
		page.getByRole('button', { name: `Download ${format}` }).click()
	]);
	return readFile((await file.path())!, 'utf8');
}

async function bringIn(page: Page, name: string, text: string) {
	await page
		.getByLabel('Bring in a JSON or CSV file')
		.setInputFiles({ name, mimeType: 'text/plain', buffer: Buffer.from(text) });
}

const records = (json: string) => ({ ...JSON.parse(json), exportedAt: null });

async function planned(page: Page) {
	await page.goto('trials/plan/');
	await page.getByLabel('Person', { exact: true }).fill('Ada');
	await page.getByLabel('Body mass in the clothes worn').fill('70');
	await page.getByLabel('This person is an adult').check();
	await page.getByLabel('Hold', { exact: true }).fill('Board <b>2</b>');
	await page.getByLabel('Slope below').fill('30');
	await page.getByLabel('Name of the grip').fill('Open grip');
	await page.getByLabel('Net load 1').fill('40');
	await page.getByLabel('Net load 2').fill('62,5');
	await page.getByLabel('Best guess').fill('72');
	await page.getByLabel('Never more than').fill('66');
	await page.getByLabel('Blocks', { exact: true }).fill('5');
	await expect(page.getByText(/^23 trials after 8 warm-ups/)).toBeVisible();
}

test.describe('a whole session', () => {
	test.use({ hasTouch: true, isMobile: true, viewport: { width: 390, height: 844 } });

	test('plan, 20 trials by keyboard and touch, reload, undo, files out, wipe, files in', async ({
		page
	}) => {
		await planned(page);
		await page.getByRole('button', { name: 'Keep the plan and open its sheet' }).click();
		await expect(page.getByRole('heading', { name: 'Trial sheet' })).toBeVisible();
		const bar = page.getByRole('group', { name: /^How did/ });
		const next = page.getByRole('region', { name: /^Next: / });
		await expect(page.getByText('Board <b>2</b>')).toBeVisible();

		for (let done = 0; done < 20; done++) {
			const name = done < 8 ? `Warm-up ${done + 1}` : `Trial ${done - 7}`;
			await expect(next).toHaveAccessibleName(`Next: ${name}`);
			const outcome = done < 8 ? 'held' : outcomeNames[done % 5]!;
			// One cap stands in the way from the first opening on: it is obeyed.
			const take = page.getByRole('button', { name: /^Take / });
			if (await take.isVisible()) await take.click();
			const button = bar.getByRole('button', { name: outcome, exact: true });
			// Two taps within 400 ms count as one, so the next hang waits as a person would.
			await page.waitForTimeout(420);
			if (done % 2 === 0) await button.tap();
			else {
				await button.focus();
				await page.keyboard.press('Enter');
			}
			await expect(
				page.getByRole('button', { name: new RegExp(`^${name}: .*${outcome}`) })
			).toBeVisible();
			if (outcome === 'stopped') {
				await page.getByRole('button', { name: 'about to slip' }).tap();
				await expect(page.getByRole('button', { name: 'about to slip' })).toHaveAttribute(
					'aria-pressed',
					'true'
				);
			}
			if (done === 10) {
				// What stands on the unlogged line outlives a reload, and so does the rest.
				await page.getByLabel('Net load', { exact: true }).fill('41.5');
				await page.reload();
				await expect(page.getByLabel('Net load', { exact: true })).toHaveValue('41.5');
				await expect(page.getByText(/^rest [123]:\d\d$/)).toBeVisible();
			}
		}
		await expect(page.getByText('saved', { exact: true })).toBeVisible();

		await page.getByRole('button', { name: 'Undo: Trial 12: cause not seen' }).tap();
		await expect(next).toHaveAccessibleName('Next: Trial 12');
		await page.getByRole('button', { name: 'Do again: Trial 12: cause not seen' }).tap();
		await expect(next).toHaveAccessibleName('Next: Trial 13');
		// Corrected in place, by keyboard.
		await page.getByRole('button', { name: /^Trial 11: / }).press('Enter');
		await page.getByLabel('Note', { exact: true }).fill('=1+1, "said" <i>twice</i>');
		await page.getByLabel('Time held').fill('4,2');
		await page.getByRole('button', { name: 'Done', exact: true }).click();
		await expect(page.getByRole('button', { name: /^Trial 11: .*4\.2/ })).toBeVisible();

		await page.getByRole('link', { name: 'Notebook, files' }).click();
		const json = await download(page, 'JSON');
		const csv = await download(page, 'CSV');
		const before = records(json);
		expect(before.trials).toHaveLength(20);
		expect(
			before.trials.filter(({ outcome }: { outcome: string }) => outcome === 'held').length
		).toBeGreaterThan(8);
		expect(before.plans[0].plan.choice.seed).toEqual(expect.any(Number));
		// A spreadsheet would run it: an apostrophe stops that.
		expect(csv).toContain(`"'=1+1, ""said"" <i>twice</i>"`);

		const wipe = async () => {
			await page.getByRole('button', { name: 'Empty the notebook' }).click();
			await page.getByRole('button', { name: 'Delete everything' }).click();
			await expect(page.getByText('None yet.')).toBeVisible();
		};
		await wipe();
		await bringIn(page, 'notebook.json', json);
		await page.getByRole('button', { name: /^Bring in 2\d records/ }).click();
		await expect(page.getByText(/records of notebook.json are in the notebook/)).toBeVisible();
		expect(records(await download(page, 'JSON'))).toEqual(before);

		await wipe();
		await bringIn(page, 'notebook.csv', csv);
		await page.getByRole('button', { name: /^Bring in 2\d records/ }).click();
		await expect(page.getByText(/records of notebook.csv are in the notebook/)).toBeVisible();
		// A table has no plans; everything else comes back.
		expect(records(await download(page, 'JSON'))).toEqual({ ...before, plans: [] });
	});

	test('every target of the sheet is 44 px high, and the outcomes stay in reach', async ({
		page
	}) => {
		await page.goto('trials/');
		await page.getByRole('button', { name: 'Load the demo' }).tap();
		const bar = page.getByRole('group', { name: /^How did/ });
		await expect(bar).toBeInViewport({ ratio: 1 });
		await expect(page.getByLabel('Net load', { exact: true })).toBeInViewport({ ratio: 1 });
		await expect(page.getByRole('button', { name: /Correct it$/ })).toHaveCount(5);
		for (const fold of await page.locator('main summary').all()) await fold.click();
		await page.getByRole('button', { name: 'Load and rope' }).click();
		await page
			.getByRole('button', { name: /Correct it$/ })
			.first()
			.click();
		const small = await page.evaluate(() =>
			[...document.querySelectorAll('main :is(button, select, summary, input, nav a)')]
				// A box to tick or choose is pressed by its label.
				.map((one) => (one.matches('[type=checkbox], [type=radio]') ? one.closest('label')! : one))
				.filter((one) => one.checkVisibility() && one.getBoundingClientRect().height < 44)
				.map((one) => `${one.textContent?.trim()} ${one.getBoundingClientRect().height}`)
		);
		expect(small).toEqual([]);
	});
});

test('the demo comes with one press and goes with one', async ({ page }) => {
	await page.goto('trials/');
	await page.getByRole('button', { name: 'Load the demo' }).click();
	await expect(page.getByText('Invented demo: nobody hung these.')).toBeVisible();
	await page.getByRole('button', { name: /^30 earlier lines/ }).click();
	await expect(page.getByRole('button', { name: /Correct it$/ })).toHaveCount(35);
	await page.getByRole('button', { name: 'Remove the demo' }).click();
	await expect(page.getByRole('button', { name: 'Load the demo' })).toBeVisible();
});

async function quick(page: Page, adult: boolean) {
	await page.goto('trials/');
	await page.getByRole('button', { name: 'Start a quick session' }).click();
	await page.getByLabel('Person', { exact: true }).fill('B');
	await page.getByLabel('Body mass in the clothes worn').fill('60');
	if (adult) await page.getByLabel('This person is an adult').check();
	await page.getByLabel('Hold', { exact: true }).fill('Rail');
	await page.getByRole('button', { name: 'Begin the session' }).click();
	await expect(page.getByText('Still missing: a name for the grip.')).toBeVisible();
	await page.getByLabel('Grip', { exact: true }).fill('Half crimp');
	await page.getByRole('button', { name: 'Begin the session' }).click();
	await expect(page.getByRole('region', { name: 'Next: Warm-up 1' })).toBeVisible();
}

test('pain ends the suggestions, and nothing else', async ({ page }) => {
	await quick(page, true);
	await page.getByLabel('Net load', { exact: true }).fill('30');
	await page.getByRole('button', { name: 'stopped', exact: true }).click();
	await page.getByRole('button', { name: 'pain', exact: true }).click();
	await expect(page.getByText(/^Pain was noted today/)).toBeVisible();
	await expect(page.getByLabel('Net load', { exact: true })).toHaveValue('');
	await page.getByLabel('Net load', { exact: true }).fill('20');
	// A second outcome within 400 ms counts as the same tap.
	await page.waitForTimeout(450);
	await page.getByRole('button', { name: 'held', exact: true }).click();
	await expect(page.getByRole('button', { name: /^Warm-up 2: 20/ })).toBeVisible();
	await page.getByRole('link', { name: 'Plan a session' }).click();
	await page.getByLabel('Net load 1').fill('20');
	await page.getByLabel('Best guess').fill('50');
	await page.getByLabel('Never more than').fill('50');
	await expect(page.getByText('Pain was noted today. Nothing is planned for today.')).toBeVisible();
});

test('somebody not marked adult gets no loads, here or in a plan', async ({ page }) => {
	await quick(page, false);
	await expect(page.getByText(/^This person is not marked adult/)).toBeVisible();
	await page.getByRole('link', { name: 'Plan a session' }).click();
	await page.getByLabel('Net load 1').fill('20');
	await page.getByLabel('Best guess').fill('50');
	await page.getByLabel('Never more than').fill('50');
	await expect(page.getByText(/^Not marked adult: no loads are planned/)).toBeVisible();
	await expect(page.getByRole('button', { name: /^Keep the plan/ })).toHaveCount(0);
});

test('the caps refuse a load beside its field, and offer the one they allow', async ({ page }) => {
	await quick(page, true);
	const load = page.getByLabel('Net load', { exact: true });
	await load.fill('40');
	await page.getByRole('button', { name: 'held', exact: true }).click();
	await expect(page.getByRole('region', { name: 'Next: Warm-up 2' })).toBeVisible();
	await load.fill('50');
	await expect(page.getByText(/Above the cap of 44.kg: a tenth above/)).toBeVisible();
	await page.getByRole('button', { name: /^Take 44/ }).click();
	await expect(load).toHaveValue('44');
	// Bad text stays in its field, and the line keeps the last good load.
	await load.fill('heavy');
	await expect(page.getByText(/Net load: a number from .* It stays 44/)).toBeVisible();
	await expect(load).toHaveValue('heavy');
});

test('the hang clock counts in, runs, and survives a reload', async ({ page }) => {
	await quick(page, true);
	// The page's clock stands still between the moments named here; its timers run on.
	const began = Date.now();
	const at = (seconds: number) => page.clock.setFixedTime(began + seconds * 1000);
	await at(0);
	await page.getByLabel('Net load', { exact: true }).fill('30');
	await page.getByRole('button', { name: 'Start the hang clock' }).click();
	await expect(page.getByText('on in 5')).toBeVisible();
	await at(7);
	await expect(page.getByText('2 s', { exact: true })).toBeVisible();
	await page.reload();
	await expect(page.getByText('2 s', { exact: true })).toBeVisible();
	await at(8.3);
	await page.getByRole('button', { name: 'Off the hold' }).click();
	await at(20);
	await page.getByRole('button', { name: 'slipped', exact: true }).click();
	await expect(page.getByRole('button', { name: /^Warm-up 1: .*slipped, 3\.3\s*s/ })).toBeVisible();
});

test('two tabs see each other', async ({ page, context }) => {
	await quick(page, true);
	const other = await context.newPage();
	await other.goto('trials/');
	await page.getByLabel('Net load', { exact: true }).fill('30');
	await page.getByRole('button', { name: 'held', exact: true }).click();
	await expect(other.getByRole('button', { name: /^Warm-up 1: 30/ })).toBeVisible();
	await other.getByRole('button', { name: 'Undo: Warm-up 1: held' }).click();
	await expect(page.getByRole('button', { name: /^Warm-up 1: 30/ })).toHaveCount(0);
});

test('a bad table is looked at row by row before anything is written', async ({ page }) => {
	await page.goto('trials/notebook/');
	const rows = ['net load [lb];outcome;grip', '100;held;Open', 'heavy;held;Open', '90;flew;Open'];
	await bringIn(page, 'bad.csv', rows.join('\r\n'));
	const table = page.getByRole('region', { name: 'Problems, row by row' });
	await expect(table.getByRole('row', { name: /^3 .*stays out/ })).toBeVisible();
	await expect(table.getByRole('row', { name: /^4 .*stays out/ })).toBeVisible();
	await expect(page.getByText('None yet.')).toBeVisible();
	await page.getByRole('button', { name: 'Leave it' }).click();
	await expect(page.getByText('Cancelled. Nothing was changed.')).toBeVisible();
	await bringIn(page, 'newer.json', '{"format":"trials-notebook","version":99}');
	await expect(page.getByText(/version 99/)).toBeVisible();
	await expect(page.getByRole('button', { name: 'Nothing to bring in' })).toHaveAttribute(
		'aria-disabled',
		'true'
	);
});

test('doubled numbers, negative times and a clock set back come in flagged, here and on the sheet', async ({
	page
}) => {
	await page.goto('trials/notebook/');
	const rows = [
		'trial,load [kg],outcome,seconds,timestamp',
		'1,50,held,5,2026-03-09T18:00:00Z',
		'2,50,slipped,-3,2026-03-09T17:00:00Z',
		'2,50,slipped,1,2026-03-09T18:10:00Z',
		...[3, 4, 5, 6, 7, 8].map((number) => `${number},50,held,5,2026-03-09T19:0${number}:00Z`)
	];
	await bringIn(page, 'odd.csv', rows.join('\n'));
	const table = page.getByRole('region', { name: 'Problems, row by row' });
	await expect(
		table.getByRole('row', { name: /^3 trial number .*look at it: Number 2/ })
	).toBeVisible();
	await expect(
		table.getByRole('row', { name: /^3 time held .*-3 s held is below 0/ })
	).toBeVisible();
	await expect(table.getByRole('row', { name: /^3 logged at .*clock was changed/ })).toBeVisible();
	await expect(table.getByRole('row', { name: /^4 trial number .*Number 2/ })).toBeVisible();
	await page.getByRole('button', { name: /^Bring in \d+ records/ }).click();
	await expect(page.getByText(/records of odd.csv are in the notebook/)).toBeVisible();
	await page.goto('trials/');
	// Out of sight, they are counted; in sight, each is named.
	await page.getByRole('button', { name: '4 earlier lines, 2 to look at' }).click();
	await expect(page.getByText('-3 s held is below 0.')).toBeVisible();
	await expect(page.getByText('Number 2 stands on 2 trials.')).toHaveCount(2);
	await expect(page.getByText(/the clock was changed/)).toBeVisible();
});

test('20,000 rows: progress, cancel, then all of them', async ({ page }) => {
	test.slow();
	await page.goto('trials/notebook/');
	await expect(page.getByText('None yet.')).toBeVisible();
	const rows = Array.from({ length: 20_000 }, (_, i) => `2026-01-01,${i + 1},A,Open,50,held`);
	const csv = ['day,trial,person,grip,net load [kg],outcome', ...rows].join('\n');
	await bringIn(page, 'long.csv', csv);
	await expect(page.getByRole('progressbar')).toBeVisible();
	// At once: waiting for a button to stand still may outlast the reading.
	await page.getByRole('button', { name: 'Cancel' }).dispatchEvent('click');
	await expect(page.getByText('Cancelled. Nothing was changed.')).toBeVisible();
	await bringIn(page, 'long.csv', csv);
	await page.getByRole('button', { name: /^Bring in 20\d\d\d records/ }).click({ timeout: 60_000 });
	await expect(page.getByText(/^Writing\s+long.csv/)).toBeVisible();
	await page.getByRole('button', { name: 'Cancel' }).click();
	await expect(page.getByText('Cancelled. Nothing was changed.')).toBeVisible({ timeout: 60_000 });
	await expect(page.getByText('None yet.')).toBeVisible();
	await bringIn(page, 'long.csv', csv);
	await page.getByRole('button', { name: /^Bring in 20\d\d\d records/ }).click({ timeout: 60_000 });
	await expect(page.getByText(/records of long.csv are in the notebook/)).toBeVisible({
		timeout: 60_000
	});
	await expect(page.getByText('20000 trials')).toBeVisible();
});

for (const theme of ['light', 'dark'] as const) {
	for (const width of [320, 1440]) {
		test(`axe finds nothing on filled pages, ${theme}, ${width} px`, async ({ page }) => {
			test.slow();
			await page.setViewportSize({ width, height: width === 320 ? 256 : 900 });
			await page.emulateMedia({ colorScheme: theme });
			const clean = async () => {
				const { violations } = await new AxeBuilder({ page }).analyze();
				expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map((n) => n.html)}`)).toEqual([]);
				// 320 px is 1280 px at 400 %.
				const sideways = await page.evaluate(
					() => document.documentElement.scrollWidth - document.documentElement.clientWidth
				);
				expect(sideways).toBeLessThanOrEqual(0);
			};
			await planned(page);
			await clean();
			await page.goto('trials/');
			await page.getByRole('button', { name: 'Load the demo' }).click();
			await page.getByRole('button', { name: 'stopped', exact: true }).click();
			await page.getByRole('button', { name: 'Start the hang clock' }).click();
			await page.getByRole('button', { name: 'Load and rope' }).click();
			await page
				.getByRole('button', { name: /Correct it$/ })
				.first()
				.click();
			for (const fold of await page.locator('main summary').all()) await fold.click();
			await clean();
			await page.getByRole('button', { name: 'slip or opened?' }).click();
			await clean();
			await page.keyboard.press('Escape');
			await page.goto('trials/notebook/');
			await page.getByText('Demo: slick board').first().click();
			await bringIn(page, 'bad.csv', 'net load;outcome\n50;held\n60;flew');
			await page.getByRole('region', { name: 'Problems, row by row' }).waitFor();
			await page.evaluate(() => {
				for (const fold of document.querySelectorAll<HTMLDetailsElement>('main details')) {
					fold.open = true;
				}
			});
			await clean();
		});
	}
}

test('where the browser keeps nothing, the page says so and offers a file', async ({ page }) => {
	await page.addInitScript(() => {
		IDBFactory.prototype.open = () => {
			throw new DOMException('denied', 'SecurityError');
		};
	});
	await page.goto('trials/');
	await expect(page.getByText(/does not let the page keep anything/)).toBeVisible();
	await page.getByRole('button', { name: 'Load the demo' }).click();
	await expect(page.getByText('in memory only')).toBeVisible();
	const [file] = await Promise.all([
		page.waitForEvent('download'),
		page.getByRole('button', { name: 'Download the notebook, this with it' }).click()
	]);
	expect(JSON.parse(await readFile((await file.path())!, 'utf8')).trials).toHaveLength(35);
});

test('a full device: the trial waits, is in the file, and goes in when there is room', async ({
	page
}) => {
	await page.goto('trials/');
	await page.getByRole('button', { name: 'Load the demo' }).click();
	await expect(page.getByRole('region', { name: 'Next: Trial 28' })).toBeVisible();
	await page.evaluate(() => {
		const put = IDBObjectStore.prototype.put;
		(window as unknown as { room: () => void }).room = () => (IDBObjectStore.prototype.put = put);
		IDBObjectStore.prototype.put = () => {
			throw new DOMException('no room', 'QuotaExceededError');
		};
	});
	await page.getByRole('button', { name: 'held', exact: true }).click();
	await expect(page.getByText('not saved', { exact: true })).toBeVisible();
	await expect(page.getByText(/^The device has no room left/)).toBeVisible();
	const [file] = await Promise.all([
		page.waitForEvent('download'),
		page.getByRole('button', { name: 'Download the notebook, this with it' }).click()
	]);
	expect(JSON.parse(await readFile((await file.path())!, 'utf8')).trials).toHaveLength(36);
	await page.evaluate(() => (window as unknown as { room: () => void }).room());
	await page.getByRole('button', { name: /^Try again: Trial 28/ }).click();
	await expect(page.getByText('saved', { exact: true })).toBeVisible();
	await expect(page.getByRole('button', { name: /^Trial 28: 50/ })).toBeVisible();
});
