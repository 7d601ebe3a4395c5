import type { Parameter } from './types.ts';
import type { Find } from './refine.ts';

/** The shown set-up is met at least this share as clearly as the clearest one. */
const clearEnough = 0.5;

/**
 * Picks the set-up to show: the most middling of those that fit clearly.
 * Nearest to the mean of the fitting set-ups, each number measured in widths of its range, among
 * those with at least half the largest clearance
 * @param fits fitting set-ups, at least one
 * @param parameters the numbers' ranges
 * @returns one of them
 * Valid for: showing. The clearest alone would often lie in a corner of the ranges.
 * Source: derived.
 * Example: of one fit it is that one.
 */
export function typicalFit(fits: readonly Find[], parameters: readonly Parameter[]): Find {
	const mean = parameters.map(
		(_, index) => fits.reduce((sum, { values }) => sum + values[index]!, 0) / fits.length
	);
	const clearest = Math.max(...fits.map(({ least }) => least));
	let typical = fits[0]!;
	let nearest = Infinity;
	for (const fit of fits) {
		if (fit.least < clearEnough * clearest) continue;
		const distance = parameters.reduce((sum, { from, to }, index) => {
			const width = to - from || 1;
			return sum + ((fit.values[index]! - mean[index]!) / width) ** 2;
		}, 0);
		if (distance < nearest) [typical, nearest] = [fit, distance];
	}
	return typical;
}
