import type { Load } from '../types.ts';
import { newtonsToKilograms } from '../units/force.ts';

/**
 * Describes a force on the hands by its parts, its size, its lean and its weight as a mass.
 * |L| = √(V² + H²), δ = atan2(H, V), net mass = V/g
 * @param vertical force straight down on the hands, N, above 0
 * @param horizontal force away from the wall, N, negative toward the wall
 * @param netMass the vertical force as a mass, kg, where the caller knows it exactly
 * @returns the load; tilt is positive when the force leads away from the wall, between −π/2 and π/2
 * Valid for: numbers already checked by the caller.
 * Source: openstaxUniversityPhysics, ch. 2.2.
 * Example: loadFromForces(600, 0).tilt is 0.
 */
export function loadFromForces(
	vertical: number,
	horizontal: number,
	netMass = newtonsToKilograms(vertical)
): Load {
	return {
		vertical,
		horizontal,
		magnitude: Math.hypot(vertical, horizontal),
		tilt: Math.atan2(horizontal, vertical),
		netMass
	};
}
