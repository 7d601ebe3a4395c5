import {
	testedFamilies,
	type SeparatingTest,
	type TestedFamily,
	type TestOutcome
} from '#reference/tests-against-mechanisms.ts';
import type { MechanismRow } from '#reference/types.ts';

/** How well one test tells the ticked mechanisms apart. */
export type Separation = { test: SeparatingTest; apart: number };

/**
 * What a mechanism lets one expect of a test; undefined where the table has no line for it.
 * Textbook friction has no effect of load to change, so it expects no change of any of them.
 */
export function expected(
	test: SeparatingTest,
	family: MechanismRow['family']
): TestOutcome | undefined {
	if (family === 'none') return 'no change';
	const tested = testedFamilies.find((one) => one === family) as TestedFamily | undefined;
	return tested && test.outcome[tested];
}

/** Outcomes that a hand at a board cannot tell from each other share a word; "either" excludes nothing. */
const felt: Partial<Record<TestOutcome, string>> = { little: 'no change' };

function tellsApart(one: TestOutcome, other: TestOutcome): boolean {
	if (one === 'either' || other === 'either') return false;
	return (felt[one] ?? one) !== (felt[other] ?? other);
}

/** The mechanisms of a list that the table has a line for. */
export function testable(rows: readonly MechanismRow[]): MechanismRow[] {
	return rows.filter(
		({ family }) => family === 'none' || testedFamilies.some((one) => one === family)
	);
}

/**
 * Counts, for each test, the pairs of mechanisms that it tells apart: whose expected outcomes differ
 * whatever happens.
 * @param tests rows of the table
 * @param possible the mechanisms still held possible
 * @returns the tests in their order with their counts, how many pairs there are, and the best tests:
 * none where no test tells any pair apart
 */
export function separate(
	tests: readonly SeparatingTest[],
	possible: readonly MechanismRow[]
): { separations: Separation[]; pairs: number; best: SeparatingTest[] } {
	const rows = testable(possible);
	const separations = tests.map((test) => {
		let apart = 0;
		for (let i = 0; i < rows.length; i++) {
			for (let j = 0; j < i; j++) {
				const [one, other] = [expected(test, rows[i]!.family), expected(test, rows[j]!.family)];
				if (tellsApart(one!, other!)) apart++;
			}
		}
		return { test, apart };
	});
	const most = Math.max(0, ...separations.map(({ apart }) => apart));
	return {
		separations,
		pairs: (rows.length * (rows.length - 1)) / 2,
		best:
			most === 0 ? [] : separations.filter(({ apart }) => apart === most).map(({ test }) => test)
	};
}
