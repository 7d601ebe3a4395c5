import type { Condition, GripChoice, RopeSide } from './types.ts';

/**
 * Lists every combination of grip, load and rope side once.
 *
 * @param grips grips with their net loads in kg
 * @param ropeSides where the rope leads
 * @returns conditions; a load or side given twice counts once
 * Source: derived
 * Example: one grip, loads 40 and 60, sides away and toward → four conditions
 */
export function conditionsOf(
	grips: readonly GripChoice[],
	ropeSides: readonly RopeSide[]
): Condition[] {
	return grips.flatMap(({ grip, loads }) =>
		[...new Set(loads)].flatMap((load) =>
			[...new Set(ropeSides)].map((ropeSide) => ({ grip, load, ropeSide }))
		)
	);
}
