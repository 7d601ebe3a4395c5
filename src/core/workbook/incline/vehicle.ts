import { allOf, drawBlock } from '../statics/block-diagram.ts';
import * as q from '../statics/quantities.ts';
import { buildSetup } from '../statics/setup.ts';

/**
 * A vehicle on a slope: the most that its gripping wheels can do.
 * Formula: g (μ k cos θ ∓ sin θ), k the share of the weight on gripping wheels.
 * Valid for: even shares front and rear, no lift-off, no slip. Source: openstaxUniversityPhysics, chapter 6.
 */
export const vehicle = buildSetup({
	id: 'vehicle',
	number: 2,
	title: 'Vehicle on a slope: greatest acceleration and braking',
	scene: 'A vehicle drives straight up or down a slope.',
	notes: [
		'Speeding up uphill and slowing down downhill are helped by friction and opposed by weight.',
		'The share of the weight on the wheels that drive or brake is 1 for all four.'
	],
	quantities: [
		...[q.gravity, q.slope(), q.muStatic({ default: undefined })],
		q.fraction('gripShare', 'share of the weight on gripping wheels', 'k', { default: 1 }),
		q.acceleration('climbAcceleration', 'greatest acceleration uphill', 'a_{up}'),
		q.acceleration('descendDeceleration', 'greatest slowing on the way down', 'b_{dn}'),
		q.acceleration('climbDeceleration', 'greatest slowing on the way up', 'b_{up}'),
		q.acceleration('descendAcceleration', 'greatest acceleration downhill', 'a_{dn}')
	],
	lines: [
		[
			'climbAcceleration',
			'gravity*(muStatic*gripShare*cos(slope) - sin(slope))',
			'Friction up, weight down.'
		],
		[
			'descendDeceleration',
			'gravity*(muStatic*gripShare*cos(slope) - sin(slope))',
			'Friction up, weight down.'
		],
		[
			'climbDeceleration',
			'gravity*(muStatic*gripShare*cos(slope) + sin(slope))',
			'Friction and weight both down.'
		],
		[
			'descendAcceleration',
			'gravity*(muStatic*gripShare*cos(slope) + sin(slope))',
			'Friction and weight both down.'
		]
	],
	limits: ['climbAcceleration', 'descendDeceleration', 'climbDeceleration', 'descendAcceleration'],
	regime(values) {
		const v = allOf(values, 'muStatic', 'slope', 'gripShare');
		if (!v) return undefined;
		return v.muStatic * v.gripShare >= Math.tan(v.slope)
			? { regime: 'rests', because: 'It can stand on this slope.' }
			: { regime: 'slides down', because: 'It cannot even stand on this slope.' };
	},
	diagram(values) {
		const v = allOf(values, 'gravity', 'slope', 'muStatic', 'gripShare', 'climbAcceleration');
		if (!v) return undefined;
		const normal = v.gravity * Math.cos(v.slope);
		const { body, forces } = drawBlock({
			...{ id: 'vehicle', name: 'vehicle, per kilogram', at: [0, 0], slope: v.slope },
			...{ weight: v.gravity, normal, friction: v.muStatic * v.gripShare * normal },
			...{ mass: 1, acceleration: v.climbAcceleration }
		});
		return { bodies: [body], forces, lines: [] };
	},
	practice: {
		given: {
			slope: [0.05235987755982988, 0.2617993877991494, 0.017453292519943295],
			...{ muStatic: [0.3, 0.9, 0.05], gripShare: [0.5, 1, 0.1] }
		},
		ask: ['climbAcceleration', 'descendDeceleration', 'climbDeceleration']
	}
});
