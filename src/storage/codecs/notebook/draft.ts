import type { Notebook } from './records.ts';

/** One thing an import has to say, by row. */
export type Problem = {
	/** refused: the row stays out. flagged: it comes in, and should be looked at. */
	severity: 'refused' | 'flagged';
	/** Row as a spreadsheet counts them (the header is row 1), or place in a JSON list; null: the file. */
	row: number | null;
	/** Column, field or list; null where it is the row or file as a whole. */
	field: string | null;
	reason: string;
};

/** What a file holds, read but not yet written anywhere. */
export type Draft = {
	format: 'json' | 'csv';
	notebook: Notebook;
	problems: Problem[];
	/** Data rows or records looked at, and how many of them stay out. */
	rows: number;
	refused: number;
};

/** Told how far a long reading has come; throws to stop it. */
export type Progress = (done: number, total: number) => void;
