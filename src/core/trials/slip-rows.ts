import type { Trial } from './trial.ts';

/** One kind of trial as the slip stage sees it: equal trials are one row with a count. */
export type SlipRow = {
	/** ln(load/reference load). */
	lnLoad: number;
	ropeTerm: number;
	order: number;
	/** True when the hold did not slip. */
	stuck: boolean;
	count: number;
	session: number;
};

/**
 * What the trials say about slipping: held and opened did not slip, slipped did, stopped and unknown say nothing.
 *
 * Trials that differ in nothing the story looks at become one row with a count, which changes no result.
 *
 * @param trials checked trials
 * @param referenceLoad load at which ln load is 0, kg
 * @param sees which terms the story looks at
 * @returns rows in order of first appearance
 * Source: derived
 * Example: slipRows([], 60, { load: true, rope: false, order: false }) → []
 */
export function slipRows(
	trials: readonly Trial[],
	referenceLoad: number,
	sees: { load: boolean; rope: boolean; order: boolean }
): SlipRow[] {
	const rows = new Map<string, SlipRow>();
	for (const { outcome, load, ropeTerm, order, session = 1 } of trials) {
		if (outcome === 'stopped' || outcome === 'unknown') continue;
		const stuck = outcome !== 'slipped';
		const row = {
			lnLoad: sees.load ? Math.log(load / referenceLoad) : 0,
			ropeTerm: sees.rope ? ropeTerm : 0,
			order: sees.order ? order : 0,
			stuck,
			count: 1,
			session
		};
		const key = `${row.lnLoad} ${row.ropeTerm} ${row.order} ${stuck} ${session}`;
		const same = rows.get(key);
		if (same) same.count += 1;
		else rows.set(key, row);
	}
	return [...rows.values()];
}
