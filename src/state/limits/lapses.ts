import { storiesInPlay } from '#core/trials/stories-in-play.ts';
import type { OpeningLimit } from '#core/trials/opening-limit.ts';
import type { Story } from '#core/trials/trial.ts';
import type { Analysed } from './analysed.ts';
import { optionsOf } from './options.ts';
import type { StoriesClient } from './stories-client.ts';

/** What one share of accidents makes of the trials: the story ahead with its share of belief, and the limit. */
export type LapseAnswer = { lapse: number; best: Story; weight: number; limit: OpeningLimit };

/** Asks the worker for the answers at several shares of accidents. */
export async function lapsesOf(
	client: Pick<StoriesClient, 'ask'>,
	of: Analysed
): Promise<LapseAnswer[]> {
	const { trials } = of;
	const { rows } = await client.ask({ kind: 'lapses', trials, options: optionsOf(of) });
	const { inPlay } = storiesInPlay(trials);
	return rows.map(({ lapse, stories, limit }) => {
		const weightOf = (story: Story) =>
			stories.reduce((sum, row) => sum + (row.story === story ? row.weight : 0), 0);
		const all = inPlay.reduce((sum, story) => sum + weightOf(story), 0);
		const best = inPlay.reduce((ahead, story) =>
			weightOf(story) > weightOf(ahead) ? story : ahead
		);
		return { lapse, best, weight: weightOf(best) / all, limit };
	});
}
