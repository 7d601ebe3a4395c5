import { allOf } from '../statics/block-diagram.ts';
import { along } from '../statics/diagram.ts';
import * as q from '../statics/quantities.ts';
import { buildSetup } from '../statics/setup.ts';

/**
 * Feet pressed on the two upright walls of an open corner.
 * Formula: without weight μ ≥ tan(θ/2); with weight W the level thrust of each foot is at least
 * (W/2)/√(μ² cos² θ/2 − sin² θ/2).
 * Valid for: upright walls, level thrusts along the line between the feet. Source: derived
 */
export const stemming = buildSetup({
	id: 'stemming',
	number: 3,
	title: 'Stemming in an open corner',
	scene: 'A climber stands with a foot on either wall of an open corner and presses outwards.',
	notes: [
		'The corner angle is the angle between the walls: 0 for parallel walls, 180° for one flat wall.',
		'The thrust is level, from foot to foot; each foot carries half the weight.'
	],
	quantities: [
		q.slope('cornerAngle', 'angle between the walls', '\\theta', { max: Math.PI }),
		...[q.coefficient('mu', 'friction coefficient', '\\mu'), q.mass(), q.gravity, q.weight()],
		q.coefficient('neededMu', 'least coefficient, however hard the press', '\\mu_{min}', {
			max: 1e17
		}),
		q.slope('widestAngle', 'widest angle between the walls', '\\theta_{max}', { max: Math.PI }),
		q.force('leastThrust', 'least level thrust of each foot', 'H'),
		q.force('normal', 'normal force on each wall at that thrust', 'N'),
		q.force('friction', 'friction on each foot at that thrust', 'f')
	],
	lines: [
		['weight', 'mass*gravity', 'Weight is mass times g.'],
		['neededMu', 'tan(cornerAngle/2)', 'The thrust lies half the corner angle off the normal.'],
		['widestAngle', '2*atan(mu)', 'The same, turned round.'],
		[
			'leastThrust',
			'weight/(2*sqrt((mu*cos(cornerAngle/2))^2 - sin(cornerAngle/2)^2))',
			'Friction carries half the weight and the sideways part of the thrust.'
		],
		['normal', 'leastThrust*cos(cornerAngle/2)', 'Part of the thrust square to the wall.'],
		['friction', 'hypot(weight/2, leastThrust*sin(cornerAngle/2))', 'Both parts along the wall.']
	],
	limits: ['neededMu', 'widestAngle', 'leastThrust', 'normal', 'friction'],
	regime(values) {
		const v = allOf(values, 'mu', 'neededMu');
		if (!v) return undefined;
		return v.mu > v.neededMu
			? { regime: 'self-locks', because: 'Pressing hard enough holds any weight.' }
			: { regime: 'slides', because: 'However hard the press, the feet slip out of the corner.' };
	},
	noLimit: (_, ask) =>
		['leastThrust', 'normal', 'friction'].includes(ask)
			? {
					regime: 'impossible',
					because: 'The corner is wider than friction allows: no thrust holds.'
				}
			: undefined,
	diagram(values) {
		const v = allOf(values, 'cornerAngle', 'weight', 'leastThrust');
		if (!v) return undefined;
		const on = { body: 'climber' };
		// Seen from the front: left and right are the level thrusts, up is up.
		return {
			bodies: [
				{ id: 'climber', name: 'climber', outline: [along(Math.PI / 2, 1), [-0.6, 0], [0.6, 0]] }
			],
			lines: [
				{ name: 'left wall', from: [-0.6, -0.5], to: [-0.6, 1] },
				{ name: 'right wall', from: [0.6, -0.5], to: [0.6, 1] }
			],
			forces: [
				{
					...on,
					kind: 'weight',
					name: 'weight',
					symbol: 'W',
					at: [0, 0.5],
					vector: [0, -v.weight]
				},
				{
					...on,
					kind: 'reaction',
					name: 'left wall, level',
					symbol: 'H',
					at: [-0.6, 0],
					vector: [v.leastThrust, 0]
				},
				{
					...on,
					kind: 'reaction',
					name: 'right wall, level',
					symbol: 'H',
					at: [0.6, 0],
					vector: [-v.leastThrust, 0]
				},
				{
					...on,
					kind: 'friction',
					name: 'left foot, upright',
					symbol: 'W/2',
					at: [-0.6, 0],
					vector: [0, v.weight / 2]
				},
				{
					...on,
					kind: 'friction',
					name: 'right foot, upright',
					symbol: 'W/2',
					at: [0.6, 0],
					vector: [0, v.weight / 2]
				}
			]
		};
	},
	practice: {
		given: {
			...{ mu: [0.6, 1.2, 0.05], mass: [45, 95, 1] },
			cornerAngle: [0.3490658503988659, 0.8726646259971648, 0.08726646259971647]
		},
		ask: ['neededMu', 'widestAngle', 'leastThrust', 'normal']
	}
});
