import { requireAllowed } from '../units/allowed-range.ts';
import { roundingSpread, type Measured } from './measured.ts';

/**
 * Finds what the hands carry from a scale under the feet: whole weight less what the scale shows.
 * net = (before + after)/2 − during; spread² = step²/12 · 3/2 + (before − after)²/12
 * @param o.before reading with nothing carried by the hands, before the hang, kg, above 0
 * @param o.after the same after the hang; leave out if not read
 * @param o.during reading during the hang, kg, 0 or more and below the whole weight; 0 when nothing
 * touches the scale
 * @param o.step resolution of the scale, kg, above 0 (default 0.1)
 * @returns net mass on the hands, kg, with its spread; drift: after less before, kg
 * Valid for: a scale that is read, not the counterweight; the rope must not run between reading and
 * hang. The drift is taken as lying evenly between the two whole readings.
 * @throws RangeError for a field outside its range
 * Source: balas2014, soderqvist2024; spread after jcgm100
 * Example: 71.2 before, 71.2 after, 16.2 during, step 0.1: 55.0 kg, spread 0.035 kg.
 */
export function netMassFromScale(o: {
	before: number;
	after?: number;
	during: number;
	step?: number;
}): Measured & { drift: number } {
	const { before, after, during, step = 0.1 } = o;
	requireAllowed('before', before, { above: 0, unit: 'kg' });
	if (after !== undefined) requireAllowed('after', after, { above: 0, unit: 'kg' });
	const whole = after === undefined ? before : (before + after) / 2;
	requireAllowed('during', during, { min: 0, below: whole, unit: 'kg' });
	requireAllowed('step', step, { above: 0, unit: 'kg' });
	const reading = roundingSpread(step);
	const drift = after === undefined ? 0 : after - before;
	const readings = after === undefined ? Math.SQRT2 : Math.sqrt(1.5);
	return {
		value: whole - during,
		spread: Math.hypot(reading * readings, roundingSpread(Math.abs(drift))),
		drift
	};
}
