import { mended, nearestAllowed, numberSpecs } from '#storage/codecs/setup.ts';
import type { NumberKey, Setup } from '#storage/codecs/setup.ts';
import { writeLink } from '#storage/codecs/link.ts';

/** A link's query that says the present set-up with a measured value put in. */
export function measuredLink(setup: Setup, measured: Partial<Setup>): string {
	const next: Setup = { ...setup, ...measured };
	for (const key of Object.keys(measured)) {
		if (key in numberSpecs) {
			const value = nearestAllowed(key as NumberKey, next[key as NumberKey]);
			// No measurement here is good to more than four digits.
			next[key as NumberKey] = Number(value.toPrecision(4));
		}
	}
	return writeLink(mended(next));
}
