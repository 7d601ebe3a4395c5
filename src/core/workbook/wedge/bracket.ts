import { allOf } from '../statics/block-diagram.ts';
import * as q from '../statics/quantities.ts';
import { buildSetup } from '../statics/setup.ts';

/**
 * A bracket that grips an upright rod by friction alone, loaded to one side.
 * Formula: N h = W x and W ≤ 2 μ N give x ≥ h/(2 μ): the load cancels.
 * Valid for: contact at two heights, a weightless bracket. Source: derived
 */
export const bracket = buildSetup({
	id: 'bracket',
	number: 2,
	title: 'Bracket that grips a rod by friction',
	scene:
		'A loose bracket on an upright rod carries a load to one side and grips by friction alone.',
	notes: [
		'Distances from the near face of the rod, or from its axis. The weight of the bracket is left out.'
	],
	quantities: [
		q.coefficient('mu', 'friction coefficient', '\\mu'),
		q.length('contactHeight', 'height between the two contacts', 'h'),
		q.length('rodDiameter', 'diameter of the rod', 'd', { round: 'diameter', open: false }),
		q.length('axisDistance', 'least distance of the load from the axis', 'x', { max: 1e16 }),
		q.length('faceDistance', 'least distance of the load from the near face', "x'", {
			min: -1e6,
			max: 1e16
		}),
		...[
			q.weight('load', 'load', 'W'),
			q.length('loadDistance', 'distance of the load from the axis', 'x_W')
		],
		q.force('grip', 'normal force at each contact', 'N')
	],
	lines: [
		[
			'axisDistance',
			'contactHeight/(2*mu)',
			'Moments and friction at its limit: the load cancels.'
		],
		['faceDistance', 'axisDistance - rodDiameter/2', 'The near face is half a diameter closer.'],
		['grip', 'load*loadDistance/contactHeight', 'Moments about a contact.']
	],
	limits: ['axisDistance', 'faceDistance', 'mu', 'contactHeight'],
	regime(values) {
		const v = allOf(values, 'axisDistance', 'loadDistance');
		if (!v) return undefined;
		if (Math.abs(v.loadDistance - v.axisDistance) <= 1e-9 * v.axisDistance)
			return { regime: 'about to slip', because: 'The load stands at the least distance.' };
		return v.loadDistance > v.axisDistance
			? { regime: 'self-locks', because: 'However heavy the load, the bracket grips.' }
			: { regime: 'slides', because: 'The load stands too close to the rod.' };
	},
	diagram(values) {
		const v = allOf(values, 'contactHeight', 'axisDistance', 'mu');
		if (!v) return undefined;
		const load = values.load ?? 1;
		const x = Math.max(values.loadDistance ?? v.axisDistance, v.axisDistance);
		const grip = (load * x) / v.contactHeight;
		const half = (values.rodDiameter ?? 0) / 2;
		const share = { body: 'bracket', kind: 'friction' as const, name: 'friction', symbol: 'f' };
		const press = { body: 'bracket', kind: 'normal' as const, name: 'contact', symbol: 'N' };
		return {
			bodies: [
				{
					id: 'bracket',
					name: 'bracket',
					outline: [
						[-half, 0],
						[-half, v.contactHeight],
						[x, v.contactHeight]
					]
				}
			],
			lines: [{ name: 'rod', from: [0, -v.contactHeight], to: [0, 2 * v.contactHeight] }],
			forces: [
				{
					body: 'bracket',
					kind: 'weight',
					name: 'load',
					symbol: 'W',
					at: [x, v.contactHeight],
					vector: [0, -load]
				},
				{ ...press, at: [-half, v.contactHeight], vector: [-grip, 0] },
				{ ...press, at: [half, 0], vector: [grip, 0] },
				{ ...share, at: [-half, v.contactHeight], vector: [0, load / 2] },
				{ ...share, at: [half, 0], vector: [0, load / 2] }
			]
		};
	},
	practice: {
		given: {
			...{
				mu: [0.15, 0.5, 0.01],
				contactHeight: [0.05, 0.3, 0.01],
				rodDiameter: [0.01, 0.05, 0.005]
			},
			...{ load: [50, 900, 10], loadDistance: [0.1, 0.8, 0.05] }
		},
		ask: ['axisDistance', 'faceDistance', 'grip']
	}
});
