import { requireAllowed } from '../units/allowed-range.ts';
import { kilogramsToNewtons } from '../units/force.ts';

/**
 * Gives the band of assist a counterweight may give through one pulley, at rest.
 * η m g ≤ A ≤ m g/η, depending on which way the rope last moved
 * @param mass counterweight m, kg, 0 or more
 * @param efficiency of the pulley η, above 0 and at most 1
 * @returns low (the person last rose), ideal (no friction) and high (the person last sank), N
 * Valid for: a still hang under one fixed pulley. A reading of the scale is better.
 * @throws RangeError for a field outside its range
 * Source: derived.
 * Example: counterweightForce(10, 1).ideal is 98.0665.
 */
export function counterweightForce(
	mass: number,
	efficiency: number
): { low: number; ideal: number; high: number } {
	requireAllowed('mass', mass, { min: 0, unit: 'kg' });
	requireAllowed('efficiency', efficiency, { above: 0, max: 1 });
	const ideal = kilogramsToNewtons(mass);
	return { low: efficiency * ideal, ideal, high: ideal / efficiency };
}
