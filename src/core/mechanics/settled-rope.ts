import type { Load } from '../types.ts';
import { requireAllowed } from '../units/allowed-range.ts';
import { kilogramsToNewtons } from '../units/force.ts';
import { loadFromForces } from './load-from-forces.ts';

/** Where a fixed pulley sits and where the body takes its forces; metres from the hands. */
export type PulleyRig = {
	/** Height of the pulley above the hold, m, 0 or more. */
	height: number;
	/** How far the pulley sits out from the wall, beyond the hold, m; negative is behind it. */
	outward: number;
	/** How far it sits to one side, m (default 0). */
	sideways?: number;
	/** From the hands down the body to where the rope is tied, m, above 0. */
	tieIn: number;
	/** From the hands down the body to the centre of mass, m, above 0. */
	centre: number;
};

/** A body at rest under a fixed pulley. Angles from plumb, rad. */
export type SettledRope = {
	/** Tension of the rope at the body, N. */
	assistForce: number;
	/** Lean of the rope in the vertical plane through hands and pulley, 0 or more. */
	lean: number;
	/** Its part away from the wall (what a hang calls ropeAngle) and its part to the side. */
	ropeAngle: number;
	sidewaysAngle: number;
	/** Lean of the body's line about the hands, toward the side of the pulley, 0 or more. */
	bodyLean: number;
	/** From the tie-in to the pulley, m. */
	ropeLength: number;
	/** Force to the side on the hands, N. */
	sidewaysForce: number;
	/** Load on the hands without that sideways part. */
	load: Load;
};

/**
 * Lets a body under a fixed pulley come to rest, the rope's tension given.
 * A r sin(β + φ) = M g c sin β, tan φ = (ρ − r sin β)/(Y + r cos β), ρ = √(X² + Z²)
 * The hands are a pivot: weight, rope and hands then meet in one point, and with the rope tied at
 * the centre of mass the body lies along the pull of the hands.
 * @param o.hangingMass M, kg, above 0
 * @param o.assistForce A, tension at the body, N, 0 up to below M g c/r
 * @param o.rig pulley and body: height Y, outward X, sideways Z, tieIn r, centre c
 * @returns angles, forces and the load; positive ropeAngle leads away from the wall
 * Valid for: a straight body that hangs freely and touches nothing but hold and rope.
 * @throws RangeError for a field outside its range, or when the rope carries everything
 * Source: derived.
 * Example: 70 kg, 150 N, pulley 2 m up and 0.5 m out, tied at the centre, 1.09 m: ropeAngle 8.4°.
 */
export function settledRope(o: {
	hangingMass: number;
	assistForce: number;
	rig: PulleyRig;
}): SettledRope {
	requireAllowed('hangingMass', o.hangingMass, { above: 0, unit: 'kg' });
	checkRig(o.rig);
	const { tieIn, centre } = o.rig;
	const weight = kilogramsToNewtons(o.hangingMass);
	const below = Math.min(weight, (weight * centre) / tieIn);
	const tension = requireAllowed('assistForce', o.assistForce, { min: 0, below, unit: 'N' });
	const bodyLean = leanOf(
		o.rig,
		(beta, phi) => tension * tieIn * Math.sin(beta + phi) - weight * centre * Math.sin(beta)
	);
	const lean = ropeLeanAt(o.rig, bodyLean);
	return atRest(o.rig, weight - tension * Math.cos(lean), tension, lean, bodyLean);
}

/**
 * Lets a body under a fixed pulley come to rest, the net mass on the hands given.
 * As settledRope, with A cos φ = M g − m g: what a scale under the hanging person would show.
 * @param netMass m, kg, above 0 and at most M
 * @param o.hangingMass M, kg, above 0
 * @param o.rig pulley and body, as in settledRope
 * @returns angles, forces and the load
 * Valid for: as settledRope, and (M − m) r below M c.
 * @throws RangeError for a field outside its range
 * Source: derived.
 * Example: 55 of 70 kg, pulley 2 m up and 0.5 m out, tied at the centre, 1.09 m: ropeAngle 8.4°.
 */
