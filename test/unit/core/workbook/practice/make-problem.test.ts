import katex from 'katex';
import { describe, expect, test } from 'vitest';
import { checkAnswer } from '#core/workbook/answer-check/check-answer.ts';
import { makeProblem } from '#core/workbook/practice/make-problem.ts';
import { workbook } from '#core/workbook/workbook.ts';

const everySetup = workbook.flatMap((family) =>
	family.setups.map(({ id, number }) => [`${family.id} / ${id}`, family, number] as const)
);

describe('practice problems', () => {
	test('the same seed gives the same problem, another seed another', () => {
		const family = workbook[1]!;
		expect(makeProblem(family, 5)).toEqual(makeProblem(family, 5));
		const asked = new Set(
			[1, 2, 3, 4, 5, 6].map((seed) => makeProblem(family, seed).statement.join())
		);
		expect(asked.size).toBe(6);
	});

	test.each(everySetup)(
		'%s: solvable, stated in whole, its own answer is right',
		(_, family, number) => {
			for (let seed = 1; seed <= 12; seed += 1) {
				const problem = makeProblem(family, seed, number);
				const given = { ...problem.given, arrangement: number };
				const answer = family.solve(given, problem.ask);
				expect(answer.solutions).toEqual(problem.answer.solutions);
				expect(answer.solutions).toHaveLength(1);
				expect(problem.statement.length).toBeGreaterThanOrEqual(2);
				const { value, unit } = answer.solutions[0]!;
				const text = unit === 'rad' ? `${(value * 180) / Math.PI} deg` : `${value}`;
				expect(checkAnswer(family, given, problem.ask, text).verdict).toBe('right');
			}
		}
	);

	test.each(everySetup)('%s: hints and working are TeX that renders', (_, family, number) => {
		for (let seed = 1; seed <= 6; seed += 1) {
			const problem = makeProblem(family, seed, number);
			const lines = family.working({ ...problem.given, arrangement: number }, problem.ask);
			expect(lines.length).toBeGreaterThan(0);
			expect(problem.hints.length).toBeGreaterThan(1);
			const all = [
				...lines.flatMap((line) => [line.symbols, line.numbers]),
				...problem.hints.flatMap((hint) => (hint.tex ? [hint.tex] : []))
			];
			for (const tex of all) {
				expect(tex).not.toMatch(/NaN|undefined/);
				expect(() =>
					katex.renderToString(tex, { throwOnError: true, strict: 'error' })
				).not.toThrow();
			}
		}
	});

	test('an arrangement that is not there is named', () => {
		expect(() => makeProblem(workbook[0]!, 1, 9)).toThrow(/arrangement = 9 is none of 1, 2, 3, 4/);
	});
});
