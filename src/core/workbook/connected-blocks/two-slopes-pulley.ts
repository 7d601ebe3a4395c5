import * as q from '../statics/quantities.ts';
import { buildSetup } from '../statics/setup.ts';
import { drawTwoSlopes, judgeTwoSlopes } from './two-slopes-drawing.ts';

/**
 * Two blocks on two slopes, tied over a pulley at the top; a slope of 90° is a hanging weight,
 * a slope of 0 a table.
 * Formula: it rests while |m₂ g sin θ₂ − m₁ g sin θ₁| ≤ μ_s g (m₁ cos θ₁ + m₂ cos θ₂).
 * Sign: drive and acceleration are positive when the second block goes down.
 * Valid for: a light string, an easy pulley, one pair of coefficients. Source: derived
 */
export const twoSlopesPulley = buildSetup({
	id: 'two-slopes-pulley',
	number: 8,
	title: 'Two blocks over a pulley (slopes, table, hanging)',
	scene: 'Two blocks are tied to the ends of a string over a pulley.',
	notes: [
		'A slope of 90° is a hanging weight, a slope of 0 a table.',
		'Drive and acceleration count positive when the second block goes down.'
	],
	quantities: [
		...[
			q.mass('mass1', 'mass of the first block', 'm_1'),
			q.slope('slope1', 'first slope', '\\theta_1')
		],
		...[
			q.mass('mass2', 'mass of the second block', 'm_2'),
			q.slope('slope2', 'second slope', '\\theta_2')
		],
		...[q.gravity, q.muStatic(), q.muKinetic()],
		q.mass('leastMass2', 'least second mass for rest', 'm_{2,min}', { min: -1e9, open: false }),
		q.mass('greatestMass2', 'greatest second mass for rest', 'm_{2,max}'),
		q.signedForce('drive', 'drive towards the second block, friction aside', 'D'),
		q.force('frictionNeeded', 'friction needed for rest, both blocks', 'f_n'),
		q.force('frictionLimit', 'greatest static friction, both blocks', 'f_{max}'),
		q.force('slidingFriction', 'sliding friction, both blocks', 'f_k'),
		q.acceleration('acceleration', 'acceleration from rest', 'a'),
		q.acceleration(
			'slidingAcceleration',
			'acceleration the way it is driven, once it moves',
			'a_k'
		),
		q.force('movingTension', 'tension of the string in motion', 'T')
	],
	lines: [
		[
			'leastMass2',
			'mass1*(sin(slope1) - muStatic*cos(slope1))/(sin(slope2) + muStatic*cos(slope2))',
			'The first block is about to go down: both frictions help the second.'
		],
		[
			'greatestMass2',
			'mass1*(sin(slope1) + muStatic*cos(slope1))/(sin(slope2) - muStatic*cos(slope2))',
			'The second block is about to go down: both frictions oppose it.'
		],
		[
			'drive',
			'gravity*(mass2*sin(slope2) - mass1*sin(slope1))',
			'The two weights along the string.'
		],
		['frictionNeeded', 'abs(drive)', 'Friction must cancel the drive for rest.'],
		[
			'frictionLimit',
			'muStatic*gravity*(mass1*cos(slope1) + mass2*cos(slope2))',
			'Both blocks at their limit.'
		],
		[
			'slidingFriction',
			'muKinetic*gravity*(mass1*cos(slope1) + mass2*cos(slope2))',
			'Both blocks slip.'
		],
		[
			'acceleration',
			'sgn(drive)*when(frictionNeeded <= frictionLimit, 0, (frictionNeeded - slidingFriction)/(mass1 + mass2))',
			'From rest it starts only past the static limit.'
		],
		[
			'slidingAcceleration',
			'(frictionNeeded - slidingFriction)/(mass1 + mass2)',
			'Once moving, friction is kinetic.'
		],
		[
			'movingTension',
			'when(0 <= drive, mass2*(gravity*(sin(slope2) - muKinetic*cos(slope2)) - slidingAcceleration), mass1*(gravity*(sin(slope1) - muKinetic*cos(slope1)) - slidingAcceleration))',
			'Newton for the block that goes down.'
		]
	],
	limits: ['leastMass2', 'greatestMass2', 'frictionLimit'],
	regime: judgeTwoSlopes,
	noLimit: (_, ask) =>
		ask === 'greatestMass2'
			? { regime: 'self-locks', because: 'The second slope holds any mass by itself.' }
			: undefined,
	diagram: drawTwoSlopes,
	practice: {
		given: {
			...{ mass1: [2, 20, 0.5], mass2: [2, 20, 0.5] },
			slope1: [0.17453292519943295, 0.7853981633974483, 0.08726646259971647],
			slope2: [0.7853981633974483, 1.5707963267948966, 0.08726646259971647],
			...{ muStatic: [0.2, 0.4, 0.02], muKinetic: [0.1, 0.18, 0.01] }
		},
		ask: ['leastMass2', 'greatestMass2', 'acceleration', 'frictionLimit']
	}
});
