import { allOf } from '../statics/block-diagram.ts';
import * as q from '../statics/quantities.ts';
import { buildSetup } from '../statics/setup.ts';

/**
 * Chimney: back on one wall, feet on the other.
 * Formula: N = W/(μ_b + μ_f); h = [W (w − d) − μ_b N w]/N, the back above the feet.
 * Sign: height positive when the back is above the feet.
 * Valid for: both at their limit, upright walls. Source: derived
 */
export const chimney = buildSetup({
	id: 'chimney',
	number: 6,
	title: 'Chimney: back and feet on opposite walls',
	scene: 'A climber rests in a chimney, back on one wall and feet on the other.',
	notes: [
		'Back and feet are both at their limit: the least push.',
		'The distance of the centre of mass is taken from the wall at the back.'
	],
	quantities: [
		...[q.mass(), q.gravity, q.weight()],
		q.coefficient('muBack', 'friction coefficient of the back', '\\mu_b'),
		q.coefficient('muFeet', 'friction coefficient of the shoes', '\\mu_f'),
		q.length('width', 'width of the chimney', 'w'),
		q.length('centreDistance', 'distance of the centre of mass from the wall at the back', 'd', {
			open: false
		}),
		q.force('push', 'least push on either wall', 'N'),
		q.length('height', 'height of the back above the feet', 'h', { min: -1e6 }),
		q.force('backFriction', 'friction at the back', 'f_b'),
		q.force('footFriction', 'friction at the feet', 'f_f')
	],
	lines: [
		['weight', 'mass*gravity', 'Weight is mass times g.'],
		['push', 'weight/(muBack + muFeet)', 'Both frictions at their limit carry the weight.'],
		[
			'height',
			'(weight*(width - centreDistance) - muBack*push*width)/push',
			'Moments about the feet.'
		],
		['backFriction', 'muBack*push', 'At its limit.'],
		['footFriction', 'muFeet*push', 'At its limit.']
	],
	limits: ['push', 'height', 'backFriction', 'footFriction'],
	regime: () => ({ regime: 'about to slip', because: 'Back and feet are both at their limit.' }),
	diagram(values) {
		const v = allOf(
			...([values, 'weight', 'push', 'height', 'width', 'centreDistance'] as const),
			...(['backFriction', 'footFriction'] as const)
		);
		if (!v) return undefined;
		const on = { body: 'climber' };
		const [back, feet] = [[0, v.height] as [number, number], [v.width, 0] as [number, number]];
		return {
			bodies: [
				{ id: 'climber', name: 'climber', outline: [back, [v.centreDistance, v.height / 2], feet] }
			],
			lines: [
				{ name: 'wall at the back', from: [0, -1], to: [0, 2] },
				{ name: 'wall at the feet', from: [v.width, -1], to: [v.width, 2] }
			],
			rigid: true,
			forces: [
				{
					...on,
					kind: 'weight',
					name: 'weight',
					symbol: 'W',
					at: [v.centreDistance, v.height / 2],
					vector: [0, -v.weight]
				},
				{ ...on, kind: 'normal', name: 'back', symbol: 'N', at: back, vector: [v.push, 0] },
				{ ...on, kind: 'normal', name: 'feet', symbol: 'N', at: feet, vector: [-v.push, 0] },
				{
					...on,
					kind: 'friction',
					name: 'friction at the back',
					symbol: 'f_b',
					at: back,
					vector: [0, v.backFriction]
				},
				{
					...on,
					kind: 'friction',
					name: 'friction at the feet',
					symbol: 'f_f',
					at: feet,
					vector: [0, v.footFriction]
				}
			]
		};
	},
	practice: {
		given: {
			...{ mass: [45, 95, 1], muBack: [0.4, 0.9, 0.05], muFeet: [0.7, 1.2, 0.05] },
			...{ width: [0.6, 1.1, 0.05], centreDistance: [0.15, 0.3, 0.01] }
		},
		ask: ['push', 'height', 'backFriction']
	}
});
