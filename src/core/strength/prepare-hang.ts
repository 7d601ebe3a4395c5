import type { LawFormula } from '../friction/law.ts';
import { lawFormula } from '../friction/laws.ts';
import type { FrictionLaw, Hang } from '../types.ts';
import { kilogramsToNewtons } from '../units/force.ts';
import { enduranceFraction } from './endurance.ts';

/** A checked hang with everything that does not change with load worked out once. */
export type PreparedHang = {
	hang: Hang;
	law: FrictionLaw;
	formula: LawFormula<FrictionLaw>;
	/** M g, N. */
	weight: number;
	/** Cosine and sine of the slope at the fingertip. */
	tipCosine: number;
	tipSine: number;
	/** How much one m² of patch turns its mean slope from the tip's, rad/m²; 0 on a flat hold. */
	slopePerArea: number;
	/** Area per finger as a(n) = min(areaLimit, areaCoefficient · n^areaExponent); exponent 0 is fixed. */
	areaCoefficient: number;
	areaExponent: number;
	areaLimit: number;
	/** Largest moment one hand can balance about the last joints, N·m. */
	strongestMoment: number;
};

/**
 * Works out once what a hang needs at every load.
 * Largest moment = referenceForce · (padLength − D/2) · f(holdTime)/f(referenceHoldTime)
 * @param hang a hang that checkHang lets pass
 * @returns numbers for contactAt; a patch never exceeds padWidth · padLength
 * Valid for: checked hangs.
 * Source: derived; endurance from rohmertBernard.
 * Example: referenceForce 392.266 N on a 20 mm edge with padLength 21 mm gives 4.314926 N·m.
 */
export function prepareHang(hang: Hang): PreparedHang {
	const { grip, strength, friction } = hang;
	const { contact, padWidth, padLength } = grip;
	const { referenceForce, referenceEdgeDepth, referenceHoldTime = 5, holdTime } = strength;
	const growing = contact.kind === 'growing';
	const areaLimit = Math.min(growing ? contact.padLimit : contact.padArea, padWidth * padLength);
	return {
		hang,
		law: friction,
		formula: lawFormula(friction),
		weight: kilogramsToNewtons(hang.hangingMass),
		tipCosine: Math.cos(hang.slope),
		tipSine: Math.sin(hang.slope),
		slopePerArea: hang.radius === undefined ? 0 : 1 / (2 * hang.radius * padWidth),
		areaCoefficient: growing ? contact.padCoefficient : areaLimit,
		areaExponent: growing ? contact.exponent : 0,
		areaLimit,
		strongestMoment:
			(referenceForce * (padLength - referenceEdgeDepth / 2) * enduranceFraction(holdTime)) /
			enduranceFraction(referenceHoldTime)
	};
}

/**
 * Turns the hold under a prepared hang, in place: what a search over the slope does many times.
 * @param prepared the hang; its hang's slope is set too
 * @param slope σ, rad, as checkHang lets pass
 * Valid for: checked hangs.
 * Source: derived.
 * Example: after tiltHold(prepared, 0) the tip's cosine is 1.
 */
export function tiltHold(prepared: PreparedHang, slope: number): void {
	prepared.hang.slope = slope;
	prepared.tipCosine = Math.cos(slope);
	prepared.tipSine = Math.sin(slope);
}
