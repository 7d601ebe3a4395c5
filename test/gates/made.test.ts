import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { citations } from '../../src/reference/citations.ts';
import { outsideChecks } from '../../src/reference/made/checks.ts';
import { formulas } from '../../src/reference/made/formulas.ts';
import { lastRun } from '../../src/reference/made/last-run.ts';
import { testKinds } from '../../src/reference/made/types.ts';
import { gathered } from '../../scripts/gather-facts.mjs';
import { countCases } from '../../scripts/gather/checks.mjs';

describe('what is gathered from the code is up to date', () => {
	test('formulas, uses, checks and works are as the code has them now', async () => {
		const files = Object.entries(await gathered(citations));
		expect(files.length).toBe(4);
		const stale = files.filter(
			([path, text]) => !existsSync(path) || readFileSync(path, 'utf8') !== text
		);
		expect(
			stale.map(([path]) => `${path} is out of date: run node scripts/gather-facts.mjs`)
		).toEqual([]);
	});

	test('there is something gathered', () => {
		expect(formulas.length).toBeGreaterThan(80);
		expect(new Set(formulas.map(({ key }) => key)).size).toBe(formulas.length);
		expect(formulas.filter(({ usedOn }) => usedOn.length > 0).length).toBeGreaterThan(20);
		expect(formulas.find(({ name }) => name === 'evaluateHang')?.usedOn).toContain('Explore');
		expect(outsideChecks.length).toBeGreaterThan(2);
		for (const { topic, cases } of outsideChecks) expect(cases, topic).toBeGreaterThan(0);
	});

	test('cases are counted as a reader would', () => {
		expect(countCases([{ expected: 1 }, { expected: 2 }])).toBe(2);
		expect(countCases({ cases: [{ expected: 1 }] })).toBe(1);
		expect(countCases({ sources: [{}, {}], limits: { a: { x: 1 }, b: { x: [1, 2] } } })).toBe(2);
		expect(
			countCases({
				table: [
					[1, 2],
					[3, 4]
				]
			})
		).toBe(2);
		expect(countCases({ one: { data: [1, 2, 3] } })).toBe(1);
	});

	test('a run that is written down was a whole one, and nothing failed in it', () => {
		// Until a run is written down the page says so; numbers are never made up.
		if (lastRun === null) return;
		expect(lastRun.day).toMatch(/^20\d\d-\d\d-\d\d$/);
		for (const kind of testKinds) {
			const { files, passed, failed } = lastRun.counts[kind];
			expect(files, kind).toBeGreaterThan(0);
			expect(passed, kind).toBeGreaterThanOrEqual(files);
			expect(failed, kind).toBe(0);
		}
		// More outside checks passed than there are topics of them.
		expect(Object.keys(lastRun.topics).length).toBeGreaterThan(2);
		expect(Object.values(lastRun.topics).reduce((sum, one) => sum + one, 0)).toBe(
			lastRun.counts.oracles.passed
		);
	});
});
