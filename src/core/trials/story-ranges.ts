import { shares } from '../statistics/log-sum.ts';
import { checkTrials, type CommonOptions } from './check-trials.ts';
import { defaultPriors, type Priors } from './priors.ts';
import { type LeftOut, storiesInPlay } from './stories-in-play.ts';
import { storyEvidenceOf } from './story-evidence.ts';
import type { Story, Trial } from './trial.ts';

export type Grade = 'cannot-tell' | 'leaning' | 'fairly-clear' | 'clear';

/** How one story stands over the three starting guesses. */
export type StoryRange = {
	story: Story;
	/** Share of belief with the printed starting guess, with and without order together. */
	weight: number;
	/** Lowest and highest share over the three. */
	least: number;
	most: number;
	/** Share of the story's belief that includes warming up or tiring, printed starting guess. */
	orderShare: number;
};

export type StoryRanges = {
	ranges: StoryRange[];
	leftOut: LeftOut[];
	/** Story ahead with the printed starting guess. */
	best: Story;
	/** False while another story's range reaches into the best one's: draw it all in grey. */
	settled: boolean;
	/** True when another starting guess has another winner. */
	guessDecides: boolean;
	/** From the least favourable starting guess. */
	grade: Grade;
};

/** Half, once and twice the printed width of the load effect. */
export const guessWidths = [0.5, 1, 2] as const;

/**
 * Which story fits, and how far that depends on the starting guess.
 *
 * Evidence of the stories in play with the load effect's starting guess half, once and twice as wide; shares with and
 * without order added; grade from the least favourable: below 0.75 cannot tell, to 0.90 leaning, to 0.98 fairly clear,
 * above clear (judgement).
 *
 * @param trials of one grip, kg
 * @param o as in storyEvidence
 * @returns ranges of the stories in play, stories left out with reasons, and what may be said
 * @throws RangeError naming field, value and range
 * Source: kassRaftery1995, section 5.2 (sensitivity to the prior); bounds are judgement
 * Example: storyRanges([], { referenceLoad: 60 }).grade → 'clear' for the one story in play, 'constant'
 */
export function storyRanges(trials: readonly Trial[], o: RangeOptions): StoryRanges {
	const steps = storyRangesInSteps(trials, o);
	for (;;) {
		const { done, value } = steps.next();
		if (done) return value;
	}
}

type RangeOptions = CommonOptions & { priors?: Priors };

/**
 * The same, one fit after the other, so that long work can be shown and given up.
 *
 * A story without a load effect has the same evidence under every width of it, and is fitted once.
 *
 * @param trials of one grip, kg
 * @param o as in storyEvidence
 * @returns after each fit how many are done of how many; at last what storyRanges returns
 * @throws RangeError naming field, value and range
 * Source: derived
 * Example: storyRangesInSteps([], { referenceLoad: 60 }).next().value → { done: 1, of: 2 }
 */
export function* storyRangesInSteps(
	trials: readonly Trial[],
	o: RangeOptions
): Generator<{ done: number; of: number }, StoryRanges> {
	checkTrials(trials);
	const { inPlay, leftOut } = storiesInPlay(trials);
	const priors = o.priors ?? defaultPriors;
	const evidence = storyEvidenceOf(trials, o);
	const versions = [false, true].flatMap((withOrder) =>
		inPlay.map((story) => ({ story, withOrder }))
	);
	const widthsOf = (story: Story) => (/rises|falls/.test(story) ? guessWidths : ([1] as const));
	const of = versions.reduce((fits, { story }) => fits + widthsOf(story).length, 0);
	/** A version's log evidences, by width. */
	const logs: number[][] = versions.map(() => []);
	let done = 0;
	for (const [k, version] of versions.entries()) {
		for (const width of widthsOf(version.story)) {
			const wide = { ...priors, loadEffectSd: width * priors.loadEffectSd };
			logs[k]!.push(evidence(version, wide));
			yield { done: (done += 1), of };
		}
	}
	const each = guessWidths.map((_, w) => {
		const weights = shares(logs.map((byWidth) => byWidth[w] ?? byWidth[0]!));
		return inPlay.map((_, k) => {
			const ordered = weights[inPlay.length + k]!;
			return { total: weights[k]! + ordered, ordered };
		});
	});
	const ranges = inPlay.map((story, k): StoryRange => {
		const totals = each.map((shares) => shares[k]!.total);
		const { total, ordered } = each[1]![k]!;
		return {
			story,
			weight: total,
			least: Math.min(...totals),
			most: Math.max(...totals),
			orderShare: ordered / total
		};
	});
	const ahead = each.map((shares) =>
		shares.reduce((best, { total }, k) => (total > shares[best]!.total ? k : best), 0)
	);
	const best = ranges[ahead[1]!]!;
	return {
		ranges,
		leftOut,
		best: best.story,
		settled: ranges.every((range) => range === best || range.most < best.least),
		guessDecides: ahead.some((k) => k !== ahead[1]),
		grade: gradeOf(best.least)
	};
}

/**
 * The word a share of belief deserves.
 *
 * @param share from the least favourable starting guess, 0 to 1
 * @returns grade
 * Source: derived (bounds are judgement)
 * Example: gradeOf(0.8) → 'leaning'
 */
export function gradeOf(share: number): Grade {
	if (share < 0.75) return 'cannot-tell';
	if (share < 0.9) return 'leaning';
	return share <= 0.98 ? 'fairly-clear' : 'clear';
}
