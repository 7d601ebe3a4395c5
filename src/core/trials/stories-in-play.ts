import { type Story, stories, type Trial } from './trial.ts';

/** A story that these trials cannot speak about, and why. */
export type LeftOut = { story: Story; reason: 'rope-never-moved' | 'loads-equal' };

/**
 * Which stories the trials can speak about at all.
 *
 * Where the rope term never varied among the trials that held, opened or slipped, a rope cannot be told from the
 * margin; where the load never varied, no load effect can be.
 *
 * @param trials of one grip
 * @returns stories in play, simplest first, and the others with the reason
 * Source: derived
 * Example: storiesInPlay([]).inPlay → ['constant']
 */
export function storiesInPlay(trials: readonly Trial[]): { inPlay: Story[]; leftOut: LeftOut[] } {
	const used = trials.filter(({ outcome }) => outcome !== 'stopped');
	const varies = (of: (trial: Trial) => number): boolean => {
		const values = used.map(of);
		return Math.max(...values) - Math.min(...values) > 1e-9;
	};
	const rope = varies(({ ropeTerm }) => ropeTerm);
	const load = varies((trial) => Math.log(trial.load));
	const leftOut = stories.flatMap((story): LeftOut[] => {
		if (!rope && story.includes('rope')) return [{ story, reason: 'rope-never-moved' }];
		if (!load && /rises|falls/.test(story)) return [{ story, reason: 'loads-equal' }];
		return [];
	});
	const gone = leftOut.map(({ story }) => story);
	return { inPlay: stories.filter((story) => !gone.includes(story)), leftOut };
}
