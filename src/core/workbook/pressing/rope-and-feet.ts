import { allOf } from '../statics/block-diagram.ts';
import { along } from '../statics/diagram.ts';
import * as q from '../statics/quantities.ts';
import { buildSetup } from '../statics/setup.ts';

/**
 * A climber held by a rope, feet against an upright face.
 * Formula: T cos φ + F sin ψ = W, T sin φ = F cos ψ; so T = W cos ψ/cos(φ − ψ), F = W sin φ/cos(φ − ψ).
 * Sign: ropeAngle from the vertical; legAngle from the NORMAL of the face, positive when the face
 * pushes upwards. Valid for: the lines of the forces meeting in one point. Source: openstaxUniversityPhysics, chapter 6.
 */
export const ropeAndFeet = buildSetup({
	id: 'rope-and-feet',
	number: 4,
	title: 'Held by a rope, feet on an upright face',
	scene: 'A climber leans back on a rope with both feet against an upright face.',
	notes: [
		'The rope counts from the vertical; the force in the legs from the normal of the face (0 is straight into it).',
		'An angle from the face itself is 90° minus that.'
	],
	quantities: [
		...[q.mass(), q.gravity, q.weight()],
		q.slope('ropeAngle', 'angle of the rope from the vertical', '\\varphi'),
		q.direction('legAngle', "angle of the leg force from the face's normal", '\\psi', {
			...{ min: -Math.PI / 2, max: Math.PI / 2 }
		}),
		q.coefficient('mu', 'friction coefficient of the shoes', '\\mu'),
		q.force('tension', 'tension of the rope', 'T'),
		q.force('legForce', 'force in the legs', 'F'),
		q.force('normal', 'normal force of the face', 'N'),
		q.signedForce('friction', 'friction at the feet, up positive', 'f'),
		q.coefficient('neededMu', 'least coefficient', '\\mu_{min}', { max: 1e17 })
	],
	lines: [
		['weight', 'mass*gravity', 'Weight is mass times g.'],
		['tension', 'weight*cos(legAngle)/cos(ropeAngle - legAngle)', 'Both balances, legs taken out.'],
		[
			'legForce',
			'weight*sin(ropeAngle)/cos(ropeAngle - legAngle)',
			'Both balances, rope taken out.'
		],
		['normal', 'legForce*cos(legAngle)', 'Part square to the face.'],
		['friction', 'legForce*sin(legAngle)', 'Part along the face.'],
		['neededMu', 'tan(abs(legAngle))', 'Friction over normal force.']
	],
	limits: ['neededMu'],
	regime(values) {
		if (values.legForce === undefined && values.neededMu === undefined) return undefined;
		const v = allOf(values, 'mu', 'neededMu');
		if (!v) return { regime: 'rests', because: 'If the shoes have the needed friction.' };
		if (Math.abs(v.mu - v.neededMu) <= 1e-9)
			return { regime: 'about to slip', because: 'The feet need all the friction there is.' };
		return v.mu > v.neededMu
			? { regime: 'rests', because: 'The feet need less friction than there is.' }
			: { regime: 'slides', because: 'The feet need more friction than there is.' };
	},
	stretches: {
		mu: { from: 'neededMu', because: 'Any coefficient from the needed one upwards will do.' }
	},
	diagram(values) {
		const v = allOf(values, 'weight', 'ropeAngle', 'tension', 'normal', 'friction');
		if (!v) return undefined;
		const on = { body: 'climber' };
		return {
			bodies: [
				{
					id: 'climber',
					name: 'climber',
					outline: [
						[0.8, 0.4],
						[0.8, -0.2],
						[0, -0.4]
					]
				}
			],
			lines: [{ name: 'face', from: [0, -1.5], to: [0, 2] }],
			forces: [
				{
					...on,
					kind: 'weight',
					name: 'weight',
					symbol: 'W',
					at: [0.8, 0.1],
					vector: [0, -v.weight]
				},
				{
					...on,
					kind: 'rope',
					name: 'rope',
					symbol: 'T',
					at: [0.8, 0.1],
					vector: along(Math.PI / 2 + v.ropeAngle, v.tension)
				},
				{ ...on, kind: 'normal', name: 'face', symbol: 'N', at: [0, -0.4], vector: [v.normal, 0] },
				{
					...on,
					kind: 'friction',
					name: 'friction',
					symbol: 'f',
					at: [0, -0.4],
					vector: [0, v.friction]
				}
			]
		};
	},
	practice: {
		given: {
			...{ mass: [45, 95, 1], mu: [0.3, 1, 0.05] },
			ropeAngle: [0.2617993877991494, 0.6981317007977318, 0.017453292519943295],
			legAngle: [0.05235987755982988, 0.3490658503988659, 0.017453292519943295]
		},
		ask: ['tension', 'legForce', 'neededMu', 'friction']
	}
});
