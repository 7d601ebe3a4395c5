import { patchArea } from './patch-area.ts';
import type { PreparedHang } from './prepare-hang.ts';

/** What happens at one hand under one load; a record that is filled again and again. */
export type Contact = {
	/** Slope of the hold in the middle of the patch, rad. */
	meanSlope: number;
	/** Its cosine and sine. */
	cosine: number;
	sine: number;
	/** Force into the hold N, N, and along it Q, down the slope positive, N. */
	normal: number;
	tangential: number;
	/** Patch of one finger, m². */
	padArea: number;
	/** Exponent of the patch's growth just here: 0 when it is fixed or at its limit. */
	growth: number;
	/** Mean pressure, Pa, and the ratio the law gives there. */
	pressure: number;
	ratio: number;
	/** Largest friction μN, N. */
	frictionLimit: number;
	/** Moment about the last joints, N·m: force times arm ℓ(s) = d cos s + h sin s. */
	moment: number;
	/** The pull leads off the hold: N is not above 0. */
	leadsOff: boolean;
};

/** A record for contactAt to fill. */
export function emptyContact(): Contact {
	return {
		meanSlope: 0,
		cosine: 1,
		sine: 0,
		normal: 0,
		tangential: 0,
		padArea: 0,
		growth: 0,
		pressure: 0,
		ratio: 0,
		frictionLimit: 0,
		moment: 0,
		leadsOff: false
	};
}

/** A normal force this small a share of the whole is a pull along the hold, rounded. */
const alongTheHold = 1e-12;

/**
 * Splits a load into what presses and what slides at one hand, and finds the two limits' numbers.
 * N = (V cos σ − H sin σ)/hands, Q = (V sin σ + H cos σ)/hands with σ the patch's mean slope;
 * p = N/(fingers · a), limit μ(p) N, moment d N + h Q with d = padLength − a/(2 padWidth)
 * @param prepared the hang
 * @param vertical load on all hands, N, above 0
 * @param horizontal load on all hands, N, positive away from the wall
 * @param contact the record to fill
 * @returns the same record; where N is not above 0 area, pressure, ratio, limit and moment are 0
 * Valid for: fingertip pads in a still hang.
 * Source: openstaxUniversityPhysics, ch. 6.2; arm and rounded hold derived.
 * Example: 686.4655 N plumb on two hands at slope 32°: normal 291.07788, tangential 181.885646.
 */
export function contactAt(
	prepared: PreparedHang,
	vertical: number,
	horizontal: number,
	contact: Contact
): Contact {
	const { hang, areaLimit } = prepared;
	const { hands, grip } = hang;
	const area = patchArea(prepared, vertical / hands, horizontal / hands);
	const turn = prepared.slopePerArea * area;
	const slope = hang.slope + turn;
	const cosine = turn === 0 ? prepared.tipCosine : Math.cos(slope);
	const sine = turn === 0 ? prepared.tipSine : Math.sin(slope);
	const normal = (vertical * cosine - horizontal * sine) / hands;
	const tangential = (vertical * sine + horizontal * cosine) / hands;
	contact.meanSlope = slope;
	contact.cosine = cosine;
	contact.sine = sine;
	contact.normal = normal;
	contact.tangential = tangential;
	contact.growth = area < areaLimit ? prepared.areaExponent : 0;
	contact.leadsOff = !(normal > alongTheHold * Math.abs(tangential));
	if (contact.leadsOff) {
		contact.padArea = contact.pressure = contact.ratio = contact.frictionLimit = 0;
		contact.moment = 0;
		return contact;
	}
	contact.padArea = area;
	contact.pressure = normal / (grip.fingers * area);
	contact.ratio = prepared.formula.ratio(prepared.law, contact.pressure);
	contact.frictionLimit = contact.ratio * normal;
	contact.moment =
		(grip.padLength - area / (2 * grip.padWidth)) * normal + grip.padDepth * tangential;
	return contact;
}
