import { leadsOff } from './hand-words.ts';
import { degrees, digits, force, reading } from './text.ts';
import type { ForcesShown } from './types.ts';

/** The drawing in words: the same forces, angles and limits, in whole sentences. */
export function describeForces(shown: ForcesShown): string {
	return [...personSentences(shown), ...handSentences(shown)].join(' ');
}

function personSentences({ load, person, forceUnit }: ForcesShown): string[] {
	const amount = (newtons: number) => force(newtons, forceUnit) + reading(newtons, forceUnit);
	const gravity = load.vertical / load.netMass;
	const weight = (person.bodyMass + person.addedMass) * gravity;
	const sentences = [
		'Whole person, seen from the side, with the wall on the left.',
		`The weight of ${amount(weight)} pulls straight down at the centre of mass.`
	];
	if (person.assistForce > 0) {
		const angle = person.ropeAngle;
		const way = isFlat(angle)
			? 'straight up'
			: `up, ${degrees(Math.abs(angle))} ${angle > 0 ? 'away from' : 'toward'} the wall`;
		sentences.push(`The rope pulls with ${amount(person.assistForce)} ${way}.`);
	}
	if (person.push !== 0) {
		sentences.push(
			`A steady push of ${amount(Math.abs(person.push))} acts ${person.push > 0 ? 'away from' : 'toward'} the wall.`
		);
	}
	const tilt = load.tilt;
	const holds = `The hold gives ${amount(load.magnitude)}`;
	sentences.push(
		isFlat(tilt)
			? `${holds}, straight up; the body hangs plumb.`
			: `${holds}, ${degrees(Math.abs(tilt))} from straight up ${tilt > 0 ? 'toward' : 'away from'} the wall; ` +
					`the body leans ${degrees(Math.abs(tilt))} ${tilt > 0 ? 'away from' : 'toward'} the wall.`
	);
	return sentences;
}

function handSentences({ hang, contact, forceUnit }: ForcesShown): string[] {
	const amount = (newtons: number) => force(newtons, forceUnit) + reading(newtons, forceUnit);
	const { fingers } = hang.grip;
	const lie = `${fingers} ${fingers === 1 ? 'finger lies' : 'fingers lie'} on ${surface(hang, contact.meanSlope)}`;
	const touch =
		contact.padArea > 0
			? `, touching ${fingers === 1 ? 'it' : 'it each'} over ${digits(contact.padArea * 1e6)} mm²`
			: '';
	const which = hang.hands === 1 ? 'The one hand' : 'One of two hands';
	const first = `${which}: ${lie}${touch}.`;
	const { force: size, normal: N, tangential: Q, frictionLimit, ratio } = contact;
	if (leadsOff(contact)) {
		return [
			first,
			`The contact force would have to be ${amount(size)}, but the pull leads off the hold: ` +
				'no normal force presses the fingers on, so there is no friction.'
		];
	}
	const split = `The contact force of ${amount(size)} splits into a normal force of ${amount(N)}`;
	const limit = `The friction limit is ${amount(frictionLimit)}, at a friction ratio of ${digits(ratio)}`;
	if (Q <= 0) {
		const rest = isNothing(Q, size)
			? ' and nothing along the surface'
			: ` and ${amount(-Q)} along the surface, against a stop behind the fingers`;
		return [first, `${split}${rest}: no friction is needed.`, `${limit}.`];
	}
	const ends =
		Q <= frictionLimit
			? 'the force lies inside the friction cone, and the hand does not slip.'
			: 'the force lies outside the friction cone, and the hand slips.';
	return [first, `${split} and ${amount(Q)} of friction needed.`, `${limit}: ${ends}`];
}

function surface({ slope, radius }: ForcesShown['hang'], meanSlope: number): string {
	if (radius !== undefined) {
		return (
			`a hold rounded to a radius of ${digits(radius * 1000)} mm, ` +
			`with a slope of ${degrees(slope)} at the fingertips and ${degrees(meanSlope)} on average`
		);
	}
	if (isFlat(slope)) return 'a level surface';
	return slope > 0
		? `a flat surface that slopes ${degrees(slope)} down toward the person`
		: `an incut edge that rises ${degrees(-slope)} toward the person`;
}

/** Too small an angle to show. */
function isFlat(angle: number): boolean {
	return Math.abs(angle) < 5e-4;
}

function isNothing(part: number, whole: number): boolean {
	return Math.abs(part) < 1e-6 * whole;
}
