import { allOf } from '../statics/block-diagram.ts';
import * as q from '../statics/quantities.ts';
import { buildSetup } from '../statics/setup.ts';
import { drawLadder } from './ladder-drawing.ts';
import { ladderLines, ladderQuantities } from './ladder-quantities.ts';

/**
 * A ladder against a wall without friction, perhaps with a person on it.
 * Formula: N_w = (c W + s W_p)/tan θ = friction at the floor; N_f = W + W_p.
 * Valid for: a stiff ladder, a smooth wall, a level floor. Source: openstaxUniversityPhysics, chapter 12.
 */
export const smoothWall = buildSetup({
	id: 'smooth-wall',
	number: 1,
	title: 'Ladder against a smooth wall',
	scene: 'A ladder leans against a smooth wall; its foot stands on a rough floor.',
	notes: [
		'The wall pushes level, because it has no friction.',
		'A person without a stated place is taken at the top, the worst place.',
		'A farthest place above 1 means that the whole ladder can be climbed.'
	],
	quantities: [
		...ladderQuantities,
		q.muStatic({
			id: 'muFloor',
			name: 'friction coefficient of the floor',
			symbol: '\\mu_f',
			default: undefined
		}),
		q.force('wallForce', 'force of the wall', 'N_w'),
		q.force('floorNormal', 'normal force of the floor', 'N_f'),
		q.force('friction', 'friction that acts at the foot', 'f'),
		q.coefficient('neededMu', 'least coefficient for rest', '\\mu_{min}'),
		q.force('frictionLimit', 'greatest friction at the foot', 'f_{max}'),
		q.ratio('climbFraction', 'farthest place of the person, as a part of the length', 's_{max}'),
		q.length('climbDistance', 'farthest distance of the person from the foot', 'x_{max}', {
			open: false
		}),
		q.slope('leastAngle', 'least angle with the floor', '\\theta_{min}'),
		q.force('floorForce', 'whole force of the floor', 'R_f'),
		q.slope('floorForceAngle', 'angle of the whole floor force above the level', '\\rho')
	],
	lines: [
		...ladderLines,
		[
			'wallForce',
			'(weight*centreFraction + personWeight*personFraction)/tan(angle)',
			'Moments about the foot balance.'
		],
		['floorNormal', 'weight + personWeight', 'Only the floor carries weight.'],
		['friction', 'wallForce', 'The two level forces balance.'],
		['neededMu', 'friction/floorNormal', 'Friction may be at most μN.'],
		['frictionLimit', 'muFloor*floorNormal', 'The most the floor can give.'],
		[
			'climbFraction',
			'(muFloor*floorNormal*tan(angle) - weight*centreFraction)/personWeight',
			'Moments with friction at its limit.'
		],
		['climbDistance', 'climbFraction*length', 'Measured along the ladder.'],
		[
			'leastAngle',
			'atan((weight*centreFraction + personWeight*personFraction)/(muFloor*floorNormal))',
			'Moments with friction at its limit.'
		],
		['floorForce', 'hypot(friction, floorNormal)', 'Normal force and friction together.'],
		['floorForceAngle', 'atan(floorNormal/friction)', 'Its direction.']
	],
	limits: ['neededMu', 'frictionLimit', 'climbFraction', 'climbDistance', 'leastAngle'],
	regime(values) {
		const v = allOf(values, 'friction', 'frictionLimit');
		if (!v) return undefined;
		if (Math.abs(v.friction - v.frictionLimit) <= 1e-9 * v.frictionLimit)
			return { regime: 'about to slip', because: 'The foot needs all the friction there is.' };
		if (v.friction > v.frictionLimit)
			return { regime: 'slides', because: 'The foot needs more friction than there is.' };
		const locks = (values.muFloor ?? 0) * Math.tan(values.angle ?? 0) >= 1;
		return locks
			? { regime: 'self-locks', because: 'So steep a ladder rests under any load at any place.' }
			: { regime: 'rests', because: 'The foot needs less friction than there is.' };
	},
	diagram: (values) =>
		values.wallForce === undefined || !Number.isFinite(values.wallForce)
			? undefined
			: drawLadder(values, { normal: values.wallForce, friction: 0 }),
	practice: {
		given: {
			...{ length: [3, 8, 0.5], weight: [80, 250, 10], personWeight: [500, 900, 10] },
			...{ personFraction: [0.2, 0.9, 0.05], muFloor: [0.3, 0.7, 0.02] },
			angle: [0.9599310885968813, 1.2566370614359172, 0.017453292519943295]
		},
		ask: ['friction', 'neededMu', 'climbDistance', 'leastAngle', 'floorForce']
	}
});
