import { allOf, drawBlock } from '../statics/block-diagram.ts';
import * as q from '../statics/quantities.ts';
import { buildSetup } from '../statics/setup.ts';

/**
 * One block on another, joined by a string round a pulley on the wall; the lower one is pulled away.
 * Formula: T = μ₁ m₁ g, P = T + μ₁ m₁ g + μ₂ (m₁ + m₂) g.
 * Valid for: steady slipping, or the point of slipping with static coefficients; a light string, an easy pulley.
 * Source: openstaxUniversityPhysics, Example 6.12.
 */
export const overWallPulley = buildSetup({
	id: 'over-wall-pulley',
	number: 1,
	title: 'Stacked blocks joined round a wall pulley',
	scene:
		'Two stacked blocks are joined by a string round a pulley on the wall; the lower one is pulled away from it.',
	notes: ['The blocks move opposite ways, so both faces of contact slip.'],
	quantities: [
		q.mass('massTop', 'mass of the upper block', 'm_1'),
		q.mass('massBottom', 'mass of the lower block', 'm_2'),
		q.coefficient('muTop', 'friction coefficient between the blocks', '\\mu_1', {
			default: 'muFloor'
		}),
		q.coefficient('muFloor', 'friction coefficient on the floor', '\\mu_2', { default: 'muTop' }),
		q.gravity,
		q.force('topFriction', 'friction between the blocks', 'f_1'),
		q.force('floorFriction', 'friction on the floor', 'f_2'),
		q.force('tension', 'tension of the string', 'T'),
		q.force('pull', 'pull on the lower block', 'P')
	],
	lines: [
		['topFriction', 'muTop*massTop*gravity', 'The upper block presses with its weight.'],
		['floorFriction', 'muFloor*(massTop + massBottom)*gravity', 'The floor carries both.'],
		['tension', 'topFriction', 'The string balances the friction on the upper block.'],
		['pull', 'tension + topFriction + floorFriction', 'All three hold the lower block back.']
	],
	limits: ['pull', 'tension', 'topFriction', 'floorFriction'],
	regime: () => ({ regime: 'about to slip', because: 'Both faces slip, or are about to.' }),
	diagram(values) {
		const v = allOf(
			values,
			'massTop',
			'massBottom',
			'gravity',
			'topFriction',
			'floorFriction',
			'pull',
			'tension'
		);
		if (!v) return undefined;
		const [upper, lower] = [v.massTop * v.gravity, v.massBottom * v.gravity];
		const rope = { kind: 'rope' as const, name: 'string', symbol: 'T', angle: 0, size: v.tension };
		const top = drawBlock({
			...{ id: 'top', name: 'upper block', at: [0, 0.6], slope: 0, weight: upper, normal: upper },
			...{ friction: -v.topFriction, others: [rope], mass: v.massTop, acceleration: 0 }
		});
		const bottom = drawBlock({
			...{ id: 'bottom', name: 'lower block', at: [0, 0], slope: 0, width: 1.6, weight: lower },
			...{ normal: upper + lower, friction: v.floorFriction, mass: v.massBottom, acceleration: 0 },
			others: [
				rope,
				{
					kind: 'normal',
					name: 'from the upper block',
					symbol: 'N_1',
					angle: -Math.PI / 2,
					size: upper
				},
				{
					kind: 'friction',
					name: 'between the blocks',
					symbol: 'f_1',
					angle: 0,
					size: v.topFriction
				},
				{ kind: 'push', name: 'pull', symbol: 'P', angle: Math.PI, size: v.pull }
			]
		});
		return {
			bodies: [bottom.body, top.body],
			forces: [...bottom.forces, ...top.forces],
			lines: [{ name: 'floor', from: [-2, 0], to: [2, 0] }]
		};
	},
	practice: {
		given: {
			...{ massTop: [1, 8, 0.5], massBottom: [2, 12, 0.5] },
			...{ muTop: [0.15, 0.35, 0.05], muFloor: [0.2, 0.5, 0.03] }
		},
		ask: ['pull', 'tension']
	}
});
