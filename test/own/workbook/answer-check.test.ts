import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { describe, expect, test } from 'vitest';
import { checkAnswer } from '#core/workbook/answer-check/check-answer.ts';
import { makeProblem } from '#core/workbook/practice/make-problem.ts';
import { workbook } from '#core/workbook/workbook.ts';
import { within } from '#test/within.ts';
import { planted } from './planted-slips.ts';

const familyOf = (id: string) => workbook.find((each) => each.id === id)!;
const apart = (a: number, b: number) => Math.abs(a - b) > 0.01 * Math.max(Math.abs(a), Math.abs(b));

/** Wrong answers made by hand-written slips, each at least 1 % from the right answer and every other slip. */
function wrongAnswers(count: number, digits: number) {
	const random = xoroshiro128plus(2024);
	const draw = (low: number, high: number, step: number) =>
		Number((low + step * uniformInt(random, 0, Math.round((high - low) / step))).toPrecision(12));
	const made: {
		problem: (typeof planted)[number];
		given: Record<string, number>;
		ids: string[];
		text: string;
	}[] = [];
	while (made.length < count) {
		const problem = planted[made.length % planted.length]!;
		const given = problem.given(draw);
		const right = problem.right(given);
		const values = Object.entries(problem.slips).map(([ids, f]) => [ids.trim(), f(given)] as const);
		const [ids, value] = values[uniformInt(random, 0, values.length - 1)]!;
		const others = values.filter(([other]) => other !== ids).map(([, other]) => other);
		if (!Number.isFinite(value) || ![right, ...others].every((other) => apart(value, other)))
			continue;
		const text = `${(value / problem.toSi).toPrecision(digits)} ${problem.unit}`;
		made.push({ problem, given, ids: ids.split(' '), text });
	}
	return made;
}

describe('answer check (own, not outside)', () => {
	test('the hand-written right answers are the solvers’ right answers', () => {
		const random = xoroshiro128plus(7);
		const draw = (low: number, high: number, step: number) =>
			low + step * uniformInt(random, 0, Math.round((high - low) / step));
		for (const each of planted)
			for (let run = 0; run < 20; run += 1) {
				const given = each.given(draw);
				const { solutions } = familyOf(each.family).solve(
					{ ...given, arrangement: each.arrangement },
					each.ask
				);
				expect(solutions).toHaveLength(1);
				within(solutions[0]!.value, each.right(given), { relative: 1e-9 });
			}
	});

	test.each([3])(
		'at least 95 of 100 planted slips are found, of 2,000 written with %i digits',
		(digits) => {
			const missed: Record<string, number> = {};
			let found = 0;
			const answers = wrongAnswers(2000, digits);
			for (const { problem, given, ids, text } of answers) {
				const all = { ...given, arrangement: problem.arrangement };
				const checked = checkAnswer(familyOf(problem.family), all, problem.ask, text);
				if (checked.slips.some(({ slip }) => ids.includes(slip))) found += 1;
				else {
					const key = `${problem.ask}: ${ids.join('/')} (${checked.verdict}: ${checked.slips.map((s) => s.slip).join(',')})`;
					missed[key] = (missed[key] ?? 0) + 1;
				}
			}
			console.info(
				`planted slips, ${digits} digits: found ${((100 * found) / 2000).toFixed(2)} %`,
				missed
			);
			expect(found).toBeGreaterThanOrEqual(1900);
		}
	);

	test.each([3])(
		'a slip is named for at most 5 of 100 random wrong answers, of 2,000 written with %i digits',
		(digits) => {
			const random = xoroshiro128plus(99);
			const problems = Array.from({ length: 200 }, (_, i) =>
				makeProblem(workbook[i % workbook.length]!, 1000 + i)
			);
			let named = 0;
			for (let run = 0; run < 2000; run += 1) {
				const problem = problems[run % problems.length]!;
				const family = familyOf(problem.family);
				const right = problem.answer.solutions[0]!.value;
				const angle = problem.answer.solutions[0]!.unit === 'rad';
				const factor = 0.2 * 25 ** uniformFloat64(random);
				const value = ((right * factor) / (angle ? Math.PI / 180 : 1)).toPrecision(digits);
				const text = angle ? `${value}°` : value;
				const given = { ...problem.given, arrangement: problem.arrangement };
				if (checkAnswer(family, given, problem.ask, text).verdict === 'slip') named += 1;
			}
			console.info(
				`random wrong answers, ${digits} digits: a slip named for ${((100 * named) / 2000).toFixed(2)} %`
			);
			expect(named).toBeLessThanOrEqual(100);
		}
	);
});