export function settledRopeAtNetMass(
	netMass: number,
	o: { hangingMass: number; rig: PulleyRig }
): SettledRope {
	const { hangingMass, rig } = o;
	requireAllowed('hangingMass', hangingMass, { above: 0, unit: 'kg' });
	checkRig(rig);
	const least = hangingMass * (1 - rig.centre / rig.tieIn);
	requireAllowed('netMass', netMass, { above: Math.max(0, least), max: hangingMass, unit: 'kg' });
	const weight = kilogramsToNewtons(hangingMass);
	const lift = kilogramsToNewtons(hangingMass - netMass);
	const bodyLean = leanOf(
		rig,
		(beta, phi) =>
			lift * rig.tieIn * (Math.tan(phi) * Math.cos(beta) + Math.sin(beta)) -
			weight * rig.centre * Math.sin(beta)
	);
	const lean = ropeLeanAt(rig, bodyLean);
	return atRest(rig, kilogramsToNewtons(netMass), lift / Math.cos(lean), lean, bodyLean, netMass);
}

function checkRig(rig: PulleyRig): void {
	requireAllowed('rig.height', rig.height, { min: 0, unit: 'm' });
	requireAllowed('rig.outward', rig.outward, { unit: 'm' });
	requireAllowed('rig.sideways', rig.sideways ?? 0, { unit: 'm' });
	requireAllowed('rig.tieIn', rig.tieIn, { above: 0, unit: 'm' });
	requireAllowed('rig.centre', rig.centre, { above: 0, unit: 'm' });
}

function distanceAside({ outward, sideways = 0 }: PulleyRig): number {
	return Math.hypot(outward, sideways);
}

/** Lean of the rope while the body leans by beta. */
function ropeLeanAt(rig: PulleyRig, beta: number): number {
	const aside = distanceAside(rig) - rig.tieIn * Math.sin(beta);
	// At the end of the bracket rounding may leave the tie-in a hair past the pulley.
	return Math.atan2(Math.max(0, aside), rig.height + rig.tieIn * Math.cos(beta));
}

/**
 * The body's lean: where the rope's moment about the hands stops outweighing the weight's.
 * Their ratio falls all the way from plumb to a plumb rope, so there is one such lean, by halving;
 * it is where the potential energy is least, so the body rests there.
 */
function leanOf(rig: PulleyRig, excess: (beta: number, phi: number) => number): number {
	const aside = distanceAside(rig);
	let low = 0;
	let high = aside < rig.tieIn ? Math.asin(aside / rig.tieIn) : Math.PI / 2;
	for (let step = 0; step < 1100; step++) {
		const middle = (low + high) / 2;
		if (middle <= low || middle >= high) break;
		if (excess(middle, ropeLeanAt(rig, middle)) > 0) low = middle;
		else high = middle;
	}
	return low;
}

function atRest(
	rig: PulleyRig,
	vertical: number,
	assistForce: number,
	lean: number,
	bodyLean: number,
	netMass?: number
): SettledRope {
	const aside = distanceAside(rig);
	const outShare = aside > 0 ? rig.outward / aside : 0;
	const sideShare = aside > 0 ? (rig.sideways ?? 0) / aside : 0;
	const horizontal = assistForce * Math.sin(lean);
	const rise = rig.height + rig.tieIn * Math.cos(bodyLean);
	return {
		assistForce,
		lean,
		ropeAngle: Math.atan(Math.tan(lean) * outShare),
		sidewaysAngle: Math.atan(Math.tan(lean) * sideShare),
		bodyLean,
		ropeLength: rise / Math.cos(lean),
		sidewaysForce: horizontal * sideShare,
		load: loadFromForces(vertical, horizontal * outShare, netMass)
	};
}
