import { loadAtNetMass } from '../mechanics/load-at-net-mass.ts';
import { evaluateHang } from '../strength/evaluate-hang.ts';
import type { Hang } from '../types.ts';
import type { BreakPair } from './breaks.ts';

/** Where a slip edge meets a strength edge; net mass in kg. */
export type Crossing = { value: number; netMass: number };

/** Both margins this near to 1 at an edge beside a break mean that both edges are there. */
const meeting = 1e-7;

/**
 * Finds where the slip edge meets the strength edge at a break. Every such meeting is a break: the
 * end of an interval changes its limit there, or an interval is born or dies.
 * @param pair the columns on the two sides of the break
 * @param hangAt the hang at an axis value
 * @returns the crossings at this break, usually none or one
 * Valid for: edges that cross, not ones that only touch.
 * Source: derived.
 * Example: where a window between slip and strength closes, one crossing with both margins 1.
 */
export function crossingsAt(
	pair: BreakPair,
	hangAt: (value: number) => Hang | undefined
): Crossing[] {
	const value = (pair[0].value + pair[1].value) / 2;
	const found: Crossing[] = [];
	for (const column of pair) {
		const hang = hangAt(column.value);
		if (!hang) continue;
		for (const { from, to, lowerLimit, upperLimit } of column.intervals) {
			if (lowerLimit !== 'range') consider(hang, from);
			if (upperLimit !== 'range') consider(hang, to);
		}
	}
	return found;

	function consider(hang: Hang, netMass: number): void {
		const known = found.some((other) => Math.abs(other.netMass - netMass) < 1e-5 * netMass);
		if (known) return;
		const { slipMargin, strengthMargin } = evaluateHang(hang, loadAtNetMass(netMass, hang));
		if (Math.abs(slipMargin - 1) < meeting && Math.abs(strengthMargin - 1) < meeting)
			found.push({ value, netMass });
	}
}
