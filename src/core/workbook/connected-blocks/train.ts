import { allOf, drawBlock } from '../statics/block-diagram.ts';
import * as q from '../statics/quantities.ts';
import { buildSetup } from '../statics/setup.ts';

/**
 * Two bodies in a row on a level floor, the front one pulled.
 * Formula: a = (P cos α − μ₁ m₁ g − μ₂ (m₂ g − P sin α))/(m₁ + m₂), not below 0; T = m₁ a + μ₁ m₁ g.
 * Sign: forceAngle positive upwards. Valid for: a stiff, level coupling. Source: openstaxUniversityPhysics, chapter 6.
 */
export const train = buildSetup({
	id: 'train',
	number: 4,
	title: 'Two bodies in a row, the front one pulled',
	scene:
		'Two bodies are coupled one behind the other on a level floor, and the front one is pulled.',
	notes: [
		'The front body is without friction when its coefficient is 0 (a team that pulls a load, say).',
		'A push from behind is the same with the two bodies exchanged; the coupling is then their contact.',
		'Use static coefficients for the start, kinetic ones once it moves. The coupling force holds for motion.'
	],
	quantities: [
		q.mass('massRear', 'mass of the rear body', 'm_1'),
		q.mass('massFront', 'mass of the front body', 'm_2'),
		q.coefficient('muRear', 'friction coefficient of the rear body', '\\mu_1', {
			default: 'muFront'
		}),
		q.coefficient('muFront', 'friction coefficient of the front body', '\\mu_2', {
			default: 'muRear'
		}),
		...[q.gravity, q.force('force', 'pull', 'P')],
		q.direction('forceAngle', 'angle of the pull above the level', '\\alpha', {
			...{ min: -Math.PI / 2, max: Math.PI / 2, default: 0 }
		}),
		q.force('rearFriction', 'sliding friction of the rear body', 'f_1'),
		q.force('frontNormal', 'normal force on the front body', 'N_2'),
		q.force('frontFriction', 'sliding friction of the front body', 'f_2'),
		q.acceleration('acceleration', 'acceleration', 'a'),
		q.force('tension', 'force in the coupling, in motion', 'T'),
		q.force('startForce', 'least pull that starts both', 'P_s')
	],
	lines: [
		['rearFriction', 'muRear*massRear*gravity', 'The coupling is level, so N is the weight.'],
		[
			'frontNormal',
			'massFront*gravity - force*sin(forceAngle)',
			'The pull lifts the front body a little.'
		],
		['frontFriction', 'muFront*frontNormal', 'Friction of the front body.'],
		[
			'acceleration',
			'max(0, (force*cos(forceAngle) - rearFriction - frontFriction)/(massRear + massFront))',
			'Both together; friction cannot drive them backwards.'
		],
		['tension', 'massRear*acceleration + rearFriction', 'The coupling moves the rear body.'],
		[
			'startForce',
			'(rearFriction + muFront*massFront*gravity)/(cos(forceAngle) + muFront*sin(forceAngle))',
			'Level part equals all the friction.'
		]
	],
	limits: ['startForce'],
	regime(values) {
		const v = allOf(values, 'force', 'startForce');
		if (!v) return undefined;
		if (values.frontNormal !== undefined && values.frontNormal < 0)
			return { regime: 'lifts off', because: 'The pull lifts the front body.' };
		if (Math.abs(v.force - v.startForce) <= 1e-9 * v.startForce)
			return { regime: 'about to slip', because: 'The pull equals all the friction.' };
		return v.force < v.startForce
			? { regime: 'rests', because: 'The pull is below the friction of both.' }
			: { regime: 'slides', because: 'The pull is above the friction of both.' };
	},
	diagram(values) {
		const v = allOf(
			...([values, 'massRear', 'massFront', 'gravity', 'force', 'forceAngle'] as const),
			...(['rearFriction', 'frontFriction', 'frontNormal', 'acceleration'] as const)
		);
		if (!v || v.frontNormal < 0) return undefined;
		const level = v.force * Math.cos(v.forceAngle);
		const moving = v.acceleration > 0;
		// At rest friction and coupling share the pull in many ways; the front body is taken to hold first.
		const front = moving ? v.frontFriction : Math.min(level, v.frontFriction);
		const rear = moving ? v.rearFriction : level - front;
		const tension = v.massRear * v.acceleration + rear;
		const [w1, w2] = [v.massRear * v.gravity, v.massFront * v.gravity];
		const rope = { kind: 'rope' as const, name: 'coupling', symbol: 'T', size: tension };
		const pull = { kind: 'push' as const, name: 'pull', symbol: 'P' };
		const a = drawBlock({
			...{ id: 'rear', name: 'rear body', at: [-1, 0], slope: 0, weight: w1, normal: w1 },
			...{ friction: -rear, mass: v.massRear, acceleration: v.acceleration },
			others: [{ ...rope, angle: 0 }]
		});
		const b = drawBlock({
			...{ id: 'front', name: 'front body', at: [1, 0], slope: 0, weight: w2 },
			...{
				normal: v.frontNormal,
				friction: -front,
				mass: v.massFront,
				acceleration: v.acceleration
			},
			others: [
				{ ...rope, angle: Math.PI },
				{ ...pull, angle: v.forceAngle, size: v.force }
			]
		});
		return {
			bodies: [a.body, b.body],
			forces: [...a.forces, ...b.forces],
			lines: [{ name: 'floor', from: [-2, 0], to: [2, 0] }]
		};
	},
	practice: {
		given: {
			...{ massRear: [2, 40, 1], massFront: [2, 40, 1], force: [80, 400, 10] },
			...{ muRear: [0.05, 0.3, 0.01], muFront: [0.05, 0.3, 0.01] },
			forceAngle: [0, 0.6108652381980153, 0.08726646259971647]
		},
		ask: ['acceleration', 'tension', 'startForce']
	}
});
