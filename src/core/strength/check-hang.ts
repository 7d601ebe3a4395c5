import { lawFormula } from '../friction/laws.ts';
import type { Hang } from '../types.ts';
import { requireAllowed } from '../units/allowed-range.ts';
import { longestHoldTime } from './endurance.ts';

/** The allowed ranges of the fields of a hang that a region can sweep. */
export const hangRanges = {
	slope: { min: -Math.PI / 2, max: Math.PI / 2, unit: 'rad' },
	coefficient: { min: 0 },
	padArea: { above: 0, unit: 'm²' },
	ropeAngle: { above: -Math.PI / 2, below: Math.PI / 2, unit: 'rad' },
	holdTime: { above: 0, max: longestHoldTime, unit: 's' }
};

const length = { above: 0, unit: 'm' };

/**
 * Stops a hang with a number that has no meaning, naming field, value and allowed range.
 * @param hang the hang to check
 * @throws RangeError for the first field outside its range
 * Source: derived.
 * Example: a hang with hangingMass −1 throws "hang.hangingMass must be a number above 0 kg, but is -1".
 */
export function checkHang(hang: Hang): void {
	const { grip, strength } = hang;
	requireAllowed('hang.hangingMass', hang.hangingMass, { above: 0, unit: 'kg' });
	requireAllowed('hang.ropeAngle', hang.ropeAngle, hangRanges.ropeAngle);
	requireAllowed('hang.push', hang.push ?? 0, { unit: 'N' });
	requireAllowed('hang.hands', hang.hands, { min: 1, max: 2, whole: true });
	requireAllowed('hang.slope', hang.slope, hangRanges.slope);
	if (hang.radius !== undefined) requireAllowed('hang.radius', hang.radius, length);
	lawFormula(hang.friction).check(hang.friction);

	requireAllowed('grip.fingers', grip.fingers, { min: 1, max: 4, whole: true });
	requireAllowed('grip.padWidth', grip.padWidth, length);
	requireAllowed('grip.padLength', grip.padLength, length);
	requireAllowed('grip.padDepth', grip.padDepth, { min: 0, unit: 'm' });
	checkContact(grip.contact);

	requireAllowed('strength.referenceForce', strength.referenceForce, { above: 0, unit: 'N' });
	// On a deeper edge more than the end of the finger carries.
	requireAllowed('strength.referenceEdgeDepth', strength.referenceEdgeDepth, {
		above: 0,
		max: grip.padLength,
		unit: 'm'
	});
	if (strength.referenceHoldTime !== undefined)
		requireAllowed('strength.referenceHoldTime', strength.referenceHoldTime, hangRanges.holdTime);
	requireAllowed('strength.holdTime', strength.holdTime, hangRanges.holdTime);
}

function checkContact(contact: Hang['grip']['contact']): void {
	if (contact.kind === 'fixed') {
		requireAllowed('contact.padArea', contact.padArea, hangRanges.padArea);
	} else if (contact.kind === 'growing') {
		requireAllowed('contact.padCoefficient', contact.padCoefficient, {
			above: 0,
			unit: 'm²/N^exponent'
		});
		requireAllowed('contact.exponent', contact.exponent, { min: 0, max: 1 });
		requireAllowed('contact.padLimit', contact.padLimit, hangRanges.padArea);
	} else {
		const { kind } = contact as { kind: unknown };
		throw new RangeError(`contact.kind must be fixed or growing, but is ${String(kind)}`);
	}
}
