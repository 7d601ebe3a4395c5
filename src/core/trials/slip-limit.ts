import { checkTrials, type CommonOptions } from './check-trials.ts';
import type { Priors } from './priors.ts';
import { settingsOf } from './settings.ts';
import { termsOf } from './slip-terms.ts';
import type { Story, Trial } from './trial.ts';
import { slipGivenOpen } from './two-stages.ts';

/** The load at which the hold slips every other time, as far as the trials reach. */
export type SlipLimit = {
	/** Loads between which an answer is given, kg: 0.8 × the lightest to 1.1 × the heaviest tried. */
	from: number;
	to: number;
	/** Chance that the limit lies below, and above, that stretch. */
	chanceBelow: number;
	chanceAbove: number;
	/** Quantiles in kg; null where they lie outside the stretch. */
	quantiles: { q05: number | null; q50: number | null; q95: number | null };
};

/**
 * The load at which slipping is one in two with a plumb rope, within the tested range; never further.
 *
 * Limit = reference load × exp(−a/c). Its distribution from P(a + c x > 0), each point's share spread evenly over its
 * cell. Without a load effect in the story there is no such limit.
 *
 * @param trials of one grip, kg
 * @param o as in storyEvidence; story with a load effect ('rises' when left out); withOrder (mid-session then)
 * @returns limit, or undefined when the story has no load effect or nothing was tried
 * @throws RangeError naming field, value and range
 * Source: derived
 * Example: slipLimit([], { referenceLoad: 60 }) → undefined
 */
export function slipLimit(
	trials: readonly Trial[],
	o: CommonOptions & { story?: Story; withOrder?: boolean; priors?: Priors }
): SlipLimit | undefined {
	checkTrials(trials);
	const settings = settingsOf(o);
	const version = { story: o.story ?? 'rises', withOrder: o.withOrder ?? false } as const;
	const falls = version.story.startsWith('falls');
	if (trials.length === 0 || !(falls || version.story.startsWith('rises'))) return undefined;
	const { lattice, sum } = slipGivenOpen(trials, version, settings);
	const terms = termsOf(version, settings.priors);
	const { outer, outerValues, starts, inner, innerStep } = lattice;
	const sticks = (x: number): number => {
		let share = 0;
		for (let line = 0; line + 1 < starts.length; line += 1) {
			const base = terms.at(outerValues, line * outer).load * x;
			for (let k = starts[line]!; k < starts[line + 1]!; k += 1)
				share += sum.weights[k]! * Math.min(1, Math.max(0, (base + inner[k]!) / innerStep + 0.5));
		}
		return share;
	};
	// With friction that rises the limit lies below x when the hold sticks at x; with one that falls, when it slips.
	const below = (x: number): number => (falls ? 1 - sticks(x) : sticks(x));
	const loads = trials.map(({ load }) => load);
	const [from, to] = [0.8 * Math.min(...loads), 1.1 * Math.max(...loads)];
	const [low, high] = [from, to].map((load) => Math.log(load / o.referenceLoad)) as [
		number,
		number
	];
	const [chanceBelow, chanceAbove] = [below(low), 1 - below(high)];
	const quantile = (share: number): number | null => {
		if (share < chanceBelow || share > 1 - chanceAbove) return null;
		let [a, b] = [low, high];
		for (let round = 0; round < 40; round += 1) {
			const middle = (a + b) / 2;
			if (below(middle) < share) a = middle;
			else b = middle;
		}
		return o.referenceLoad * Math.exp((a + b) / 2);
	};
	return {
		from,
		to,
		chanceBelow,
		chanceAbove,
		quantiles: { q05: quantile(0.05), q50: quantile(0.5), q95: quantile(0.95) }
	};
}
