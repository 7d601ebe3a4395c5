import { standardGravity } from '../units/gravity.ts';
import { contactAt, emptyContact, type Contact } from './contact-at.ts';
import type { PreparedHang } from './prepare-hang.ts';

/** The horizontal force as a straight line in net mass, H = start + rate · m; N and N/kg. */
export type LoadPath = { start: number; rate: number };

/** A contact, and how its numbers change with net mass, each per kg. */
export type MovingContact = Contact & {
	normalRate: number;
	tangentialRate: number;
	frictionRate: number;
	momentRate: number;
};

/** A record for moveAlong to fill. */
export function emptyMovingContact(): MovingContact {
	return {
		...emptyContact(),
		normalRate: 0,
		tangentialRate: 0,
		frictionRate: 0,
		momentRate: 0
	};
}

/**
 * Gives the horizontal force on the way from light to heavy, on one side of the hanging mass.
 * H(m) = max(0, M g − m g) tan φ + P
 * @param prepared the hang
 * @param roped true for loads lighter than the hanging mass, where the rope carries the rest
 * @returns start (N) and rate (N/kg)
 * Source: derived.
 * Example: for a plumb rope the rate is 0 on both sides.
 */
export function loadPath(prepared: PreparedHang, roped: boolean): LoadPath {
	const { ropeAngle, push = 0 } = prepared.hang;
	if (!roped) return { start: push, rate: 0 };
	const lean = Math.tan(ropeAngle);
	return { start: prepared.weight * lean + push, rate: -standardGravity * lean };
}

/**
 * Finds the contact at one net mass and how each of its numbers changes with load.
 * dN/dm = N_m/(1 + slopePerArea · growth · a · Q/N), d(μN)/dN = μ + (1 − growth) dμ/d ln p;
 * N_m is the change at a patch that stays
 * @param prepared the hang
 * @param path horizontal force against net mass
 * @param netMass kg, above 0
 * @param moving the record to fill
 * @returns the same record
 * Valid for: as contactAt; at a kink the path says which side is meant.
 * Source: derived.
 * Example: with a constant ratio, plumb and flat, frictionRate/frictionLimit is 1/netMass.
 */
export function moveAlong(
	prepared: PreparedHang,
	path: LoadPath,
	netMass: number,
	moving: MovingContact
): MovingContact {
	const { hang, slopePerArea } = prepared;
	const { hands, grip } = hang;
	contactAt(prepared, netMass * standardGravity, path.start + path.rate * netMass, moving);
	const { cosine, sine } = moving;
	moving.normalRate = (standardGravity * cosine - path.rate * sine) / hands;
	moving.tangentialRate = (standardGravity * sine + path.rate * cosine) / hands;
	moving.frictionRate = moving.momentRate = 0;
	if (moving.leadsOff) return moving;

	const { growth, padArea, normal, tangential } = moving;
	const turning = slopePerArea * growth * padArea;
	moving.normalRate /= 1 + (turning * tangential) / normal;
	moving.tangentialRate += turning * moving.normalRate;
	moving.frictionRate =
		moving.normalRate *
		(moving.ratio + (1 - growth) * prepared.formula.ratioSlope(prepared.law, moving.pressure));
	const arm = grip.padLength - (padArea * (1 + growth)) / (2 * grip.padWidth);
	moving.momentRate = arm * moving.normalRate + grip.padDepth * moving.tangentialRate;
	return moving;
}
