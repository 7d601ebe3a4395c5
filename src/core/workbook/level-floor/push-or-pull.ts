import { allOf, drawBlock } from '../statics/block-diagram.ts';
import * as q from '../statics/quantities.ts';
import { buildSetup } from '../statics/setup.ts';

/**
 * A block on a level floor under one slanted force and perhaps a second level push across it.
 * Formula: N = W − P sin α; it rests while the level pull H ≤ μ_s N, else friction is μ_k N.
 * Sign: forceAngle is positive upwards (a pull) and negative into the floor (a push).
 * Valid for: a block that does not tip, dry friction. Source: openstaxUniversityPhysics, section 6.2.
 */
export const pushOrPull = buildSetup({
	id: 'push-or-pull',
	number: 1,
	title: 'Block pushed or pulled on a level floor',
	scene: 'A box stands on a level floor and somebody pushes or pulls it.',
	notes: [
		'The angle of the force counts from the level: positive lifts, negative presses down.',
		'A second level push, at right angles to the first, is allowed; friction opposes their sum.',
		'The box does not tip.'
	],
	quantities: [
		...[q.mass(), q.gravity, q.weight(), q.muStatic(), q.muKinetic()],
		q.force('force', 'push or pull', 'P'),
		q.direction('forceAngle', 'angle of the force above the level', '\\alpha', {
			...{ min: -Math.PI / 2, max: Math.PI / 2, default: 0 }
		}),
		q.force('sideForce', 'second level push at right angles', 'P_2', { default: 0 }),
		q.force('normal', 'normal force', 'N'),
		q.force('pullAlong', 'level part of the push', 'H'),
		q.direction('pullDirection', 'direction of the level push from the first force', '\\beta'),
		q.force('frictionLimit', 'greatest static friction', 'f_{max}'),
		q.force('slidingFriction', 'friction while sliding', 'f_k'),
		q.force('friction', 'friction that acts, starting from rest', 'f'),
		q.acceleration('acceleration', 'acceleration, starting from rest', 'a'),
		q.acceleration('slidingAcceleration', 'acceleration if it slides already', 'a_k'),
		q.force('startForce', 'least force that starts it', 'P_s'),
		q.acceleration('startAcceleration', 'acceleration once the starting force has moved it', 'a_s'),
		q.force('steadyForce', 'force for steady sliding', 'P_k'),
		q.slope('bestAngle', 'angle of the least starting pull', '\\alpha_b'),
		q.force('leastPull', 'least starting pull at its best angle', 'P_b'),
		q.slope('lockAngle', 'angle below the level past which no push starts it', '\\alpha_l'),
		q.force('liftForce', 'pull along this angle that lifts it off', 'P_l')
	],
	lines: [
		['weight', 'mass*gravity', 'Weight is mass times g.'],
		['normal', 'weight - force*sin(forceAngle)', 'Nothing moves up or down.'],
		['pullAlong', 'hypot(force*cos(forceAngle), sideForce)', 'Level parts at right angles add up.'],
		['pullDirection', 'atan(sideForce/(force*cos(forceAngle)))', 'Direction of that sum.'],
		['frictionLimit', 'muStatic*normal', 'Static friction reaches at most this.'],
		['slidingFriction', 'muKinetic*normal', 'Friction while the surfaces slip.'],
		[
			'friction',
			'when(pullAlong <= frictionLimit, pullAlong, slidingFriction)',
			'At rest friction is only as large as the push needs.'
		],
		['acceleration', '(pullAlong - friction)/mass', 'What is left over speeds it up.'],
		['slidingAcceleration', '(pullAlong - slidingFriction)/mass', 'Sliding, friction is kinetic.'],
		[
			'startForce',
			'muStatic*weight/(cos(forceAngle) + muStatic*sin(forceAngle))',
			'Level part equals static friction at its limit.'
		],
		[
			'startAcceleration',
			'(startForce*cos(forceAngle) - muKinetic*(weight - startForce*sin(forceAngle)))/mass',
			'Once it moves, friction drops to its kinetic value.'
		],
		[
			'steadyForce',
			'muKinetic*weight/(cos(forceAngle) + muKinetic*sin(forceAngle))',
			'Level part equals kinetic friction.'
		],
		['bestAngle', 'atan(muStatic)', 'The least pull stands square to the slipping reaction.'],
		['leastPull', 'weight*sin(bestAngle)', 'Its size at that angle.'],
		['lockAngle', 'atan(1/muStatic)', 'Inside the friction cone no push can win.'],
		['liftForce', 'weight/sin(forceAngle)', 'Its upward part equals the weight.']
	],
	limits: [
		'startForce',
		'leastPull',
		'frictionLimit',
		'bestAngle',
		'lockAngle',
		'startAcceleration'
	],
	regime(values) {
		const v = allOf(values, 'pullAlong', 'normal');
		if (!v) return undefined;
		if (v.normal < 0)
			return { regime: 'lifts off', because: 'The pull lifts more than the weight.' };
		const limit = values.frictionLimit;
		if (limit === undefined) return undefined;
		const spare = limit - v.pullAlong;
		if (Math.abs(spare) <= 1e-9 * limit)
			return {
				regime: 'about to slip',
				because: 'The level push equals static friction at its limit.'
			};
		const steep = Math.tan(-(values.forceAngle ?? 0)) >= 1 / (values.muStatic || 1e-300);
		if (spare > 0 && steep && (values.forceAngle ?? 0) < 0)
			return {
				regime: 'self-locks',
				because: 'So steep a push presses on more friction than it needs.'
			};
		return spare > 0
			? { regime: 'rests', because: 'The level push is below the static limit.' }
			: { regime: 'slides', because: 'The level push is above the static limit.' };
	},
	noLimit: (values, ask) =>
		['startForce', 'steadyForce', 'startAcceleration'].includes(ask) && (values.forceAngle ?? 0) < 0
			? { regime: 'self-locks', because: 'However hard the push along this line, it never slides.' }
			: undefined,
	diagram(values) {
		const v = allOf(values, 'weight', 'normal', 'force', 'forceAngle', 'pullAlong', 'friction');
		if (!v || v.normal < 0) return undefined;
		const lift = v.force * Math.sin(v.forceAngle);
		const pull = { angle: Math.atan2(lift, v.pullAlong), size: Math.hypot(lift, v.pullAlong) };
		const { body, forces } = drawBlock({
			...{ id: 'box', name: 'box', at: [0, 0], slope: 0, weight: v.weight, normal: v.normal },
			friction: -v.friction,
			others: [{ kind: 'push', name: 'push or pull', symbol: 'P', ...pull }],
			...(values.mass !== undefined && {
				mass: values.mass,
				acceleration: values.acceleration ?? 0
			})
		});
		return { bodies: [body], forces, lines: [{ name: 'floor', from: [-2, 0], to: [2, 0] }] };
	},
	practice: {
		given: {
			...{ mass: [5, 80, 1], muStatic: [0.3, 0.7, 0.05], muKinetic: [0.15, 0.28, 0.01] },
			...{
				force: [20, 400, 10],
				forceAngle: [-0.5235987755982988, 0.6108652381980153, 0.08726646259971647]
			}
		},
		ask: ['friction', 'acceleration', 'startForce', 'normal', 'steadyForce', 'leastPull']
	}
});
