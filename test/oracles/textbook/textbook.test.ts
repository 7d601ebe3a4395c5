import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { workbook } from '#core/workbook/workbook.ts';
import { publishedProblems } from '#reference/published-problems.ts';
import { within } from '#test/within.ts';

type Result = {
	printed: string;
	ask: string;
	given: Record<string, number>;
	unit: string;
	toSi: number;
	verdict: string;
	published?: number;
	publishedText?: string;
	recomputed?: number;
	tolerance?: number;
	expected?: number;
	meaning?: string;
	remark?: string;
};
type Case = {
	id: string;
	category: string;
	title: string;
	source: string;
	family: string;
	arrangement: number;
	results: Result[];
};

const file = new URL('./cases.json', import.meta.url);
const { cases, sources } = JSON.parse(readFileSync(file, 'utf8')) as {
	cases: Case[];
	sources: { id: string }[];
};

/** The same call a page makes, turned into the printed unit. */
function ours(each: Case, result: Result): number {
	const family = workbook.find((other) => other.id === each.family)!;
	const given = { ...result.given, arrangement: each.arrangement };
	const { solutions } = family.solve(given, result.ask);
	expect(solutions).toHaveLength(1);
	return solutions[0]!.value / result.toSi;
}

const all = cases.flatMap((each) => each.results.map((result) => ({ each, result })));
const of = (...verdicts: string[]) =>
	all
		.filter(({ result }) => verdicts.includes(result.verdict))
		.map(({ each, result }) => [`${each.id} ${result.printed}`, each, result] as const);

describe('published problems, solved the way a page solves them', () => {
	test('the list is whole', () => {
		expect(cases).toHaveLength(69);
		expect(all).toHaveLength(122);
		for (const each of cases) expect(sources.map(({ id }) => id)).toContain(each.source);
	});

	test('the list that pages show holds the same numbers', () => {
		expect(publishedProblems).toHaveLength(all.length);
		publishedProblems.forEach((row, index) => {
			const { each, result } = all[index]!;
			expect([row.id, row.part, row.ask]).toEqual([each.id, result.printed, result.ask]);
			expect(row.given).toEqual({ ...result.given, arrangement: each.arrangement });
			expect([row.printed, row.toSi]).toEqual([result.publishedText ?? '', result.toSi]);
		});
	});

	test.each(of('agrees'))('%s: to its printed digits', (_, each, result) => {
		within(ours(each, result), result.published!, { absolute: result.tolerance! });
	});

	test.each(of('formula_matches'))('%s: as its formula or word says', (_, each, result) => {
		within(ours(each, result), result.expected!, { relative: 1e-9 });
	});

	test.each(of('rounded_intermediate'))('%s: to the recomputed value', (_, each, result) => {
		within(ours(each, result), result.recomputed!, { relative: 1e-5 });
	});

	test.each(of('no_published_answer'))('%s: to the value worked out by hand', (_, each, result) => {
		const wanted = result.expected ?? result.recomputed!;
		within(ours(each, result), wanted, { absolute: 1e-9 + 1e-6 * Math.abs(wanted) });
	});

	test.each(of('source_error', 'companion_error'))(
		'%s: our value, not the printed one',
		(_, each, result) => {
			const value = ours(each, result);
			within(value, result.recomputed!, { absolute: 6e-7 + 1e-6 * Math.abs(result.recomputed!) });
			expect(Math.abs(value - result.published!)).toBeGreaterThan(result.tolerance!);
		}
	);
});

describe('words that the sources print', () => {
	const regime = (family: string, given: Record<string, number>, ask: string) =>
		workbook.find((each) => each.id === family)!.solve(given, ask).regime;

	test('e02: the block twice as high as wide tips first', () => {
		const given = { width: 1, height: 2, muStatic: 0.63, arrangement: 1 };
		expect(regime('tipping', given, 'firstAngle')).toBe('tips');
	});
	test('a17: 23.9 N does not start the skater', () => {
		const given = {
			mass: 65,
			force: 21.4,
			sideForce: 10.6,
			muStatic: 0.04,
			muKinetic: 0.02,
			gravity: 9.8
		};
		expect(regime('level-floor', given, 'friction')).toBe('rests');
	});
	test('b18: the block slides up', () => {
		const given = { weight: 200, force: 300, forceElevation: 0, slope: Math.PI / 6, muStatic: 0.3 };
		expect(regime('incline', given, 'frictionNeeded')).toBe('slides up');
	});
	test('c13: the lower block cannot be moved by pushing the upper one', () => {
		const given = { massTop: 5, massBottom: 5, muTop: 0.4, force: 1000, arrangement: 2 };
		expect(regime('connected-blocks', given, 'accelerationBottom')).toBe(
			'slides, lower block rests'
		);
	});
	test('f02: a 25° wedge with coefficient 0.2 does not lock', () => {
		const given = { load: 10, wedgeAngle: (25 * Math.PI) / 180, muFace: 0.2 };
		const family = workbook.find((each) => each.id === 'wedge')!;
		expect(family.solve({ ...given, arrangement: 1 }, 'guideForceDown').regime).toBe('slides out');
	});
});
