import type { Trial } from './plan.ts';
import { thresholds } from './thresholds.ts';

/**
 * Says how far a go lies from not being as it was seen.
 * The smallest of ln(margin/threshold), or of ln(threshold/margin) where the margin must lie below
 * @param trial the go
 * @param index of the go in the lists
 * @param margins slip and strength margins of all goes
 * @returns as a share of the margin; positive when the go comes out as seen, −Infinity where it
 * is hopelessly missed
 * Source: derived.
 * Example: slipped with slip margin 0.96: ln(0.98/0.96) = 0.0206.
 */
export function clearanceOf(
	{ observation, than }: Trial,
	index: number,
	{ slip, strength }: { slip: readonly number[]; strength: readonly number[] }
): number {
	const own = slip[index]!;
	const force = strength[index]!;
	const { slippedBelow, heldFrom, barelyTo, easierBy, openedBelow } = thresholds;
	switch (observation.outcome.kind) {
		case 'slipped':
			return above(slippedBelow, own);
		case 'held':
			return above(Math.min(own, force), heldFrom);
		case 'barely': {
			const margin = Math.min(own, force);
			return Math.min(above(margin, heldFrom), above(barelyTo, margin));
		}
		case 'opened':
			return Math.min(above(openedBelow, force), above(own, heldFrom));
		case 'easier':
			return Math.min(above(own, easierBy * slip[than]!), above(force, heldFrom));
	}
}

/** ln(larger/smaller): positive when the first is the larger. Two infinite margins tell nothing. */
function above(larger: number, smaller: number): number {
	const clearance = Math.log(larger / smaller);
	return Number.isNaN(clearance) ? -Infinity : clearance;
}
