import type { CitationKey } from '#reference/citations.ts';
import type { Status } from '#reference/types.ts';

/** What may differ for skin, with where that comes from and how it is known. */
export type SkinWord = { says: string; source: readonly CitationKey[]; status: Status };

/** A case that answers a wrong idea: one given moves, the named results answer. SI and radians. */
export type Case = {
	family: 'level-floor' | 'incline' | 'pressing' | 'hang';
	given: Record<string, number>;
	/** The given that moves, with its range and step. */
	move: { id: string; from: number; to: number; step: number };
	/** Results that are shown; the first is asked in the link. */
	show: string[];
	/** What to look for. */
	look: string;
	/** A careful word on skin. */
	skin: SkinWord;
};

/** Where nothing but the balance of forces is used: worked out, with the textbook's laws of motion. */
const balance = (says: string): SkinWord => ({
	says,
	source: ['openstaxUniversityPhysics'],
	status: 'derived'
});
const read = (says: string, ...source: CitationKey[]): SkinWord => ({
	says,
	source,
	status: 'seen'
});

const degree = Math.PI / 180;
const crate = { mass: 20, muStatic: 0.5, muKinetic: 0.4, gravity: 9.81, arrangement: 1 };
const onSlope = {
	mass: 10,
	muStatic: 0.6,
	muKinetic: 0.5,
	gravity: 9.81,
	force: 0,
	arrangement: 1
};

