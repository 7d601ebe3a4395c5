import type { ContactModel, FrictionLaw, Hang, Load, RegionAxis } from '#core/types.ts';
import { degreesToRadians, radiansToDegrees } from '#core/units/angle.ts';
import {
	squareMetresToSquareMillimetres,
	squareMillimetresToSquareMetres
} from '#core/units/area.ts';
import { kilogramsToNewtons } from '#core/units/force.ts';
import { millimetresToMetres } from '#core/units/length.ts';
import { kilopascalsToPascals } from '#core/units/pressure.ts';
import { loadAtNetMass } from '#core/mechanics/load-at-net-mass.ts';
import { fingerShare } from './finger-share.ts';
import type { Setup } from '#storage/codecs/setup.ts';

// The border: here, and nowhere else, a set-up's kilograms, degrees, mm² and kPa become SI.
/** Net load of a set-up, kg. */
export function netMassOf(setup: Setup): number {
	return setup.body + setup.change;
}

/** The friction law of a set-up, in SI. */
export function lawOf(setup: Setup): FrictionLaw {
	const coefficient = setup.mu;
	switch (setup.law) {
		case 'constant':
			return { kind: 'constant', coefficient };
		case 'adhesion':
			return { kind: 'adhesion', coefficient, shearStrength: kilopascalsToPascals(setup.shear) };
		case 'power':
			return {
				kind: 'power',
				coefficient,
				referencePressure: kilopascalsToPascals(setup.pressure),
				exponent: setup.exponent
			};
		case 'deformation':
			return {
				kind: 'deformation',
				coefficient,
				shearStrength: kilopascalsToPascals(setup.shear),
				deformation: setup.deformation,
				referencePressure: kilopascalsToPascals(setup.pressure)
			};
		case 'film':
			return {
				kind: 'film',
				filmCoefficient: setup.film,
				coefficient,
				breakthroughPressure: kilopascalsToPascals(setup.through),
				sharpness: setup.sharpness
			};
	}
}

function contactOf(setup: Setup): ContactModel {
	const area = squareMillimetresToSquareMetres(setup.area);
	return setup.patch === 'fixed'
		? { kind: 'fixed', padArea: area }
		: {
				kind: 'growing',
				// The set-up states the area at 100 N on the pad.
				padCoefficient: area / 100 ** setup.growth,
				exponent: setup.growth,
				padLimit: squareMillimetresToSquareMetres(setup.largest)
			};
}

/**
 * Best hang per hand, N, for the fingers and hands now chosen.
 * Measured with other fingers, it is rescaled by an assumed sharing, and `estimated` says so.
 */
export function referenceForceOf(setup: Setup): { force: number; estimated: boolean } {
	const measured = kilogramsToNewtons(setup.best) / setup.bestHands;
	const share = fingerShare(setup.fingers) / fingerShare(setup.bestFingers);
	return {
		force: measured * share,
		estimated: setup.fingers !== setup.bestFingers || setup.hands !== setup.bestHands
	};
}

/** A set-up as the core's hang, in SI. */
export function hangOf(setup: Setup): Hang {
	return {
		hangingMass: setup.body,
		ropeAngle: degreesToRadians(setup.rope),
		push: setup.push,
		hands: setup.hands === 1 ? 1 : 2,
		slope: degreesToRadians(setup.slope),
		...(setup.radius > 0 ? { radius: millimetresToMetres(setup.radius) } : {}),
		friction: lawOf(setup),
		grip: {
			fingers: setup.fingers,
			padWidth: millimetresToMetres(setup.padWidth),
			padLength: millimetresToMetres(setup.padLength),
			padDepth: millimetresToMetres(setup.padDepth),
			contact: contactOf(setup)
		},
		strength: {
			referenceForce: referenceForceOf(setup).force,
			referenceEdgeDepth: millimetresToMetres(setup.edge),
			referenceHoldTime: setup.bestTime,
			holdTime: setup.hold
		}
	};
}

/** The load of a set-up at a net mass, along its protocol: assist below body mass, mass above it. */
export function loadOf(setup: Setup, netMass = netMassOf(setup)): Load {
	return loadAtNetMass(netMass, {
		hangingMass: setup.body,
		ropeAngle: degreesToRadians(setup.rope),
		push: setup.push
	});
}

/** The whole person's forces, SI: what the free-body diagram draws. */
export function personOf(setup: Setup) {
	const assist = Math.max(0, -setup.change);
	return {
		bodyMass: setup.body,
		addedMass: Math.max(0, setup.change),
		assistForce: kilogramsToNewtons(assist) / Math.cos(degreesToRadians(setup.rope)),
		ropeAngle: degreesToRadians(setup.rope),
		push: setup.push
	};
}

/** Range of the axis that lies across the region, in SI, and the set-up's own value on it. */
export function axisRange(
	setup: Setup,
	padArea: number
): { axis: RegionAxis; from: number; to: number; value: number } {
	switch (setup.axis) {
		case 'slope':
			return {
				axis: 'slope',
				from: degreesToRadians(-15),
				to: degreesToRadians(60),
				value: degreesToRadians(setup.slope)
			};
		case 'coefficient':
			return { axis: 'coefficient', from: 0.1, to: 1.5, value: setup.mu };
		case 'padArea':
			return { axis: 'padArea', from: 80e-6, to: 330e-6, value: padArea };
		case 'ropeAngle':
			return {
				axis: 'ropeAngle',
				from: degreesToRadians(-20),
				to: degreesToRadians(30),
				value: degreesToRadians(setup.rope)
			};
		case 'holdTime':
			return { axis: 'holdTime', from: 3, to: 60, value: setup.hold };
	}
}

/** The set-up with its point moved along the axis to a value in SI. */
export function movedAlong(setup: Setup, value: number, padArea: number): Partial<Setup> {
	switch (setup.axis) {
		case 'slope':
			return { slope: stepped(radiansToDegrees(value), 0.1) };
		case 'coefficient':
			return { mu: stepped(value, 0.005) };
		case 'padArea':
			return areaPatch(
				setup,
				squareMetresToSquareMillimetres(value),
				squareMetresToSquareMillimetres(padArea)
			);
		case 'ropeAngle':
			return { rope: stepped(radiansToDegrees(value), 0.1) };
		case 'holdTime':
			return { hold: stepped(value, 0.5) };
	}
}

/**
 * The change that gives a contact area at the present load, both in mm².
 * A growing patch keeps its shape: its area and its limit move by one factor.
 */
export function areaPatch(setup: Setup, wanted: number, now: number): Partial<Setup> {
	if (setup.patch === 'fixed') return { area: stepped(wanted, 1) };
	const factor = wanted / now;
	return { area: setup.area * factor, largest: setup.largest * factor };
}

/** Rounds to a step, so that a dragged point leaves numbers that people can read. */
function stepped(value: number, step: number): number {
	return Number((Math.round(value / step) * step).toPrecision(10));
}
