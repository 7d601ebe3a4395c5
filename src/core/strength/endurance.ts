import { requireAllowed } from '../units/allowed-range.ts';

/** Up to this time the whole maximum can be held, s. */
const fullStrengthTime = 6;
/** The formula ends here, s, where a fifth of the maximum is held. */
export const longestHoldTime = 390;

/**
 * Gives the fraction of the maximal force that can be held for a time without a break.
 * The inverse of t = 60(−1.5 + 2.1/f − 0.6/f² + 0.1/f³); 1 up to 6 s
 * @param seconds time t, s, 0 to 390
 * @returns fraction f, 0.2 to 1
 * Valid for: an uninterrupted static effort. One curve for all muscles is only a first guess.
 * @throws RangeError past 390 s, where the formula ends, and for negative times
 * Source: rohmertBernard.
 * Example: enduranceFraction(66) is 0.5.
 */
export function enduranceFraction(seconds: number): number {
	requireAllowed('seconds', seconds, { min: 0, max: longestHoldTime, unit: 's' });
	if (seconds <= fullStrengthTime) return 1;
	// With 1/f = y + 2 the formula reads y³ + 9y = t/6 − 11, which a hyperbolic sine solves exactly.
	const root = Math.sqrt(3);
	const y = 2 * root * Math.sinh(Math.asinh((seconds / 6 - 11) / (6 * root)) / 3);
	return 1 / (y + 2);
}

/**
 * Gives the time a fraction of the maximal force can be held without a break.
 * t = 60(−1.5 + 2.1/f − 0.6/f² + 0.1/f³)
 * @param fraction share f of the maximal force, 0.2 to 1
 * @returns time, s, 6 to 390
 * Valid for: an uninterrupted static effort. One curve for all muscles is only a first guess.
 * @throws RangeError outside 0.2 to 1
 * Source: rohmertBernard.
 * Example: enduranceTime(0.5) is 66.
 */
export function enduranceTime(fraction: number): number {
	requireAllowed('fraction', fraction, { min: 0.2, max: 1 });
	return 60 * (-1.5 + 2.1 / fraction - 0.6 / fraction ** 2 + 0.1 / fraction ** 3);
}
