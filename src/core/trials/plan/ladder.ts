import { largestStep } from '../cap-values.ts';

/**
 * Lays out the warm-up: loads that climb in steps of at most 10 % to the plan's heaviest load.
 *
 * Each rung is the one before × 1.10, brought down to what the plates allow. Where the plates are
 * too coarse for that, the exact load is given. The last rung is the heaviest load itself.
 *
 * @param heaviest heaviest planned net load, kg, above 0
 * @param from first rung, kg, above 0; a start at or above the heaviest gives one rung
 * @param increment smallest change of load the plates allow, kg, 0 or more
 * @returns loads in kg, rising
 * @throws RangeError when a load is not above 0, or the increment is below 0
 * Source: derived
 * Example: warmUpLadder(50, 40, 0.5) → [40, 44, 48, 50]
 */
export function warmUpLadder(heaviest: number, from: number, increment: number): number[] {
	for (const [field, value] of Object.entries({ heaviest, from })) {
		if (!(value > 0) || !Number.isFinite(value)) {
			throw new RangeError(`${field} is ${value}; it must be above 0 kg`);
		}
	}
	if (!(increment >= 0)) throw new RangeError(`increment is ${increment}; it must be 0 kg or more`);
	const rungs: number[] = [];
	for (let load = Math.min(from, heaviest); load < heaviest;) {
		rungs.push(load);
		const next = load * largestStep;
		// 1e-9 keeps 44.000000000000004 from costing a whole plate.
		const plates = increment > 0 ? Math.floor(next / increment + 1e-9) * increment : next;
		load = plates > load && plates <= next ? plates : next;
	}
	rungs.push(heaviest);
	return rungs;
}
