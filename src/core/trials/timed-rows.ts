import type { Stopped } from './open-rows.ts';
import type { Trial } from './trial.ts';

/** A trial as the timed opening stage sees it: the fingers opened between two times, or not before one. */
export type TimedRow = {
	lnLoad: number;
	/** ln(earliest time/target time); −Infinity when it may have been at once. */
	from: number;
	/** ln(latest time/target time); Infinity when they had not opened yet. */
	until: number;
};

/** Half a second either way: a hand-held stopwatch. Assumed. */
export const stopwatch = 0.5;

/**
 * What the trials' times say about the fingers.
 *
 * Held: not before the target time. Opened at t: between t − ½ and t + ½ s; without a time, before the target.
 * Slipped at t, and stopped at t: not before t; without a time they say nothing. Stopped counted as opened: as opened.
 *
 * @param trials checked trials, times in s
 * @param referenceLoad kg
 * @param targetTime s, above 0
 * @param stopped what a stopped trial counts as
 * @returns one row a trial that says something
 * Source: derived; competing causes as in kalbfleischPrentice2002, chapter 8
 * Example: timedRows([], 60, 10, 'left-out') → []
 */
export function timedRows(
	trials: readonly Trial[],
	referenceLoad: number,
	targetTime: number,
	stopped: Stopped
): TimedRow[] {
	return trials.flatMap(({ load, outcome, seconds }): TimedRow[] => {
		const lnLoad = Math.log(load / referenceLoad);
		const time = (t: number): number => Math.log(Math.max(0, t) / targetTime);
		if (outcome === 'held') return [{ lnLoad, from: 0, until: Infinity }];
		if (outcome === 'unknown') return [];
		if (outcome === 'opened' || (outcome === 'stopped' && stopped === 'opened')) {
			if (seconds === undefined) return [{ lnLoad, from: -Infinity, until: 0 }];
			return [{ lnLoad, from: time(seconds - stopwatch), until: time(seconds + stopwatch) }];
		}
		if (seconds === undefined || seconds === 0) return [];
		return [{ lnLoad, from: time(seconds), until: Infinity }];
	});
}
