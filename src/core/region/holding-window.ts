import { checkHang } from '../strength/check-hang.ts';
import { prepareHang } from '../strength/prepare-hang.ts';
import type { Hang, Interval } from '../types.ts';
import { requireAllowed } from '../units/allowed-range.ts';
import { windowOf } from './window-of.ts';

/**
 * Finds the net masses that hold, everything else fixed: the holding window.
 * { m : slip margin ≥ 1 and strength margin ≥ 1 } along H(m) = max(0, M g − m g) tan φ + P
 * @param hang the hang, all but its load
 * @param range.from lightest net mass to look at, kg, above 0
 * @param range.to heaviest, kg, above from
 * @returns the intervals, lightest first: none, one or more; each end is made by slip, by strength,
 * or by the range; edges in kg to 1e-8
 * Valid for: along the protocol of loadAtNetMass. An end is also called slip where the pull begins
 * to lead off the hold; under a sticking law the margin may jump there instead of passing 1.
 * @throws RangeError for a field outside its range
 * Source: derived.
 * Example: 70 kg plumb, slope 32°, constant 0.64, best hang 40 kg a hand: 20 to 63.6149 kg (strength).
 */
export function holdingWindow(hang: Hang, range: { from: number; to: number }): Interval[] {
	checkHang(hang);
	checkMassRange('', range);
	return windowOf(prepareHang(hang), range.from, range.to);
}

/**
 * Stops a range of net mass that is empty or reaches no load.
 * @param field what the range is called in the message, with its dot
 * @param range.from kg, above 0
 * @param range.to kg, above from
 * @throws RangeError naming the field
 * Source: derived.
 * Example: checkMassRange('', { from: 0, to: 10 }) throws.
 */
export function checkMassRange(field: string, range: { from: number; to: number }): void {
	requireAllowed(`${field}from`, range.from, { above: 0, unit: 'kg' });
	requireAllowed(`${field}to`, range.to, { above: range.from, unit: 'kg' });
}
