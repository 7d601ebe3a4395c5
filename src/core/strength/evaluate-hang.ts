import type { Hang, Limit, Load } from '../types.ts';
import { requireAllowed } from '../units/allowed-range.ts';
import { checkHang } from './check-hang.ts';
import { contactAt, emptyContact } from './contact-at.ts';
import { hangWarnings } from './hang-warnings.ts';
import { prepareHang } from './prepare-hang.ts';

/** How far below 1 a margin may be and still hold: rounding, not physics. */
const holdTolerance = 1e-12;

/** Forces, limits and margins at one hand; see evaluateHang. */
export type HangResult = {
	/** Force on one hand, N. */
	force: number;
	/** Its part into the hold, N; not above 0 when the pull leads off. */
	normal: number;
	/** Its part down the slope, which friction has to balance, N; negative when it leads up. */
	tangential: number;
	/** Slope of the hold in the middle of the patch, rad. */
	meanSlope: number;
	/** Friction ratio needed, tangential/normal; Infinity when the pull leads off. */
	demand: number;
	/** Patch of one finger, m². */
	padArea: number;
	/** Mean pressure over the patches, Pa. */
	pressure: number;
	/** Friction ratio the law gives at that pressure. */
	ratio: number;
	/** Largest friction force, N. */
	frictionLimit: number;
	/** frictionLimit/tangential; Infinity when no friction is needed. */
	slipMargin: number;
	/** Largest force this hand holds open in this direction, N. */
	strengthLimit: number;
	/** strengthLimit/force. */
	strengthMargin: number;
	/** The smaller margin; 'strength' at a tie. */
	limiting: Limit;
	/** Neither margin is below 1. */
	holds: boolean;
	/** Plain sentences for the screen. */
	warnings: string[];
};

/**
 * Weighs one hang at one load: does the skin slip, do the fingers open, and which comes first.
 * slip margin = μ(p) N / Q; strength margin = F_s/F with
 * F_s = referenceForce · (padLength − D/2)/ℓ(s) · f(holdTime)/f(referenceHoldTime)
 * @param hang hold, grip, friction law and strength; angles rad, forces N, lengths m
 * @param load on all hands together, from hangLoad or loadAtNetMass
 * @returns forces in N at one hand, ratios and margins without unit, warnings in words
 * Valid for: fingertip pads, still and symmetric. Mean pressure stands for all fingers, so the slip
 * margin is an upper bound. The two margins do not compare as distances.
 * @throws RangeError for a field outside its range
 * Source: openstaxUniversityPhysics, ch. 6.2, for friction; rohmertBernard for time; arms derived.
 * Example: 70 kg plumb, two hands, slope 32°, 4 fingers of 250 mm², constant 0.64: slipMargin 1.024214.
 */
export function evaluateHang(hang: Hang, load: Load): HangResult {
	checkHang(hang);
	requireAllowed('load.vertical', load.vertical, { above: 0, unit: 'N' });
	requireAllowed('load.horizontal', load.horizontal, { unit: 'N' });
	const prepared = prepareHang(hang);
	const { vertical, horizontal } = load;
	const contact = contactAt(prepared, vertical, horizontal, emptyContact());
	const { normal, tangential, meanSlope, padArea, pressure, ratio, frictionLimit } = contact;
	const force = Math.hypot(vertical, horizontal) / hang.hands;
	const opens = contact.moment > 0;
	const strengthMargin = opens ? prepared.strongestMoment / contact.moment : Infinity;
	const slipMargin = contact.leadsOff ? 0 : tangential > 0 ? frictionLimit / tangential : Infinity;
	return {
		force,
		normal,
		tangential,
		meanSlope,
		demand: contact.leadsOff ? Infinity : tangential / normal,
		padArea,
		pressure,
		ratio,
		frictionLimit,
		slipMargin,
		strengthLimit: strengthMargin * force,
		strengthMargin,
		limiting: slipMargin < strengthMargin ? 'slip' : 'strength',
		holds: Math.min(slipMargin, strengthMargin) >= 1 - holdTolerance,
		warnings: hangWarnings(prepared, load, contact)
	};
}
