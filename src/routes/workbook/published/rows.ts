import type { Family } from '#core/workbook/statics/family.ts';
import { shownValue } from '#figures/workbook/shown-value.ts';
import { problemLink } from '#state/workbook/problem-link.ts';
import type { Comparison, PublishedProblem } from '#reference/published-problems.ts';

/** A printed answer beside ours. */
export type ComparedPart = {
	problem: PublishedProblem;
	/** What is asked, in words. */
	asked: string;
	given: string[];
	/** Ours in SI, and as text in the printed unit. */
	ours: { value: number; text: string }[];
	query: string;
};

export const comparisonWords: Record<Comparison, string> = {
	agrees: 'Agrees to the printed digits.',
	formula_matches: 'The printed formula is the same.',
	rounded_intermediate: 'The printed answer was rounded on the way.',
	no_published_answer: 'The source prints no answer.',
	source_error: 'The printed answer is wrong.',
	companion_error: 'The answer printed in a companion is wrong.'
};

/** True where the printed answer differs from the exact one. */
export function differs({ comparison }: PublishedProblem): boolean {
	return ['rounded_intermediate', 'source_error', 'companion_error'].includes(comparison);
}

/** At least three digits, and as many as are printed, so that the two can be compared. */
export function digitsFor(printed: string): number {
	const digits = /\d[\d.]*/.exec(printed)?.[0].replace('.', '').replace(/^0+/, '').length ?? 0;
	return Math.min(6, Math.max(3, digits));
}

/** A remark opens in its source's shorthand; on the page it is a sentence, and the verdict is said already. */
export function remarkSentence(remark: string): string {
	const plain = remark
		.replace(/^(WRONG|SWAPPED)\b/, (word) => (word === 'WRONG' ? 'Wrong' : 'Swapped'))
		.replace(/^[Ww]rong in the (?:companion|source|book|text):?\s*/, '')
		.replace(/^[Rr]ounded intermediate\s*[:;,]?\s*/, '')
		.replace(/^\((.*)\)\.?$/, '$1')
		.replace(/ deg\b/g, '°')
		.trim();
	if (plain === '') return '';
	return plain.charAt(0).toUpperCase() + plain.slice(1) + (/[.!?]$/.test(plain) ? '' : '.');
}

/** A problem's title as a heading: degrees and squares by their signs. */
export function titleText(title: string): string {
	return title.replace(/ deg\b/g, '°').replace(/m\/s2\b/g, 'm/s²');
}

export function comparePart(family: Family, problem: PublishedProblem): ComparedPart {
	const setup = family.setups.find(({ number }) => number === problem.given.arrangement)!;
	const find = (id: string) => setup.quantities.find((each) => each.id === id);
	const digits = digitsFor(problem.printed);
	const unit = problem.unit === '1' ? '' : problem.unit === 'deg' ? '°' : `\u00a0${problem.unit}`;
	return {
		problem,
		asked: find(problem.ask)?.name ?? problem.ask,
		given: Object.entries(problem.given).flatMap(([id, value]) => {
			const of = find(id);
			return of ? [`${of.name} ${shownValue(value, of.unit, 4)}`] : [];
		}),
		ours: family.solve(problem.given, problem.ask).solutions.map(({ value }) => ({
			value,
			text: `${Number((value / problem.toSi).toPrecision(digits))}${unit}`
		})),
		query: problemLink(setup.quantities, problem.given, problem.ask)
	};
}
