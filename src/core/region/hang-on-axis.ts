import { hangRanges } from '../strength/check-hang.ts';
import type { ContactModel, Hang, RegionAxis } from '../types.ts';
import { isAllowed } from '../units/allowed-range.ts';
import { kilogramsToNewtons } from '../units/force.ts';

/**
 * Puts a value of the region's axis into a hang.
 * slope, ropeAngle: rad; coefficient: of the law; padArea: m² per finger; holdTime: s.
 * A growing patch keeps its shape: padCoefficient and padLimit are scaled by one factor, so that the
 * area at the present load is the value.
 * @param hang a checked hang
 * @param axis what moves
 * @param value where on the axis, SI
 * @param present the present net mass, kg, for the label of a growing patch
 * @returns the hang there, or undefined where the value is outside what a hang allows
 * Valid for: a padArea beyond the pad gives the whole pad, as everywhere.
 * Source: derived.
 * Example: hangOnAxis(hang, 'slope', 0.5, 70)?.slope is 0.5.
 */
export function hangOnAxis(
	hang: Hang,
	axis: RegionAxis,
	value: number,
	present: number
): Hang | undefined {
	if (!isAllowed(value, hangRanges[axis])) return undefined;
	switch (axis) {
		case 'slope':
			return { ...hang, slope: value };
		case 'ropeAngle':
			return { ...hang, ropeAngle: value };
		case 'coefficient':
			return { ...hang, friction: { ...hang.friction, coefficient: value } };
		case 'holdTime':
			return { ...hang, strength: { ...hang.strength, holdTime: value } };
		case 'padArea':
			return { ...hang, grip: { ...hang.grip, contact: contactWithArea(hang, value, present) } };
	}
}

/** The patch model scaled so that one finger touches with this area at the present load. */
function contactWithArea(hang: Hang, padArea: number, present: number): ContactModel {
	const { contact } = hang.grip;
	if (contact.kind === 'fixed') return { kind: 'fixed', padArea };
	const normal = padForceOn(hang, padArea, present);
	// A pull that leads off presses no pad: the label is then the limit.
	const grown = normal > 0 ? contact.padCoefficient * Math.pow(normal, contact.exponent) : Infinity;
	const factor = padArea / Math.min(contact.padLimit, grown);
	return {
		kind: 'growing',
		padCoefficient: contact.padCoefficient * factor,
		exponent: contact.exponent,
		padLimit: contact.padLimit * factor
	};
}

/** What presses one pad that has this area, N: the area also turns the pad on a rounded hold. */
function padForceOn(hang: Hang, padArea: number, netMass: number): number {
	const { grip, radius, hangingMass, ropeAngle, push = 0 } = hang;
	const area = Math.min(padArea, grip.padWidth * grip.padLength);
	const slope = hang.slope + (radius === undefined ? 0 : area / (2 * radius * grip.padWidth));
	const assist = kilogramsToNewtons(Math.max(0, hangingMass - netMass));
	const horizontal = assist * Math.tan(ropeAngle) + push;
	const pressing = kilogramsToNewtons(netMass) * Math.cos(slope) - horizontal * Math.sin(slope);
	return pressing / (hang.hands * grip.fingers);
}
