import { describe, expect, test } from 'vitest';
import { practiceReport } from '#core/search/practice-report.ts';
import { findStories } from '#core/search/search-stories.ts';
import { searchHandler } from '#workers/search-handler.ts';
import type { SearchReport } from '#workers/search-messages.ts';

const request = {
	...practiceReport,
	seed: 1,
	candidates: 5000,
	laws: ['film'] as const,
	additions: ['none', 'rope'] as const
};

/** A handler whose slices run only when told to. */
function desk() {
	const reports: SearchReport[] = [];
	const waiting: (() => void)[] = [];
	const handle = searchHandler(
		(report) => reports.push(report),
		(next) => waiting.push(next)
	);
	const runOne = () => waiting.shift()?.();
	const runAll = () => {
		while (waiting.length > 0) runOne();
	};
	const types = (id: number) =>
		reports.filter((report) => report.id === id).map(({ type }) => type);
	return { reports, waiting, handle, runOne, runAll, types };
}

describe('search worker', () => {
	test('reports progress and ends in the results of the core', () => {
		const { reports, handle, runAll, types } = desk();
		handle({ type: 'start', id: 3, request });
		runAll();
		expect(
			types(3)
				.slice(0, -1)
				.every((type) => type === 'progress')
		).toBe(true);
		expect(types(3).length).toBeGreaterThan(5);
		expect(reports.at(-1)).toEqual({ type: 'done', id: 3, results: findStories(request) });
	});

	test('stops between two slices when cancelled, and says nothing more', () => {
		const { handle, runOne, runAll, types, waiting } = desk();
		handle({ type: 'start', id: 4, request });
		runOne();
		handle({ type: 'cancel', id: 4 });
		runAll();
		expect(types(4)).toEqual(['progress', 'progress', 'cancelled']);
		expect(waiting).toHaveLength(0);
		handle({ type: 'cancel', id: 4 });
		expect(types(4)).toHaveLength(3);
	});

	test('a cancel of another search leaves the running one alone', () => {
		const { handle, runAll, types } = desk();
		handle({ type: 'start', id: 5, request });
		handle({ type: 'cancel', id: 4 });
		runAll();
		expect(types(5).at(-1)).toBe('done');
		expect(types(4)).toEqual([]);
	});

	test('a new start stops the old search', () => {
		const { handle, runAll, types } = desk();
		handle({ type: 'start', id: 6, request });
		handle({ type: 'start', id: 7, request });
		runAll();
		expect(types(6)).toEqual(['progress', 'cancelled']);
		expect(types(7).at(-1)).toBe('done');
	});

	test('a request that is not allowed fails with the message of the core', () => {
		const { reports, handle, waiting } = desk();
		handle({ type: 'start', id: 8, request: { ...request, bodyMass: 0 } });
		expect(reports).toEqual([
			{ type: 'failed', id: 8, message: 'bodyMass must be a number above 0 kg, but is 0' }
		]);
		expect(waiting).toHaveLength(0);
	});
});
