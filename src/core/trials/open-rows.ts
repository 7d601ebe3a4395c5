import type { Trial } from './trial.ts';

/** One kind of trial as the opening stage sees it. */
export type OpenRow = { lnLoad: number; held: boolean; count: number };

/** What to make of a trial that was stopped: say nothing, or count it as opened. */
export type Stopped = 'left-out' | 'opened';

/**
 * What the trials say about the fingers: held did not open, opened did, slipped and unknown say nothing.
 *
 * People stop when about to fail, so stopped trials are evidence: count them as opened as well, and compare.
 *
 * @param trials checked trials
 * @param referenceLoad load at which ln load is 0, kg
 * @param stopped what a stopped trial counts as
 * @returns rows with counts, in order of first appearance
 * Source: derived
 * Example: openRows([], 60, 'left-out') → []
 */
export function openRows(
	trials: readonly Trial[],
	referenceLoad: number,
	stopped: Stopped
): OpenRow[] {
	const rows = new Map<string, OpenRow>();
	for (const { outcome, load } of trials) {
		if (outcome === 'slipped' || outcome === 'unknown') continue;
		if (outcome === 'stopped' && stopped === 'left-out') continue;
		const held = outcome === 'held';
		const same = rows.get(`${load} ${held}`);
		if (same) same.count += 1;
		else rows.set(`${load} ${held}`, { lnLoad: Math.log(load / referenceLoad), held, count: 1 });
	}
	return [...rows.values()];
}
