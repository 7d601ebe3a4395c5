import { requireAllowed } from '../units/allowed-range.ts';

/**
 * Estimates the force of a tendon on the pulley (A2 or A4) it bends around.
 * R = 2 T sin(θ/4): the bend of the middle joint is shared equally by the two pulleys
 * @param tension of the tendon T, N, 0 or more
 * @param pipFlexion flexion θ of the middle joint, rad, 0 to π
 * @returns force on one pulley, N
 * Valid for: teaching; low by a quarter to a third in an open grip. Never a margin to injury.
 * @throws RangeError for a field outside its range
 * Source: derived.
 * Example: pulleyForce(1, Math.PI / 2) is 0.7654.
 */
export function pulleyForce(tension: number, pipFlexion: number): number {
	requireAllowed('tension', tension, { min: 0, unit: 'N' });
	requireAllowed('pipFlexion', pipFlexion, { min: 0, max: Math.PI, unit: 'rad' });
	return 2 * tension * Math.sin(pipFlexion / 4);
}
