import { allOf, drawBlock } from '../statics/block-diagram.ts';
import * as q from '../statics/quantities.ts';
import { buildSetup } from '../statics/setup.ts';

/**
 * A block on an incline tied over a pulley to a block on the level, which is pulled away.
 * Formula: T = W₁ (sin θ + μ₁ cos θ); P (cos α + μ₂ sin α) = T + μ₂ W₂.
 * Sign: forceAngle positive upwards. Valid for: an easy pulley, a level cord at the second block. Source: derived
 */
export const inclineToLevel = buildSetup({
	id: 'incline-to-level',
	number: 7,
	title: 'Block on an incline pulled up by one on the level',
	scene:
		'A block on an incline is tied over a pulley to a block on the level, which is pulled away from it.',
	notes: ['Both blocks are on the point of moving; the pulley has no friction.'],
	quantities: [
		q.weight('weightIncline', 'weight of the block on the incline', 'W_1'),
		q.weight('weightLevel', 'weight of the block on the level', 'W_2'),
		...[q.slope()],
		q.coefficient('muIncline', 'friction coefficient on the incline', '\\mu_1', {
			default: 'muLevel'
		}),
		q.coefficient('muLevel', 'friction coefficient on the level', '\\mu_2', {
			default: 'muIncline'
		}),
		q.direction('forceAngle', 'angle of the pull above the level', '\\alpha', {
			...{ min: -Math.PI / 2, max: Math.PI / 2, default: 0 }
		}),
		q.force('tension', 'tension of the cord', 'T'),
		q.force('startForce', 'pull that just starts both', 'P'),
		q.slope('bestAngle', 'angle of the least pull', '\\alpha_b'),
		q.force('leastPull', 'least pull, at its best angle', 'P_b')
	],
	lines: [
		[
			'tension',
			'weightIncline*(sin(slope) + muIncline*cos(slope))',
			'The block on the incline is about to go up.'
		],
		[
			'startForce',
			'(tension + muLevel*weightLevel)/(cos(forceAngle) + muLevel*sin(forceAngle))',
			'Level part equals cord and friction.'
		],
		['bestAngle', 'atan(muLevel)', 'The least pull stands at the friction angle.'],
		['leastPull', '(tension + muLevel*weightLevel)*cos(bestAngle)', 'Its size at that angle.']
	],
	limits: [
		'startForce',
		'leastPull',
		'tension',
		'bestAngle',
		'slope',
		'weightIncline',
		'weightLevel'
	],
	regime: () => ({ regime: 'about to slip', because: 'Both blocks are about to move.' }),
	noLimit: (_, ask) =>
		ask === 'startForce'
			? { regime: 'self-locks', because: 'However hard the push along this line, it never slides.' }
			: undefined,
	diagram(values) {
		const v = allOf(
			...([values, 'weightIncline', 'weightLevel', 'slope', 'muIncline'] as const),
			...(['forceAngle', 'tension', 'startForce'] as const)
		);
		if (!v) return undefined;
		const level = v.weightLevel - v.startForce * Math.sin(v.forceAngle);
		if (level < 0) return undefined;
		const normal = v.weightIncline * Math.cos(v.slope);
		const rope = { kind: 'rope' as const, name: 'cord', symbol: 'T', size: v.tension };
		const pull = { kind: 'push' as const, name: 'pull', symbol: 'P', size: v.startForce };
		const up = drawBlock({
			...{ id: 'incline', name: 'block on the incline', slope: v.slope },
			at: [-1.5 * Math.cos(v.slope), -1.5 * Math.sin(v.slope)],
			...{ weight: v.weightIncline, normal, friction: -v.muIncline * normal },
			others: [{ ...rope, angle: v.slope }]
		});
		const flat = drawBlock({
			...{ id: 'level', name: 'block on the level', at: [1.5, 0], slope: 0 },
			...{ weight: v.weightLevel, normal: level },
			friction: v.tension - v.startForce * Math.cos(v.forceAngle),
			others: [
				{ ...rope, angle: Math.PI },
				{ ...pull, angle: v.forceAngle }
			]
		});
		return {
			bodies: [up.body, flat.body],
			forces: [...up.forces, ...flat.forces],
			lines: [{ name: 'level', from: [0, 0], to: [3, 0] }]
		};
	},
	practice: {
		given: {
			...{ weightIncline: [40, 400, 10], weightLevel: [40, 400, 10] },
			slope: [0.3490658503988659, 1.0471975511965976, 0.08726646259971647],
			...{ muIncline: [0.1, 0.4, 0.02], muLevel: [0.1, 0.4, 0.02] },
			forceAngle: [0, 0.3490658503988659, 0.08726646259971647]
		},
		ask: ['startForce', 'leastPull', 'tension']
	}
});
