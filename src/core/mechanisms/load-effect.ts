import { requireAllowed } from '../units/allowed-range.ts';
import type { MarginCurve } from './mechanism-margin.ts';

/** What a heavier hang does, in words for the screen. */
export type LoadSign = 'lighter is easier' | 'no change' | 'heavier is easier' | 'either';

/**
 * Finds how much the slip margin changes over a doubling of load centred on one load.
 * margin(√2 m)/margin(m/√2) − 1
 * @param curve slip margin against net mass
 * @param netMass m, kg, above 0
 * @returns change as a share, positive when heavier is easier; NaN where a margin is 0 or Infinity
 * Valid for: wherever the curve is.
 * @throws RangeError for a net mass that is not above 0
 * Source: derived.
 * Example: a margin that goes as the load to the power −0.206 gives −0.133.
 */
export function effectPerDoubling(curve: MarginCurve, netMass: number): number {
	requireAllowed('netMass', netMass, { above: 0, unit: 'kg' });
	return change(curve(netMass / Math.SQRT2), curve(netMass * Math.SQRT2));
}

/**
 * Finds how much the slip margin changes with ten more kilograms.
 * margin(m + 10)/margin(m) − 1
 * @param curve slip margin against net mass
 * @param netMass m, kg, above 0
 * @returns change as a share, positive when heavier is easier; NaN where a margin is 0 or Infinity
 * Valid for: wherever the curve is.
 * @throws RangeError for a net mass that is not above 0
 * Source: derived.
 * Example: a margin that does not change with load gives 0.
 */
export function effectPerTenKilograms(curve: MarginCurve, netMass: number): number {
	requireAllowed('netMass', netMass, { above: 0, unit: 'kg' });
	return change(curve(netMass), curve(netMass + 10));
}

/**
 * Says in words what load does along a curve.
 * compares neighbours on an even grid
 * @param curve slip margin against net mass
 * @param o.from lightest load, kg, above 0
 * @param o.to heaviest load, kg, above from
 * @param o.samples loads tried, 3 or more (default 41)
 * @param o.tolerance share by which neighbours may differ and count as equal (default 1e-9)
 * @returns the sign; 'either' when it changes along the way
 * Valid for: the loads between from and to.
 * @throws RangeError for a field outside its range
 * Source: derived.
 * Example: a curve that falls all the way is 'lighter is easier'.
 */
export function loadSign(
	curve: MarginCurve,
	o: { from: number; to: number; samples?: number; tolerance?: number }
): LoadSign {
	const { from, to, samples = 41, tolerance = 1e-9 } = o;
	requireAllowed('from', from, { above: 0, unit: 'kg' });
	requireAllowed('to', to, { above: from, unit: 'kg' });
	requireAllowed('samples', samples, { min: 3, whole: true });
	requireAllowed('tolerance', tolerance, { min: 0 });
	let rises = false;
	let falls = false;
	let last = curve(from);
	for (let at = 1; at < samples; at++) {
		const next = curve(from + ((to - from) * at) / (samples - 1));
		if (next > last * (1 + tolerance)) rises = true;
		if (next < last * (1 - tolerance)) falls = true;
		last = next;
	}
	if (rises && falls) return 'either';
	if (rises) return 'heavier is easier';
	return falls ? 'lighter is easier' : 'no change';
}

/**
 * Scales a curve so that it passes through a person's own point: what the board draws.
 * margin(m) · point.margin/margin(point.netMass)
 * @param curve slip margin against net mass
 * @param point the person's own net mass, kg, and slip margin, above 0
 * @returns the scaled curve; shares per doubling and per ten kilograms stay as they are
 * Valid for: curves that are above 0 and finite at the point; others come back unscaled.
 * @throws RangeError for a point outside its range
 * Source: derived.
 * Example: anchored at (70, 1) every curve is 1 at 70 kg.
 */
export function anchoredCurve(
	curve: MarginCurve,
	point: { netMass: number; margin: number }
): MarginCurve {
	requireAllowed('point.netMass', point.netMass, { above: 0, unit: 'kg' });
	requireAllowed('point.margin', point.margin, { above: 0 });
	const here = curve(point.netMass);
	if (!(here > 0 && here < Infinity)) return curve;
	const scale = point.margin / here;
	return (netMass) => curve(netMass) * scale;
}

function change(lighter: number, heavier: number): number {
	const usable = lighter > 0 && lighter < Infinity && heavier > 0 && heavier < Infinity;
	return usable ? heavier / lighter - 1 : NaN;
}
