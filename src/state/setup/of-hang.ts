import type { FrictionLaw, Hang } from '#core/types.ts';
import { radiansToDegrees } from '#core/units/angle.ts';
import { squareMetresToSquareMillimetres } from '#core/units/area.ts';
import { newtonsToKilograms } from '#core/units/force.ts';
import { metresToMillimetres } from '#core/units/length.ts';
import { pascalsToKilopascals } from '#core/units/pressure.ts';
import {
	firstSight,
	isAllowed,
	numberKeys,
	numberSpecs,
	type NumberKey,
	type Setup
} from '#storage/codecs/setup.ts';
import { setupOfLaw } from './of-law.ts';

/** Twelve digits, as links carry: a set-up that is finely tuned must come out as it was found. */
const short = (value: number) => Number(value.toPrecision(12));

/**
 * The set-up that says a hang at one load: the way back over the border.
 * Numbers may lie outside what a set-up's fields take; `strayFields` says which.
 * @param hang any hang, SI
 * @param netMass kg
 */
export function setupOfHang(hang: Hang, netMass: number): Setup {
	const { grip, strength, hands } = hang;
	const law = withinReach(hang.friction);
	const area = (squareMetres: number) => short(squareMetresToSquareMillimetres(squareMetres));
	const length = (metres: number) => short(metresToMillimetres(metres));
	const patch: Partial<Setup> =
		grip.contact.kind === 'fixed'
			? { patch: 'fixed', area: area(grip.contact.padArea) }
			: {
					patch: 'growing',
					// The set-up states the area at 100 N on the pad.
					area: area(grip.contact.padCoefficient * 100 ** grip.contact.exponent),
					growth: short(grip.contact.exponent),
					largest: Math.min(area(grip.contact.padLimit), numberSpecs.largest.max)
				};
	return {
		...firstSight,
		...setupOfLaw(law),
		...pressuresOf(law),
		...patch,
		body: short(hang.hangingMass),
		change: short(netMass - hang.hangingMass),
		slope: short(radiansToDegrees(hang.slope)),
		radius: hang.radius === undefined ? 0 : length(hang.radius),
		rope: short(radiansToDegrees(hang.ropeAngle)),
		push: short(hang.push ?? 0),
		fingers: grip.fingers,
		hands,
		padWidth: length(grip.padWidth),
		padLength: length(grip.padLength),
		padDepth: length(grip.padDepth),
		best: short(newtonsToKilograms(strength.referenceForce) * hands),
		bestFingers: grip.fingers,
		bestHands: hands,
		edge: length(strength.referenceEdgeDepth),
		bestTime: strength.referenceHoldTime ?? firstSight.bestTime,
		hold: strength.holdTime
	};
}

/**
 * A deformation part above what its field takes, stated at a lower pressure: the same law, for the
 * part grows as the cube root of pressure.
 */
function withinReach(law: FrictionLaw): FrictionLaw {
	const { max } = numberSpecs.deformation;
	if (law.kind !== 'deformation' || law.deformation <= max) return law;
	const referencePressure = law.referencePressure * (max / law.deformation) ** 3;
	return { ...law, deformation: max, referencePressure };
}

/** The law's pressures in full: a preset's are cut to what a person would type. */
function pressuresOf(law: FrictionLaw): Partial<Setup> {
	const fields: Partial<Setup> = {};
	const pressure = (pascals: number) => short(pascalsToKilopascals(pascals));
	if ('shearStrength' in law) fields.shear = pressure(law.shearStrength);
	if ('referencePressure' in law) fields.pressure = pressure(law.referencePressure);
	if (law.kind === 'film') fields.through = pressure(law.breakthroughPressure);
	return fields;
}

/** The fields of a set-up that hold a number they do not take. */
export function strayFields(setup: Setup): NumberKey[] {
	return numberKeys.filter((key) => !isAllowed(key, setup[key]));
}
