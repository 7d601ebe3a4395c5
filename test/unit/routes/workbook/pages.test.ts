import { describe, expect, test } from 'vitest';
import { workbook } from '#core/workbook/workbook.ts';
import { citations } from '#reference/citations.ts';
import { misconceptions } from '#reference/misconceptions.ts';
import { publishedProblems } from '#reference/published-problems.ts';
import { tabulated } from '#reference/tabulated.ts';
import { subPages } from '../../../../src/routes/pages.ts';
import { familyList, loadFamily } from '../../../../src/routes/workbook/families.ts';
import { cases } from '../../../../src/routes/workbook/misconceptions/cases.ts';
import { comparePart, differs, digitsFor } from '../../../../src/routes/workbook/published/rows.ts';
import { groupPairs } from '../../../../src/routes/workbook/tables/group-pairs.ts';
import { readProblem } from '#state/workbook/link.ts';
import { ProblemState } from '#state/workbook/problem.svelte.ts';

describe('the workbook’s pages', () => {
	test('the list of families is the core’s, in its order, and each is a known page', async () => {
		expect(familyList.map(({ id, title }) => ({ id, title }))).toEqual(
			workbook.map(({ id, title }) => ({ id, title }))
		);
		const paths = subPages.map(({ path }) => path);
		for (const { id } of familyList) {
			expect((await loadFamily(id)).id).toBe(id);
			expect(paths).toContain(`/workbook/${id}/`);
		}
	});

	test('a published problem’s link gives the same answer as its givens', () => {
		expect(publishedProblems.length).toBeGreaterThan(100);
		for (const problem of publishedProblems) {
			const family = workbook.find(({ id }) => id === problem.family)!;
			const part = comparePart(family, problem);
			expect(readProblem(part.query).notes).toEqual([]);
			const opened = new ProblemState(family);
			opened.open(part.query);
			const values = opened.answer.solutions.map(({ value }) => value.toPrecision(8));
			expect(values, problem.title).toEqual(part.ours.map(({ value }) => value.toPrecision(8)));
			expect(Object.hasOwn(citations, problem.source), problem.source).toBe(true);
			// A difference is never left without a word on it.
			if (differs(problem)) expect(problem.remark, problem.title).not.toBe('');
		}
	});

	test('as many digits are shown as are printed, at least three', () => {
		expect(digitsFor('0.21')).toBe(3);
		expect(digitsFor('137.25')).toBe(5);
		expect(digitsFor('')).toBe(3);
	});

	test('each misconception has a case that the solver can answer over its whole range', () => {
		for (const { key } of misconceptions) {
			// Not a matter of friction: pairs of goes answer it, not a family.
			if (key === 'few-goes') continue;
			const live = cases[key];
			expect(live, key).toBeDefined();
			const family = workbook.find(({ id }) => id === live!.family)!;
			const { id, from, to } = live!.move;
			for (const share of [0, 0.3, 0.7, 1])
				for (const ask of live!.show) {
					const answer = family.solve({ ...live!.given, [id]: from + share * (to - from) }, ask);
					expect(answer.solutions.length, `${key}: ${ask} at ${share}`).toBe(1);
					expect(answer.warnings, `${key}: ${ask} at ${share}`).toEqual([]);
				}
		}
	});

	test('each word on skin names its sources, and there is one for each case', () => {
		expect(Object.keys(cases).length).toBe(misconceptions.length - 1);
		for (const [key, { skin }] of Object.entries(cases)) {
			expect(skin.source.length, key).toBeGreaterThan(0);
			for (const source of skin.source) expect(Object.hasOwn(citations, source), source).toBe(true);
		}
	});

	test('pairs are grouped whatever the order of their names, and none is lost', () => {
		const groups = groupPairs(tabulated);
		expect(groups.flatMap(({ rows }) => rows)).toHaveLength(tabulated.length);
		expect(groups.length).toBeLessThan(tabulated.length);
	});
});
