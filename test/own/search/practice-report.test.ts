import { describe, expect, test } from 'vitest';
import { practiceReport } from '#core/search/practice-report.ts';
import { findStories } from '#core/search/search-stories.ts';
import type { Addition, LawStory, StoryResult } from '#core/search/types.ts';
import { unmetGoes } from '../../properties/search/outcomes.ts';

// Own, not an outside source: two independent searches by the same people found these verdicts for
// the report from practice, which itself is common practice, no source; one report, unverified.

const seeds = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10];
const notRising: LawStory[] = ['constant', 'adhesion', 'powerFalling'];
const mayRise: LawStory[] = ['powerRising', 'deformation', 'film'];

describe('own, not an outside source: which stories can tell the report from practice', () => {
	test('the report says what it is', () => {
		expect(practiceReport.mark).toBe('common practice, no source; one report, unverified');
	});

	test.each(seeds)('seed %i, 20 000 solved candidates for each', (seed) => {
		const plain = findStories({ ...practiceReport, seed, additions: ['none', 'rope'] });
		const pushed = findStories({
			...practiceReport,
			seed,
			laws: ['constant'],
			additions: ['push']
		});
		const of = (law: LawStory, addition: Addition): StoryResult =>
			[...plain, ...pushed].find((r) => r.law === law && r.addition === addition)!;
		for (const { solved } of [...plain, ...pushed]) expect(solved).toBe(20_000);

		for (const law of notRising) {
			for (const addition of ['none', 'rope'] as const) {
				expect(of(law, addition)).toMatchObject({
					verdict: 'cannot',
					proven: true,
					reason: 'ratioNotRising',
					unmet: { order: 3, share: 1 }
				});
			}
			// The rope explains the light half: only the heavier and easier go is left over.
			expect(of(law, 'rope')).toMatchObject({ closest: { unmet: [3] } });
			expect(of(law, 'none')).toMatchObject({ closest: { unmet: [1, 3, 4] } });
		}
		for (const law of mayRise) {
			expect(of(law, 'none').verdict).toBe('can');
			expect(of(law, 'rope').verdict).toBe('can');
			expect(of(law, 'rope').share).toBeGreaterThan(of(law, 'none').share);
		}
		expect(of('constant', 'push').verdict).toBe('can');

		// Slipped below 0.98 at 0.87 and held from 1 at 1.0 ask for ln(1/0.98)/ln(1/0.87) above 1.
		expect(found(of('powerRising', 'none'), 'exponent').from).toBeGreaterThan(1.145);
		// 11 in a million in a longer run: rarely, and only far above what skin usually shows.
		expect(of('deformation', 'none').share).toBeLessThan(1e-3);
		expect(found(of('deformation', 'none'), 'deformation').from).toBeGreaterThan(0.1);
		expect(notes(of('deformation', 'none'))).toContain('deformationTooLarge');
		expect(found(of('constant', 'push'), 'push').from).toBeGreaterThan(0);

		for (const result of [...plain, ...pushed]) {
			if (result.verdict === 'cannot') continue;
			for (const setup of [result.example, ...result.others]) {
				expect(unmetGoes(setup, practiceReport.observations)).toEqual([]);
			}
			expect(notes(result)).toContain('notProbable');
		}
	});
});

function found(result: StoryResult, key: string) {
	if (result.verdict === 'cannot') throw new Error(`${result.law} cannot`);
	return result.movements.find((movement) => movement.key === key)!.found;
}

function notes(result: StoryResult): string[] {
	return result.verdict === 'can' ? result.notes.map(({ key }) => key) : [];
}