/** Our own cases with invented numbers, by the key of the misconception. */
export const cases: Record<string, Case> = {
	'against-motion': {
		family: 'level-floor',
		given: { ...crate, floorAcceleration: 2, arrangement: 3 },
		move: { id: 'floorAcceleration', from: 0.5, to: 8, step: 0.5 },
		show: ['friction', 'acceleration'],
		look: 'The box lies on a floor that speeds up. Friction is the only level force on it, and it drives the box forward.',
		skin: balance(
			'At a hold, friction on the fingertip points up the slope, against the slide that would start, though nothing moves.'
		)
	},
	'only-hinders': {
		family: 'pressing',
		given: { mass: 2, mu1: 0.4, mu2: 0.4, gravity: 9.81, arrangement: 1 },
		move: { id: 'mass', from: 0.5, to: 10, step: 0.5 },
		show: ['leastPress', 'weight'],
		look: 'Pressed between two upright faces, only friction holds the thing up.',
		skin: balance('The same at a sloping hold: without friction no load could stay on it.')
	},
	'only-moving': {
		family: 'level-floor',
		given: { ...crate, force: 40 },
		move: { id: 'force', from: 0, to: 140, step: 5 },
		show: ['friction', 'frictionLimit', 'acceleration'],
		look: 'While it rests, friction follows the push, from nothing up to its limit.',
		skin: balance(
			'A hand at rest takes only the friction it needs; the slip margin says how much is left.'
		)
	},
	'always-at-limit': {
		family: 'incline',
		given: { ...onSlope, slope: 15 * degree },
		move: { id: 'slope', from: 1 * degree, to: 45 * degree, step: degree },
		show: ['friction', 'frictionLimit', 'frictionNeeded'],
		look: 'Friction equals its limit at one slope only. Below it, the smaller number acts.',
		skin: read(
			'The same for a fingertip, but its limit is less sharp: parts of the contact let go, and it shrinks, before the whole finger slides.',
			...(['delhaye2014', 'sahli2018'] as const)
		)
	},
	'normal-is-weight': {
		family: 'level-floor',
		given: { ...crate, force: 60, forceAngle: 30 * degree },
		move: { id: 'forceAngle', from: -60 * degree, to: 60 * degree, step: 5 * degree },
		show: ['normal', 'weight', 'frictionLimit'],
		look: 'Pull upwards and the normal force is less than the weight; press down and it is more.',
		skin: balance(
			'On a sloping hold the normal force of the hand is less than a plumb load, and falls as the slope grows.'
		)
	},
	'more-area': {
		family: 'hang',
		given: {
			...{ netMass: 60, hangingMass: 60, slope: 25 * degree, padArea: 2e-4 },
			...{ referenceForce: 450, coefficient: 0.35, shearStrength: 5e4, arrangement: 2 }
		},
		move: { id: 'padArea', from: 1e-4, to: 3.3e-4, step: 1e-5 },
		show: ['frictionLimit', 'slipMargin'],
		look: 'Here part of the friction comes from adhesion and grows with contact area. In the textbook families there is no field for area at all.',
		skin: read(
			'For soft pads area can matter: a flatter finger, with more contact, had more friction on smooth plastic. How much area gives on a slick hold at body weight was not found measured.',
			'warman2009'
		)
	},
	'push-beats-friction': {
		family: 'level-floor',
		given: { ...crate, force: 60 },
		move: { id: 'force', from: 0, to: 140, step: 5 },
		show: ['friction', 'acceleration', 'steadyForce'],
		look: 'No acceleration: push and friction are equal. Steady sliding takes just the kinetic friction, no more.',
		skin: balance(
			'A still hang is balanced too: friction equals the part of the load along the hold.'
		)
	},
	'heavier-slides': {
		family: 'incline',
		given: { ...onSlope, slope: 25 * degree },
		move: { id: 'mass', from: 1, to: 100, step: 1 },
		show: ['reposeAngle', 'frictionNeeded', 'frictionLimit'],
		look: 'Need and limit grow together; the angle of slip stays where it is.',
		skin: read(
			'For skin the ratio fell with load in several measurements, stayed in others and rose in a few, mostly far below a hang’s load. So load need not cancel, either way; Explore and Trials are for that.',
			...(['seo2009', 'warman2009', 'tomlinson2009', 'derler2012'] as const)
		)
	},
	'one-friction': {
		family: 'level-floor',
		given: { ...crate },
		move: { id: 'muKinetic', from: 0.1, to: 0.5, step: 0.02 },
		show: ['startForce', 'steadyForce'],
		look: 'Starting takes the static coefficient, keeping it going the kinetic one. Rolling is a third thing, not in this workbook.',
		skin: read(
			'For skin the two differ as well: medians of 0.52 at the start and 0.36 while sliding over several materials. But a fingertip creeps before it slides, and where its start lies is a matter of definition.',
			...(['veijgen2013', 'delhaye2014'] as const)
		)
	},
	'only-roughness': {
		family: 'incline',
		given: { rise: 0.3, boardLength: 1, arrangement: 3 },
		move: { id: 'rise', from: 0.05, to: 0.9, step: 0.05 },
		show: ['muStatic', 'slope'],
		look: 'A coefficient is what a pair of surfaces does when tried, by tilting for one. The model asks nothing about roughness.',
		skin: read(
			'Skin on smooth glass gave a ratio as high as 14 at the lightest load, so smooth need not be slippery: sticking counts.',
			'jsme2003'
		)
	},
	'not-a-force': {
		family: 'level-floor',
		given: { ...crate, force: 60 },
		move: { id: 'force', from: 0, to: 140, step: 5 },
		show: ['friction', 'normal'],
		look: 'Friction has a size in newtons and a direction: open the case to see it drawn as an arrow on the box.',
		skin: balance('Explore draws it in the same way: an arrow on the hand, from the hold.')
	},
	'active-force': {
		family: 'incline',
		given: { ...onSlope, slope: 25 * degree, force: 20 },
		move: { id: 'force', from: 0, to: 85, step: 5 },
		show: ['friction', 'drive'],
		look: 'Push up the slope harder and harder: friction shrinks to nothing and turns round. It only answers.',
		skin: balance('On a hold, too, it only answers: it points against where the load leads.')
	},
	'at-most-one': {
		family: 'incline',
		given: { mass: 10, muStatic: 1.2, gravity: 9.81, force: 0, slope: 30 * degree, arrangement: 1 },
		move: { id: 'muStatic', from: 0.2, to: 3, step: 0.05 },
		show: ['reposeAngle', 'frictionLimit'],
		look: 'A coefficient of 1 is 45° of tilt, nothing more. Above it the thing rests on steeper ground.',
		skin: read(
			'Ratios above 1 were measured on skin: 1.72 for a dry hand on metal rails, and above 1 for moist skin at low pressure. They belong to those conditions.',
			...(['omeara2002', 'derler2012'] as const)
		)
	}
};
