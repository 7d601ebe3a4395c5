import { firstShare, largestStep } from './caps.ts';
import { checkNumber } from './check-trials.ts';

/**
 * Loads to warm up with: a fixed climb in steps of at most a tenth to the plan's heaviest load.
 *
 * Starts at half the best guess (or lower, where the heaviest load is lower) and climbs by equal ratios ≤ 1.10. With
 * an increment each rung is the highest whole multiple within a tenth of the rung below, where there is one. The
 * ladder is not analysed; only after it are loads shuffled.
 *
 * @param o heaviest load of the plan, kg, above 0; bestGuess of the opening limit, kg, above 0; increment of the
 * plates in kg, above 0, or left out
 * @returns ascending loads in kg, the heaviest last
 * @throws RangeError naming field, value and range
 * Source: derived (one half and a tenth are judgement)
 * Example: warmUpLadder({ heaviest: 44, bestGuess: 80 }) → [40, 44]
 */
export function warmUpLadder(o: {
	heaviest: number;
	bestGuess: number;
	increment?: number;
}): number[] {
	checkNumber('heaviest', o.heaviest, { above: 0 });
	checkNumber('bestGuess', o.bestGuess, { above: 0 });
	if (o.increment !== undefined) checkNumber('increment', o.increment, { above: 0 });
	const first = Math.min(firstShare * o.bestGuess, o.heaviest);
	if (o.increment === undefined) {
		const steps = Math.ceil(Math.log(o.heaviest / first) / Math.log(largestStep) - 1e-9);
		const ratio = (o.heaviest / first) ** (1 / Math.max(1, steps));
		const rungs = Array.from({ length: steps }, (_, k) => first * ratio ** k);
		return [...rungs, o.heaviest];
	}
	const down = (load: number): number =>
		Math.floor((load / o.increment!) * (1 + 1e-12)) * o.increment!;
	const rungs = [down(first) || first];
	for (;;) {
		const last = rungs[rungs.length - 1]!;
		if (last >= o.heaviest) return rungs;
		const highest = largestStep * last;
		// Plates too coarse for a tenth: the rung must be found between them.
		const next = down(highest) > last ? down(highest) : highest;
		rungs.push(highest >= o.heaviest ? o.heaviest : next);
	}
}
