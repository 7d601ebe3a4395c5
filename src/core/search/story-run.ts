import { conflictOf } from './conflict.ts';
import { drawCandidate, randomFor } from './draw.ts';
import type { Plan } from './plan.ts';
import { refine, standing, type Find } from './refine.ts';
import { keptFits, roundingClearance } from './thresholds.ts';
import type { Range } from './types.ts';
import { emptyWeighing, weighCandidate } from './weigh.ts';
import type { ReasonKey } from './words.ts';

/** Draws for each candidate that is wanted solved, before the search gives up solving more. */
const drawsPerCandidate = 20;

/** With fewer finds than this another seed may find none, and the best candidate is moved on. */
export const fewFinds = 10;

/** What a running search of one law with one addition has seen so far. */
export type StoryRun = {
	plan: Plan;
	/** A reason that rules the story out whatever the numbers. */
	conflict: ReasonKey | undefined;
	drawn: number;
	solved: number;
	fitting: number;
	/** For each go, how many candidates missed it. */
	missed: number[];
	/** The candidate that meets most goes; among equals the one whose tightest go lies best. */
	top: Find | undefined;
	/** A fitting set-up reached by moving the best candidate, where few or no drawn ones fit. */
	refined: Find | undefined;
	/** The first fitting candidates. */
	kept: Find[];
	/** Smallest and largest value of each parameter among all fitting candidates. */
	found: Range[];
	/** Tries up to so many more candidates; false when nothing is left to do. */
	step(candidates: number): boolean;
};

/**
 * Starts the search of one law with one addition.
 * @param plan the law with its addition
 * @returns a run; the same seed finds the same, in whatever slices it is stepped
 * Source: derived.
 * Example: startStory(plan).step(100) solves at most 100 candidates.
 */
export function startStory(plan: Plan): StoryRun {
	const { seed, candidates } = plan.request;
	const random = randomFor(seed, plan);
	const weighing = emptyWeighing();
	const values = plan.parameters.map(({ from }) => from);
	let nearest: Find | undefined;
	let nearestStanding = -Infinity;
	const run: StoryRun = {
		plan,
		conflict: conflictOf(plan),
		drawn: 0,
		solved: 0,
		fitting: 0,
		missed: plan.trials.map(() => 0),
		top: undefined,
		refined: undefined,
		kept: [],
		found: plan.parameters.map(() => ({ from: Infinity, to: -Infinity })),
		step(count) {
			const until = Math.min(candidates, run.solved + count);
			const enough = Math.min(
				drawsPerCandidate * candidates,
				run.drawn + drawsPerCandidate * count
			);
			while (run.solved < until && run.drawn < enough) {
				run.drawn++;
				const margin = drawCandidate(plan, random, values);
				if (!weighCandidate(plan, values, margin, weighing)) continue;
				run.solved++;
				record(margin);
			}
			if (run.solved < candidates && run.drawn < drawsPerCandidate * candidates) return true;
			if (run.fitting < fewFinds && !run.conflict && nearest) tryHarder(nearest);
			return false;
		}
	};

	function record(margin: number): void {
		const { clearance, least, met } = weighing;
		for (let go = 0; go < clearance.length; go++) {
			if (!(clearance[go]! > roundingClearance)) run.missed[go]!++;
		}
		const { top } = run;
		const better = !top || met > top.met || (met === top.met && least > top.least);
		const reached = standing(weighing);
		const nearer = reached > nearestStanding;
		const fits = met === clearance.length;
		if (!better && !nearer && !fits) return;
		const find = { values: [...values], margin, least, met };
		if (better) run.top = find;
		if (nearer) {
			nearest = find;
			nearestStanding = reached;
		}
		if (!fits) return;
		run.fitting++;
		widen(find);
		if (run.kept.length < keptFits) run.kept.push(find);
	}

	function tryHarder(start: Find): void {
		const reached = refine(plan, start, random);
		if (reached.met < plan.trials.length) return;
		run.refined = reached;
		widen(reached);
	}

	function widen(find: Find): void {
		find.values.forEach((value, index) => {
			const seen = run.found[index]!;
			seen.from = Math.min(seen.from, value);
			seen.to = Math.max(seen.to, value);
		});
	}

	return run;
}
