import { requireAllowed } from '../units/allowed-range.ts';

/**
 * Finds the factor by which friction has drifted at a load, when loads are tried in rising order.
 * factor = exp(drift · k), k = (m − firstMass)/step: the number of goes before this one
 * @param netMass m, kg, above 0
 * @param o.drift change of the ratio's logarithm from one go to the next
 * @param o.firstMass net mass of the first go, kg, above 0
 * @param o.step net mass added from go to go, kg, above 0
 * @returns factor on the ratio; 1 at the first go
 * Sign: a ratio that improves from go to go makes heavier look easier, and the other way round.
 * Load itself does nothing.
 * Valid for: one session in rising order; below firstMass nothing has drifted yet.
 * @throws RangeError for a field outside its range
 * Source: derived from an assumed form of drift.
 * Example: drift 0.02, first 40 kg, step 5 kg: 1.083 at 60 kg.
 */
export function orderDriftFactor(
	netMass: number,
	o: { drift: number; firstMass: number; step: number }
): number {
	requireAllowed('netMass', netMass, { above: 0, unit: 'kg' });
	requireAllowed('drift', o.drift, {});
	requireAllowed('firstMass', o.firstMass, { above: 0, unit: 'kg' });
	requireAllowed('step', o.step, { above: 0, unit: 'kg' });
	return Math.exp((o.drift * Math.max(0, netMass - o.firstMass)) / o.step);
}
