import { requireAllowed } from '../units/allowed-range.ts';

/**
 * Finds the friction ratio needed when the hand adds a squeeze of its own, square to the hold.
 * demand = V sin σ/(V cos σ + S)
 * @param slope σ of the hold below the horizontal, rad, between −π/2 and π/2
 * @param vertical V, what the hands carry, N, above 0
 * @param squeeze S, of thumb or wrap, both hands together, N, 0 or more
 * @returns ratio of friction to normal force needed
 * Sign: a squeeze that stays the same makes a heavier hang harder; one that grows faster than the
 * load would make it easier.
 * Valid for: a plumb pull, and a squeeze that only presses.
 * @throws RangeError for a field outside its range
 * Source: derived.
 * Example: slope 33°, 350 N, squeeze 100 N: 0.484.
 */
export function squeezeDemand(slope: number, vertical: number, squeeze: number): number {
	requireAllowed('slope', slope, { above: -Math.PI / 2, below: Math.PI / 2, unit: 'rad' });
	requireAllowed('vertical', vertical, { above: 0, unit: 'N' });
	requireAllowed('squeeze', squeeze, { min: 0, unit: 'N' });
	return (vertical * Math.sin(slope)) / (vertical * Math.cos(slope) + squeeze);
}
