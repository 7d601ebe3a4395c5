import { allOf, drawBlock } from '../statics/block-diagram.ts';
import * as q from '../statics/quantities.ts';
import { buildSetup } from '../statics/setup.ts';

/**
 * A box on a level floor that itself speeds up: a truck, a train, a belt.
 * Formula: friction m A carries it while m A ≤ μ_s m g; past that it slips and friction is μ_k m g.
 * Sign: all positive in the direction of the floor's acceleration.
 * Valid for: a level floor. Source: openstaxUniversityPhysics, Example 6.13.
 */
export const carried = buildSetup({
	id: 'carried',
	number: 3,
	title: 'Box carried by a floor that speeds up',
	scene: 'A box stands loose on the level bed of a truck that speeds up.',
	notes: ['Friction is the only level force on the box: here it drives the box forward.'],
	quantities: [
		...[q.mass(), q.gravity, q.muStatic(), q.muKinetic()],
		q.acceleration('floorAcceleration', 'acceleration of the floor', 'A', { min: 0 }),
		q.time(),
		q.force('normal', 'normal force', 'N'),
		q.force('frictionNeeded', 'friction needed to keep up', 'f_n'),
		q.force('frictionLimit', 'greatest static friction', 'f_{max}'),
		q.force('slidingFriction', 'friction while sliding', 'f_k'),
		q.force('friction', 'friction that acts', 'f'),
		q.acceleration('acceleration', 'acceleration of the box', 'a'),
		q.acceleration('greatestAcceleration', 'greatest acceleration without slipping', 'A_{max}', {
			min: 0
		}),
		q.length('greatestDistance', 'greatest distance from rest in that time', 'd_{max}', {
			open: false
		})
	],
	lines: [
		['normal', 'mass*gravity', 'Nothing moves up or down.'],
		['frictionNeeded', 'mass*floorAcceleration', 'Only friction can speed the box up.'],
		['frictionLimit', 'muStatic*normal', 'Static friction reaches at most this.'],
		['slidingFriction', 'muKinetic*normal', 'Friction while the surfaces slip.'],
		[
			'friction',
			'when(frictionNeeded <= frictionLimit, frictionNeeded, slidingFriction)',
			'It keeps up while static friction suffices.'
		],
		['acceleration', 'friction/mass', 'Friction is the only level force.'],
		['greatestAcceleration', 'muStatic*gravity', 'Needed and greatest friction are equal.'],
		['greatestDistance', 'greatestAcceleration*time^2/2', 'Even acceleration from rest.']
	],
	limits: ['frictionLimit', 'greatestAcceleration', 'greatestDistance'],
	regime(values) {
		const v = allOf(values, 'frictionNeeded', 'frictionLimit');
		if (!v) return undefined;
		if (Math.abs(v.frictionNeeded - v.frictionLimit) <= 1e-9 * v.frictionLimit)
			return { regime: 'about to slip', because: 'It needs all the static friction there is.' };
		return v.frictionNeeded < v.frictionLimit
			? { regime: 'rests', because: 'It rides along: static friction suffices.' }
			: { regime: 'slides', because: 'The floor runs away beneath it.' };
	},
	diagram(values) {
		const v = allOf(values, 'normal', 'friction', 'mass', 'acceleration');
		if (!v) return undefined;
		const { normal, friction, mass, acceleration } = v;
		const { body, forces } = drawBlock({
			...{ id: 'box', name: 'box', at: [0, 0], slope: 0, weight: normal, normal },
			...{ friction, mass, acceleration }
		});
		return { bodies: [body], forces, lines: [{ name: 'floor', from: [-2, 0], to: [2, 0] }] };
	},
	practice: {
		given: {
			...{ mass: [10, 90, 5], muStatic: [0.3, 0.6, 0.02], muKinetic: [0.15, 0.28, 0.01] },
			...{ floorAcceleration: [1, 8, 0.25], time: [2, 6, 0.5] }
		},
		ask: ['friction', 'acceleration', 'greatestAcceleration', 'greatestDistance']
	}
});
