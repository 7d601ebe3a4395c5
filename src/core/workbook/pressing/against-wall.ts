import { allOf } from '../statics/block-diagram.ts';
import { along } from '../statics/diagram.ts';
import * as q from '../statics/quantities.ts';
import { buildSetup } from '../statics/setup.ts';

/**
 * A block pressed against an upright wall by one force, perhaps slanted.
 * Formula: N = F cos α; it rests while |W − F sin α| ≤ μ_s N.
 * Sign: forceAngle positive upwards; friction and acceleration positive upwards.
 * Valid for: a block that does not turn. Source: openstaxUniversityPhysics, section 6.2.
 */
export const againstWall = buildSetup({
	id: 'against-wall',
	number: 2,
	title: 'Pressed against a wall',
	scene: 'A block is pressed against an upright wall.',
	notes: ['Angles of the force count from the level, positive upwards.', 'Up counts positive.'],
	quantities: [
		...[q.mass(), q.gravity, q.weight(), q.muStatic(), q.muKinetic()],
		q.force('force', 'pressing force', 'F'),
		q.direction('forceAngle', 'angle of the force above the level', '\\alpha', {
			...{ min: -Math.PI / 2, max: Math.PI / 2, default: 0 }
		}),
		q.force('normal', 'normal force of the wall', 'N'),
		q.signedForce('drive', 'drive downwards, friction aside', 'D'),
		q.force('frictionNeeded', 'friction needed for rest', 'f_n'),
		q.force('frictionLimit', 'greatest static friction', 'f_{max}'),
		q.force('slidingFriction', 'friction while sliding', 'f_k'),
		q.signedForce('friction', 'friction that acts, up positive', 'f'),
		q.acceleration('acceleration', 'acceleration upwards, from rest', 'a'),
		q.force('leastForce', 'least force that holds it', 'F_{min}'),
		q.force('greatestForce', 'force that just starts it upwards', 'F_{max}'),
		q.coefficient('neededMu', 'least coefficient for rest', '\\mu_{min}', { max: 1e17 })
	],
	lines: [
		['weight', 'mass*gravity', 'Weight is mass times g.'],
		['normal', 'force*cos(forceAngle)', 'Level forces balance.'],
		['drive', 'weight - force*sin(forceAngle)', 'What would move it down, friction aside.'],
		['frictionNeeded', 'abs(drive)', 'Friction must cancel the drive for rest.'],
		['frictionLimit', 'muStatic*normal', 'Static friction reaches at most this.'],
		['slidingFriction', 'muKinetic*normal', 'Friction while the surfaces slip.'],
		[
			'friction',
			'when(frictionNeeded <= frictionLimit, drive, sgn(drive)*slidingFriction)',
			'At rest friction is only what the drive needs.'
		],
		['acceleration', '(friction - drive)/mass', 'What is left over.'],
		[
			'leastForce',
			'weight/(sin(forceAngle) + muStatic*cos(forceAngle))',
			'About to slip down: friction acts up.'
		],
		[
			'greatestForce',
			'weight/(sin(forceAngle) - muStatic*cos(forceAngle))',
			'About to slip up: friction acts down.'
		],
		['neededMu', 'frictionNeeded/normal', 'Friction may be at most μN.']
	],
	limits: ['leastForce', 'greatestForce', 'frictionLimit', 'neededMu'],
	regime(values) {
		const v = allOf(values, 'drive', 'frictionNeeded', 'frictionLimit');
		if (!v) return undefined;
		const way = v.drive > 0 ? 'down' : 'up';
		const spare = v.frictionLimit - v.frictionNeeded;
		if (Math.abs(spare) <= 1e-9 * Math.max(v.frictionLimit, v.frictionNeeded))
			return { regime: 'about to slip', because: `It is about to start ${way}.` };
		return spare > 0
			? { regime: 'rests', because: 'Static friction can cancel the drive.' }
			: { regime: `slides ${way}`, because: 'The drive is above the static limit.' };
	},
	noLimit: (_, ask) =>
		ask === 'greatestForce'
			? {
					regime: 'self-locks',
					because: 'However hard the push along this line, it does not go up.'
				}
			: ask === 'leastForce'
				? {
						regime: 'impossible',
						because: 'A push along this line drives it down more than friction holds.'
					}
				: undefined,
	diagram(values) {
		const force = values.force ?? values.leastForce;
		if (force === undefined || values.forceAngle === undefined) return undefined;
		const normal = force * Math.cos(values.forceAngle);
		const v = allOf({ ...values, force, normal }, 'weight', 'forceAngle', 'force', 'normal');
		if (!v) return undefined;
		const friction =
			values.force === undefined ? v.weight - force * Math.sin(v.forceAngle) : values.friction;
		if (friction === undefined) return undefined;
		const moving = values.mass !== undefined && values.force !== undefined;
		return {
			bodies: [
				{
					...{
						id: 'block',
						name: 'block',
						outline: [
							[-0.8, -0.5],
							[0, -0.5],
							[0, 0.5],
							[-0.8, 0.5]
						]
					},
					...(moving && { mass: values.mass!, acceleration: [0, values.acceleration ?? 0] })
				}
			],
			lines: [{ name: 'wall', from: [0, -1], to: [0, 1] }],
			forces: [
				{
					body: 'block',
					kind: 'weight',
					name: 'weight',
					symbol: 'W',
					at: [-0.4, 0],
					vector: [0, -v.weight]
				},
				{
					body: 'block',
					kind: 'push',
					name: 'pressing force',
					symbol: 'F',
					at: [-0.8, 0],
					vector: along(v.forceAngle, v.force)
				},
				{
					body: 'block',
					kind: 'normal',
					name: 'wall',
					symbol: 'N',
					at: [0, 0],
					vector: [-v.normal, 0]
				},
				{
					body: 'block',
					kind: 'friction',
					name: 'friction',
					symbol: 'f',
					at: [0, 0],
					vector: [0, friction]
				}
			]
		};
	},
	practice: {
		given: {
			...{ mass: [0.5, 12, 0.5], muStatic: [0.3, 0.8, 0.05], muKinetic: [0.15, 0.28, 0.01] },
			...{
				force: [20, 300, 5],
				forceAngle: [-0.2617993877991494, 0.7853981633974483, 0.08726646259971647]
			}
		},
		ask: ['leastForce', 'friction', 'acceleration', 'normal', 'neededMu']
	}
});
