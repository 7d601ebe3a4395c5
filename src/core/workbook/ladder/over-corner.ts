import { allOf } from '../statics/block-diagram.ts';
import { along } from '../statics/diagram.ts';
import * as q from '../statics/quantities.ts';
import { buildSetup } from '../statics/setup.ts';

/**
 * A plank with its foot on a rough floor, leaning over a smooth corner.
 * Formula: N_c d = W c cos θ with c the distance of the centre; N_c stands square to the plank.
 * Sign: floorForceDirection counts from the level, on the side away from which the plank leans.
 * Valid for: a corner below the top, no friction there. Source: openstaxUniversityPhysics, chapter 12.
 */
export const overCorner = buildSetup({
	id: 'over-corner',
	number: 3,
	title: 'Plank leaning over a smooth corner',
	scene: 'A plank stands on a rough floor and leans over a smooth corner.',
	notes: ['The corner pushes square to the plank.', 'The centre of mass is at half the length.'],
	quantities: [
		q.weight(),
		q.length('length', 'length of the plank', 'L'),
		q.length('cornerDistance', 'distance of the corner from the foot, along the plank', 'd'),
		q.slope('angle', 'angle with the floor', '\\theta'),
		q.muStatic({
			id: 'muFloor',
			name: 'friction coefficient of the floor',
			symbol: '\\mu_f',
			default: undefined
		}),
		q.force('cornerForce', 'force of the corner', 'N_c'),
		q.force('floorNormal', 'normal force of the floor', 'N_f'),
		q.force('friction', 'friction at the foot', 'f'),
		q.force('floorForce', 'whole force of the floor', 'R_f'),
		q.direction('floorForceDirection', 'direction of the whole floor force', '\\rho', { min: 0 }),
		q.coefficient('neededMu', 'least coefficient for rest', '\\mu_{min}'),
		q.force('frictionLimit', 'greatest friction at the foot', 'f_{max}')
	],
	lines: [
		['cornerForce', 'weight*length*cos(angle)/(2*cornerDistance)', 'Moments about the foot.'],
		['floorNormal', 'weight - cornerForce*cos(angle)', 'Upright forces balance.'],
		['friction', 'cornerForce*sin(angle)', 'Level forces balance.'],
		['floorForce', 'hypot(friction, floorNormal)', 'Normal force and friction together.'],
		['floorForceDirection', 'pi/2 + atan(friction/floorNormal)', 'Its direction.'],
		['neededMu', 'friction/floorNormal', 'Friction may be at most μN.'],
		['frictionLimit', 'muFloor*floorNormal', 'The most the floor can give.']
	],
	limits: ['neededMu', 'frictionLimit'],
	regime(values) {
		const v = allOf(values, 'floorNormal', 'neededMu');
		if (!v) return undefined;
		if (values.length !== undefined && values.cornerDistance !== undefined) {
			if (values.cornerDistance > values.length)
				return { regime: 'impossible', because: 'The corner lies beyond the top of the plank.' };
			if (values.cornerDistance * Math.cos(values.angle ?? 0) < 0 || v.floorNormal < 0)
				return { regime: 'tips', because: 'The plank turns over the corner.' };
		}
		if (values.muFloor === undefined)
			return { regime: 'rests', because: 'If the floor has the needed friction.' };
		if (Math.abs(values.muFloor - v.neededMu) <= 1e-9)
			return { regime: 'about to slip', because: 'The foot needs all the friction there is.' };
		return values.muFloor > v.neededMu
			? { regime: 'rests', because: 'The foot needs less friction than there is.' }
			: { regime: 'slides', because: 'The foot needs more friction than there is.' };
	},
	diagram(values) {
		const v = allOf(
			values,
			'weight',
			'length',
			'cornerDistance',
			'angle',
			'cornerForce',
			'floorNormal',
			'friction'
		);
		if (!v) return undefined;
		const top = along(v.angle, v.length);
		const corner = along(v.angle, v.cornerDistance);
		return {
			bodies: [{ id: 'plank', name: 'plank', outline: [[0, 0], top] }],
			lines: [{ name: 'step', from: corner, to: [corner[0], 0] }],
			rigid: true,
			forces: [
				{
					body: 'plank',
					kind: 'weight',
					name: 'weight',
					symbol: 'W',
					at: along(v.angle, v.length / 2),
					vector: [0, -v.weight]
				},
				{
					body: 'plank',
					kind: 'normal',
					name: 'corner',
					symbol: 'N_c',
					at: corner,
					vector: along(v.angle + Math.PI / 2, v.cornerForce)
				},
				{
					body: 'plank',
					kind: 'normal',
					name: 'floor',
					symbol: 'N_f',
					at: [0, 0],
					vector: [0, v.floorNormal]
				},
				{
					body: 'plank',
					kind: 'friction',
					name: 'friction',
					symbol: 'f',
					at: [0, 0],
					vector: [v.friction, 0]
				}
			]
		};
	},
	practice: {
		given: {
			...{ weight: [80, 400, 10], length: [3, 5, 0.25], cornerDistance: [2, 3, 0.25] },
			...{
				angle: [0.6108652381980153, 1.1344640137963142, 0.08726646259971647],
				muFloor: [0.2, 0.8, 0.05]
			}
		},
		ask: ['cornerForce', 'floorForce', 'neededMu', 'friction']
	}
});
