import type { Load } from '../types.ts';
import { newtonsToKilograms } from '../units/force.ts';
import type { Contact } from './contact-at.ts';
import type { PreparedHang } from './prepare-hang.ts';
import { warningText } from './warning-text.ts';

/** Above this share of assist one rope angle no longer stands for all loads. */
const highAssist = 0.4;
/** Tighter rounded holds break the even pressure that is supposed, m. */
const tightestRadius = 0.02;

/**
 * Collects what has to be said beside a result.
 * @param prepared the hang
 * @param load on all hands
 * @param contact what contactAt found for them
 * @returns sentences for the screen, the most important first
 * Source: derived.
 * Example: a plumb hang on a flat slope within its pads gives an empty list.
 */
export function hangWarnings(prepared: PreparedHang, load: Load, contact: Contact): string[] {
	const { hang, areaCoefficient, areaExponent, areaLimit } = prepared;
	const { grip, ropeAngle, radius } = hang;
	const warnings: string[] = [];
	if (contact.leadsOff) warnings.push(warningText.leadsOff);
	else {
		if (contact.tangential <= 0 && contact.meanSlope >= 0)
			warnings.push(warningText.noFrictionNeeded);
		if (contact.moment <= 0) warnings.push(warningText.fingersPressedShut);
	}
	const wished =
		grip.contact.kind === 'fixed'
			? grip.contact.padArea
			: Math.min(
					grip.contact.padLimit,
					areaCoefficient * Math.pow(Math.max(0, contact.normal) / grip.fingers, areaExponent)
				);
	if (wished > areaLimit * (1 + 1e-9)) warnings.push(warningText.patchLargerThanPad);
	const netMass = newtonsToKilograms(load.vertical);
	if (ropeAngle !== 0 && netMass < (1 - highAssist) * hang.hangingMass)
		warnings.push(warningText.ropeAngleAtHighAssist);
	if (ropeAngle < 0 && netMass < hang.hangingMass) warnings.push(warningText.inwardRope);
	if (radius !== undefined && radius < tightestRadius) warnings.push(warningText.tightRadius);
	return warnings;
}
