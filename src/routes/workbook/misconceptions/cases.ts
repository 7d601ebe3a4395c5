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
	skin: string;
};

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
		skin: 'At a hold, friction points whichever way keeps the fingertip from sliding off, whether you move or not.'
	},
	'only-hinders': {
		family: 'pressing',
		given: { mass: 2, mu1: 0.4, mu2: 0.4, gravity: 9.81, arrangement: 1 },
		move: { id: 'mass', from: 0.5, to: 10, step: 0.5 },
		show: ['leastPress', 'weight'],
		look: 'Pressed between two upright faces, only friction holds the thing up.',
		skin: 'A slopy hold is the same: without friction nobody hangs on it.'
	},
	'only-moving': {
		family: 'level-floor',
		given: { ...crate, force: 40 },
		move: { id: 'force', from: 0, to: 140, step: 5 },
		show: ['friction', 'frictionLimit', 'acceleration'],
		look: 'While it rests, friction follows the push, from nothing up to its limit.',
		skin: 'A hand at rest uses only the friction it needs; the slip margin says how much is left.'
	},
	'always-at-limit': {
		family: 'incline',
		given: { ...onSlope, slope: 15 * degree },
		move: { id: 'slope', from: 1 * degree, to: 45 * degree, step: degree },
		show: ['friction', 'frictionLimit', 'frictionNeeded'],
		look: 'Friction equals its limit at one slope only. Below it, the smaller number acts.',
		skin: 'The same for a fingertip, as long as it does not creep.'
	},
	'normal-is-weight': {
		family: 'level-floor',
		given: { ...crate, force: 60, forceAngle: 30 * degree },
		move: { id: 'forceAngle', from: -60 * degree, to: 60 * degree, step: 5 * degree },
		show: ['normal', 'weight', 'frictionLimit'],
		look: 'Pull upwards and the normal force is less than the weight; press down and it is more.',
		skin: 'On a sloping hold the normal force of the hand is less than its load, and falls as the slope grows.'
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
		skin: 'For soft pads area does matter in several measurements. How much it gives on a slick hold is not settled.'
	},
	'push-beats-friction': {
		family: 'level-floor',
		given: { ...crate, force: 60 },
		move: { id: 'force', from: 0, to: 140, step: 5 },
		show: ['friction', 'acceleration', 'steadyForce'],
		look: 'No acceleration: push and friction are equal. Steady sliding takes just the kinetic friction, no more.',
		skin: 'A steady hang is balanced too: friction equals the part of the load along the hold.'
	},
	'heavier-slides': {
		family: 'incline',
		given: { ...onSlope, slope: 25 * degree },
		move: { id: 'mass', from: 1, to: 100, step: 1 },
		show: ['reposeAngle', 'frictionNeeded', 'frictionLimit'],
		look: 'Need and limit grow together; the angle of slip stays where it is.',
		skin: '“Heavier slides easier” has no study behind it. For skin the ratio may fall with pressure, so load need not cancel: that is what Explore and Trials are for.'
	},
	'one-friction': {
		family: 'level-floor',
		given: { ...crate },
		move: { id: 'muKinetic', from: 0.1, to: 0.5, step: 0.02 },
		show: ['startForce', 'steadyForce'],
		look: 'Starting takes the static coefficient, keeping it going the kinetic one. Rolling is a third thing, not in this workbook.',
		skin: 'Skin often creeps before it slides; where static friction ends is a matter of definition there.'
	},
	'only-roughness': {
		family: 'incline',
		given: { rise: 0.3, boardLength: 1, arrangement: 3 },
		move: { id: 'rise', from: 0.05, to: 0.9, step: 0.05 },
		show: ['muStatic', 'slope'],
		look: 'A coefficient is what a pair of surfaces does when tried, by tilting for one. The model asks nothing about roughness.',
		skin: 'Skin on smooth glass has given very high ratios under the lightest loads: sticking counts. The tables list what was read.'
	},
	'not-a-force': {
		family: 'level-floor',
		given: { ...crate, force: 60 },
		move: { id: 'force', from: 0, to: 140, step: 5 },
		show: ['friction', 'normal'],
		look: 'Friction has a size in newtons and a direction: open the case to see it drawn as an arrow on the box.',
		skin: 'Explore draws it on the hand in the same way.'
	},
	'active-force': {
		family: 'incline',
		given: { ...onSlope, slope: 25 * degree, force: 20 },
		move: { id: 'force', from: 0, to: 85, step: 5 },
		show: ['friction', 'drive'],
		look: 'Push up the slope harder and harder: friction shrinks to nothing and turns round. It only answers.',
		skin: 'On a hold it answers in the same way to where the load leads.'
	},
	'at-most-one': {
		family: 'incline',
		given: { mass: 10, muStatic: 1.2, gravity: 9.81, force: 0, slope: 30 * degree, arrangement: 1 },
		move: { id: 'muStatic', from: 0.2, to: 3, step: 0.05 },
		show: ['reposeAngle', 'frictionLimit'],
		look: 'A coefficient of 1 is 45° of tilt, nothing more. Above it the thing rests on steeper ground.',
		skin: 'Ratios above 1 are reported for skin under light loads; the tables list them with their conditions.'
	}
};
