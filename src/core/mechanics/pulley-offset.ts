import { requireAllowed } from '../units/allowed-range.ts';
import type { PulleyRig } from './settled-rope.ts';

/**
 * Finds how far out from plumb a fixed pulley must sit for the rope to come to rest at an angle.
 * tan β = (M − m) r tan φ/(M c − (M − m) r); X = r sin β + (Y + r cos β) tan φ
 * @param ropeAngle φ of the rope at rest, rad, between −π/2 and π/2, positive away from the wall
 * @param o.hangingMass M, kg, above 0
 * @param o.netMass m on the hands, kg, above 0 and at most M
 * @param o.rig height Y of the pulley, tieIn r and centre c along the body, m
 * @returns X, m; positive away from the wall. The way back of settledRopeAtNetMass
 * Valid for: as settledRopeAtNetMass, no offset to the side, and (M − m) r below M c.
 * @throws RangeError for a field outside its range
 * Source: derived.
 * Example: 8.4° with 55 of 70 kg, 2 m up, tied at the centre, 1.09 m down: 0.5 m.
 */
export function pulleyOffset(
	ropeAngle: number,
	o: { hangingMass: number; netMass: number; rig: Pick<PulleyRig, 'height' | 'tieIn' | 'centre'> }
): number {
	const { hangingMass, netMass, rig } = o;
	const { height, tieIn, centre } = rig;
	requireAllowed('ropeAngle', ropeAngle, { above: -Math.PI / 2, below: Math.PI / 2, unit: 'rad' });
	requireAllowed('hangingMass', hangingMass, { above: 0, unit: 'kg' });
	requireAllowed('rig.height', height, { min: 0, unit: 'm' });
	requireAllowed('rig.tieIn', tieIn, { above: 0, unit: 'm' });
	requireAllowed('rig.centre', centre, { above: 0, unit: 'm' });
	const least = hangingMass * (1 - centre / tieIn);
	requireAllowed('netMass', netMass, { above: Math.max(0, least), max: hangingMass, unit: 'kg' });
	const taken = (hangingMass - netMass) * tieIn;
	const bodyLean = Math.atan((taken * Math.tan(ropeAngle)) / (hangingMass * centre - taken));
	return tieIn * Math.sin(bodyLean) + (height + tieIn * Math.cos(bodyLean)) * Math.tan(ropeAngle);
}
