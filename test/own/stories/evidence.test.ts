import { describe, test } from 'vitest';
import { addTrial, openBook } from '#core/trials/story-book.ts';
import { storyEvidence } from '#core/trials/story-evidence.ts';
import type { Trial } from '#core/trials/trial.ts';
import { within } from '#test/within.ts';
import sets from './evidence.json' with { type: 'json' };

// Own second implementation (second-implementation.py), not an outside check.
const relative = 1e-6;

describe.each(Object.entries(sets))(
	'twelve stories of %s trials',
	(_, { trials: t, logEvidence }) => {
		const trials: Trial[] = t.load.map((load, k) => ({
			load,
			outcome: t.stuck[k] ? 'held' : 'slipped',
			order: t.order[k]!,
			ropeTerm: t.ropeTerm[k]!
		}));
		const name = (story: string, withOrder: boolean) =>
			(story + (withOrder ? ' with order' : '')) as keyof typeof logEvidence;

		test('all at once', () => {
			for (const row of storyEvidence(trials, { referenceLoad: 60 }))
				within(row.logEvidence, logEvidence[name(row.story, row.withOrder)], { relative });
		});

		test('the last six added one by one', () => {
			let book = openBook(trials.slice(0, -6), { referenceLoad: 60 });
			for (const trial of trials.slice(-6)) book = addTrial(book, trial);
			for (const row of book.evidence)
				within(row.logEvidence, logEvidence[name(row.story, row.withOrder)], { relative });
		});
	}
);
