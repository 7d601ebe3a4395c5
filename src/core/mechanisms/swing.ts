import { requireAllowed } from '../units/allowed-range.ts';

/**
 * Finds how far a body swings from the same sideways nudge at another load.
 * sin(α/2) = sin(α₀/2) · M₀/√(M m), with M the moving mass: M₀ under assist, m with added mass
 * (a nudge J gives the speed J/M, and M v²/2 = m g l (1 − cos α))
 * @param referenceAngle α₀, half swing at the hanging mass without assist, rad, 0 to π
 * @param hangingMass M₀, kg, above 0
 * @param netMass m that the hands carry, kg, above 0
 * @returns half swing α, rad; π where the nudge would turn the body over
 * Sign: under assist the swing grows as one over the root of the net load; added mass damps it.
 * Valid for: a rigid pendulum and an assist that pulls straight up all the while.
 * @throws RangeError for a field outside its range
 * Source: derived.
 * Example: a swing of 3° at 70 kg becomes 4.2° (0.07406 rad) at 35 of 70 kg.
 */
export function swingAngleFromNudge(
	referenceAngle: number,
	hangingMass: number,
	netMass: number
): number {
	requireAllowed('referenceAngle', referenceAngle, { min: 0, max: Math.PI, unit: 'rad' });
	requireAllowed('hangingMass', hangingMass, { above: 0, unit: 'kg' });
	requireAllowed('netMass', netMass, { above: 0, unit: 'kg' });
	const moving = Math.max(hangingMass, netMass);
	const half = Math.sin(referenceAngle / 2) * (hangingMass / Math.sqrt(moving * netMass));
	return half >= 1 ? Math.PI : 2 * Math.asin(half);
}

/**
 * Finds the largest pull of a swinging body as a multiple of its still pull.
 * 3 − 2 cos α, at the lowest point
 * @param angle α, half swing, rad, 0 to π
 * @returns multiple, 1 to 5
 * Valid for: a pendulum without losses.
 * @throws RangeError for an angle outside its range
 * Source: derived.
 * Example: 10° gives 1.0304.
 */
export function swingPeakFactor(angle: number): number {
	requireAllowed('angle', angle, { min: 0, max: Math.PI, unit: 'rad' });
	return 3 - 2 * Math.cos(angle);
}
