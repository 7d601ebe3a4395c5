import type { Load } from '../types.ts';
import { requireAllowed } from '../units/allowed-range.ts';
import { kilogramsToNewtons } from '../units/force.ts';
import { loadFromForces } from './load-from-forces.ts';

/**
 * Finds the load at one net mass on the way from a light hang to a heavy one.
 * V = m g, H(m) = max(0, M g − m g) tan φ + P
 * Lighter than the hanging mass is reached by the rope, heavier by more mass, and a steady push
 * stays the same. This is a protocol, not a law.
 * @param netMass m, what the hands carry as a mass, kg, above 0
 * @param o.hangingMass M, body and added mass without the rope, kg, above 0
 * @param o.ropeAngle φ of the rope from straight up, rad, between −π/2 and π/2, positive away from
 * the wall; it is taken as the same at every load
 * @param o.push P, steady horizontal force on the hands, N, positive away from the wall (default 0)
 * @returns the load on both hands together
 * Valid for: one rope angle along the whole load axis. Under a fixed pulley the angle shrinks as
 * the assist grows, so above about 40 % assist the lean is overstated.
 * @throws RangeError for a field outside its range
 * Source: derived.
 * Example: loadAtNetMass(55, { hangingMass: 70, ropeAngle: 0 }).vertical is 539.36575.
 */
export function loadAtNetMass(
	netMass: number,
	o: { hangingMass: number; ropeAngle: number; push?: number }
): Load {
	const { hangingMass, ropeAngle, push = 0 } = o;
	requireAllowed('netMass', netMass, { above: 0, unit: 'kg' });
	requireAllowed('hangingMass', hangingMass, { above: 0, unit: 'kg' });
	requireAllowed('ropeAngle', ropeAngle, { above: -Math.PI / 2, below: Math.PI / 2, unit: 'rad' });
	requireAllowed('push', push, { unit: 'N' });
	const lift = kilogramsToNewtons(Math.max(0, hangingMass - netMass));
	return loadFromForces(kilogramsToNewtons(netMass), lift * Math.tan(ropeAngle) + push, netMass);
}
