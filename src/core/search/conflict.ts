import { trendOf } from './law-of.ts';
import type { Plan, Trial } from './plan.ts';
import { thresholds } from './thresholds.ts';
import type { ReasonKey } from './words.ts';

/** The drift was needed to go this way between two goes. */
type Way = 1 | -1;

/**
 * Looks for a reason, valid for every set-up in the ranges, why a story cannot tell what was seen.
 * Flat hold, fixed patch, no sideways force: slip margin = μ(p)/tan σ, so with a ratio that only
 * rises, or only falls, the goes' slip margins stand in the order of their pressures, whatever the
 * numbers. Pressures go as load over fingers times patch. A rope pulls sideways only below body mass.
 * @param plan the law with its addition
 * @returns the reason, or undefined where this reasoning finds none
 * Valid for: none, rope and drift; a push is never excluded here, nor a law that falls and rises.
 * Source: derived.
 * Example: constant, alone or roped: barely held at 1.0 and easier at 1.18 is ratioNotRising.
 */
export function conflictOf(plan: Plan): ReasonKey | undefined {
	const { trials, addition, law } = plan;
	if (addition === 'push') return undefined;
	const comparable = trials.filter(
		({ observation }) => addition !== 'rope' || observation.load >= 1
	);
	if (strengthDisagrees(comparable)) return 'strengthDisagrees';
	const trend = trendOf[law];
	const ways = new Set<Way>();
	for (const worse of comparable) {
		for (const better of comparable) {
			if (!isBetter(worse, better, plan) || !isBarred(worse, better, plan, trend)) continue;
			if (addition !== 'drift') return trend === 1 ? 'ratioRising' : 'ratioNotRising';
			ways.add(better.later > worse.later ? 1 : -1);
		}
	}
	return ways.size === 2 ? 'orderDisagrees' : undefined;
}

/** What was seen asks for a larger slip margin in the second go. */
function isBetter(worse: Trial, better: Trial, { trials }: Plan): boolean {
	const { kind } = better.observation.outcome;
	if (kind === 'easier' && trials[better.than] === worse) return true;
	return (
		worse.observation.outcome.kind === 'slipped' && ['held', 'barely', 'opened'].includes(kind)
	);
}

/** The law alone never gives the second go the larger slip margin, whatever the patches. */
function isBarred(worse: Trial, better: Trial, plan: Plan, trend: number): boolean {
	if (trend === 0) return true;
	if (Number.isNaN(trend)) return false;
	const loads = better.observation.load / worse.observation.load;
	const patches = patchRatio(plan, worse.grip, better.grip);
	return trend < 0 ? loads * patches.from >= 1 : loads * patches.to <= 1;
}

/** Smallest and largest whole patch of one grip over that of another. */
function patchRatio({ request }: Plan, over: number, under: number) {
	if (over === under) return { from: 1, to: 1 };
	const top = request.grips[over]!;
	const bottom = request.grips[under]!;
	const fingers = top.fingers / bottom.fingers;
	return {
		from: (fingers * top.padArea.from) / bottom.padArea.to,
		to: (fingers * top.padArea.to) / bottom.padArea.from
	};
}

/** With a plumb pull and one patch the strength margin goes as one over load. */
function strengthDisagrees(trials: readonly Trial[]): boolean {
	return trials.some(
		(opened) =>
			opened.observation.outcome.kind === 'opened' &&
			trials.some(
				({ grip, observation }) =>
					grip === opened.grip &&
					!['opened', 'slipped'].includes(observation.outcome.kind) &&
					observation.load * thresholds.heldFrom >= opened.observation.load * thresholds.openedBelow
			)
	);
}
