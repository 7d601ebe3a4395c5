import type { Load } from '../types.ts';
import { requireAllowed } from '../units/allowed-range.ts';
import { kilogramsToNewtons } from '../units/force.ts';
import { loadFromForces } from './load-from-forces.ts';

/**
 * Finds what the hands carry when a person hangs still with added mass and the help of a rope.
 * V = M g − A cos φ, H = A sin φ, with M the body mass and the added mass together
 * @param o.bodyMass body mass with clothes and harness, kg, above 0
 * @param o.addedMass plates or belt, kg, 0 or more (default 0)
 * @param o.assistForce tension A of the rope at the body, N, 0 or more (default 0)
 * @param o.assistAngle angle φ of the rope from straight up, at the body, at rest in this hang,
 * rad, −π to π, positive when it leads away from the wall (default 0)
 * @returns the load on both hands together; positive tilt leads away from the wall
 * Valid for: a still, symmetric hang that touches nothing but hold and rope. No posture is needed:
 * a free body leans until its weight, the rope and the hands line up.
 * @throws RangeError for a field outside its range, or when the rope carries everything (V ≤ 0)
 * Source: openstaxUniversityPhysics, ch. 5.7 (forces at equilibrium).
 * Example: hangLoad({ bodyMass: 70 }).vertical is 686.4655.
 */
export function hangLoad(o: {
	bodyMass: number;
	addedMass?: number;
	assistForce?: number;
	assistAngle?: number;
}): Load {
	const { bodyMass, addedMass = 0, assistForce = 0, assistAngle = 0 } = o;
	requireAllowed('bodyMass', bodyMass, { above: 0, unit: 'kg' });
	requireAllowed('addedMass', addedMass, { min: 0, unit: 'kg' });
	requireAllowed('assistForce', assistForce, { min: 0, unit: 'N' });
	requireAllowed('assistAngle', assistAngle, { min: -Math.PI, max: Math.PI, unit: 'rad' });
	const weight = kilogramsToNewtons(bodyMass + addedMass);
	const lift = assistForce * Math.cos(assistAngle);
	// Past this assist nothing hangs from the hands any more.
	if (lift >= weight) {
		const below = weight / Math.cos(assistAngle);
		requireAllowed('assistForce', assistForce, { min: 0, below, unit: 'N' });
	}
	return loadFromForces(weight - lift, assistForce * Math.sin(assistAngle));
}
