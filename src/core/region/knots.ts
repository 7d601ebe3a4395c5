import type { LoadPath } from '../strength/along-load.ts';
import type { PreparedHang } from '../strength/prepare-hang.ts';
import { standardGravity } from '../units/gravity.ts';

/** On a rounded hold under a growing patch the gaps have no known shape: no piece reaches further. */
const roundedReach = 2;
/** There the ends of a piece rule nothing out unless it is as short as this share of its load. */
const roundedTrust = 0.1;

/** No other cut this near, as a share, to a kink: each side of a kink is looked at by itself. */
const leastApart = 1e-9;

/** A stretch of net mass cut into pieces, kg. */
export type Knots = {
	/** The cuts in order, with both ends of the stretch. */
	at: number[];
	/** Those where the limits jump or bend sharply. */
	kinks: number[];
	/** The longest stretch on which a piece surely bends one way. */
	trust: number;
};

/**
 * Cuts a stretch of net mass so that on every piece both gaps are smooth and bend one way only.
 * Cuts: where the patch meets its limit, where the law's friction limit changes its bend (see
 * bendPressure), and where the pull begins to lead off the hold.
 * @param prepared the hang
 * @param path horizontal force against net mass
 * @param from lower end, kg
 * @param to upper end, kg, on the same side of the hanging mass
 * @returns the cuts
 * Valid for: the bend is exact on a flat hold or for a fixed patch; a growing patch on a rounded
 * hold is cut into pieces of at most twice the load instead.
 * Source: derived.
 * Example: constant law, fixed patch, plumb rope on a slope: just from and to.
 */
export function knots(prepared: PreparedHang, path: LoadPath, from: number, to: number): Knots {
	const { areaCoefficient, areaExponent, areaLimit, formula, law } = prepared;
	const massAt = (padForce: number) => massAtPadForce(prepared, path, padForce);
	const inside = (mass: number) => mass > from && mass < to;
	const full = areaExponent > 0 ? Math.pow(areaLimit / areaCoefficient, 1 / areaExponent) : NaN;
	const kinks = [massAt(0), massAt(full)].filter(inside);
	const at = [from, ...kinks];
	const add = (mass: number) => {
		if (inside(mass) && !kinks.some((kink) => Math.abs(mass - kink) < leastApart * mass))
			at.push(mass);
	};
	add(massAt(formula.bendPressure(law, 1) * areaLimit));
	let trust = Infinity;
	if (areaExponent > 0) {
		const share = 1 - areaExponent;
		add(massAt(Math.pow(formula.bendPressure(law, share) * areaCoefficient, 1 / share)));
		if (prepared.slopePerArea > 0) {
			trust = roundedTrust * from;
			const pieces = Math.ceil(Math.log(to / from) / Math.log(roundedReach));
			for (let i = 1; i < pieces; i++) add(from * Math.pow(to / from, i / pieces));
		}
	}
	at.sort((a, b) => a - b);
	at.push(to);
	return { at, kinks, trust };
}

/** The net mass at which each pad is pressed with a force n, N: its patch and slope are then known. */
function massAtPadForce(prepared: PreparedHang, path: LoadPath, padForce: number): number {
	const { hang, slopePerArea, areaCoefficient, areaExponent, areaLimit } = prepared;
	const area = Math.min(areaLimit, areaCoefficient * Math.pow(padForce, areaExponent));
	const slope = hang.slope + slopePerArea * area;
	const cosine = Math.cos(slope);
	const sine = Math.sin(slope);
	const pressing = padForce * hang.grip.fingers * hang.hands;
	return (pressing + path.start * sine) / (standardGravity * cosine - path.rate * sine);
}
