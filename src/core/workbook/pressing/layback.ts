import { allOf } from '../statics/block-diagram.ts';
import * as q from '../statics/quantities.ts';
import { buildSetup } from '../statics/setup.ts';

/**
 * Layback: hands pull one side of a crack, feet push its other side.
 * Formula: N = W/(μ_h + μ_f), h = (W d + μ_f N w)/N = (μ_h + μ_f) d + μ_f w.
 * Valid for: both at their limit, level pull and push. Source: derived
 */
export const layback = buildSetup({
	id: 'layback',
	number: 5,
	title: 'Layback in a crack',
	scene: 'A climber leans sideways off a crack: hands pull its near side, feet push its far side.',
	notes: [
		'Hands and feet are both at their limit: the least pull.',
		'The distance of the centre of mass is taken from the side on which the hands pull.'
	],
	quantities: [
		...[q.mass(), q.gravity, q.weight()],
		q.coefficient('muHands', 'friction coefficient of the hands', '\\mu_h'),
		q.coefficient('muFeet', 'friction coefficient of the shoes', '\\mu_f'),
		q.length('crackWidth', 'width of the crack', 'w', { open: false }),
		q.length('centreDistance', 'level distance of the centre of mass', 'd', { open: false }),
		q.force('pull', 'least pull of the hands and push of the feet', 'N'),
		q.length('height', 'height of the hands above the feet', 'h', { open: false }),
		q.force('handFriction', 'friction at the hands', 'f_h'),
		q.force('footFriction', 'friction at the feet', 'f_f')
	],
	lines: [
		['weight', 'mass*gravity', 'Weight is mass times g.'],
		['pull', 'weight/(muHands + muFeet)', 'Both frictions at their limit carry the weight.'],
		['height', '(weight*centreDistance + muFeet*pull*crackWidth)/pull', 'Moments about the hands.'],
		['handFriction', 'muHands*pull', 'At its limit.'],
		['footFriction', 'muFeet*pull', 'At its limit.']
	],
	limits: ['pull', 'height', 'handFriction', 'footFriction'],
	regime: () => ({ regime: 'about to slip', because: 'Hands and feet are both at their limit.' }),
	diagram(values) {
		const v = allOf(
			...([values, 'weight', 'pull', 'height', 'crackWidth', 'centreDistance'] as const),
			...(['handFriction', 'footFriction'] as const)
		);
		if (!v) return undefined;
		const on = { body: 'climber' };
		const [hands, feet] = [
			[0, v.height] as [number, number],
			[-v.crackWidth, 0] as [number, number]
		];
		return {
			bodies: [
				{ id: 'climber', name: 'climber', outline: [hands, [v.centreDistance, v.height / 2], feet] }
			],
			lines: [
				{ name: 'near side', from: [0, -0.2], to: [0, v.height + 0.2] },
				{ name: 'far side', from: [-v.crackWidth, -0.2], to: [-v.crackWidth, v.height + 0.2] }
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
				{ ...on, kind: 'normal', name: 'hands', symbol: 'N', at: hands, vector: [-v.pull, 0] },
				{ ...on, kind: 'normal', name: 'feet', symbol: 'N', at: feet, vector: [v.pull, 0] },
				{
					...on,
					kind: 'friction',
					name: 'friction at the hands',
					symbol: 'f_h',
					at: hands,
					vector: [0, v.handFriction]
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
			...{ mass: [45, 95, 1], muHands: [0.3, 0.6, 0.05], muFeet: [0.7, 1.3, 0.05] },
			...{ crackWidth: [0.1, 0.3, 0.02], centreDistance: [0.3, 0.5, 0.02] }
		},
		ask: ['pull', 'height']
	}
});
