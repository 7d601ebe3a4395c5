import type { CitationKey } from '../citations.ts';
import type { Row } from '../types.ts';

/** A function or constant of core and where it comes from, as its docstring says. */
export type FormulaRow = Row & {
	name: string;
	/** Its file under core. */
	file: string;
	/** What it gives, in plain words. */
	says: string;
	/** The docstring's own words on its source. */
	words: string;
	/** Names of the pages that use it. */
	usedOn: readonly string[];
};

/** One folder of outside checks: numbers whose author is not this project. */
export type OutsideCheck = {
	topic: string;
	title: string;
	notes: string;
	works: readonly CitationKey[];
	cases: number;
};

export const testKinds = ['oracles', 'own', 'properties', 'unit', 'gates', 'browser'] as const;
export type TestKind = (typeof testKinds)[number];

/** What a whole test run counted. */
export type TestRun = {
	/** Year, month and day. */
	day: string;
	counts: Readonly<Record<TestKind, { files: number; passed: number; failed: number }>>;
	/** Tests that passed, by topic of the outside checks. */
	topics: Readonly<Record<string, number>>;
};
