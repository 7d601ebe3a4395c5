import { allOf } from '../statics/block-diagram.ts';
import { add, along, type Vector } from '../statics/diagram.ts';
import * as q from '../statics/quantities.ts';
import { buildSetup } from '../statics/setup.ts';

/**
 * A block on a board that is tilted: does it slide or tip first?
 * Formula: slides at arctan μ_s, tips at arctan(width/height).
 * Valid for: an even block, its width along the slope. Source: derived
 */
export const tiltingBoard = buildSetup({
	id: 'tilting-board',
	number: 1,
	title: 'Block on a tilting board: slide or tip',
	scene: 'A tall block stands on a board that is slowly tilted.',
	notes: ['Width is measured along the slope. The block is even throughout.'],
	quantities: [
		q.length('width', 'width along the slope', 'w'),
		q.length('height', 'height', 'h'),
		...[q.muStatic({ default: undefined }), q.slope()],
		q.slope('slideAngle', 'slope at which it would slide', '\\theta_s'),
		q.slope('tipAngle', 'slope at which it would tip', '\\theta_t'),
		q.slope('firstAngle', 'slope at which the first of the two happens', '\\theta_1'),
		q.coefficient('criticalMu', 'coefficient above which it tips first', '\\mu_c', { max: 1e6 }),
		q.length('normalOffset', 'distance of the normal force from the middle, downhill', 'x_N', {
			open: false
		})
	],
	lines: [
		['slideAngle', 'atan(muStatic)', 'The weight leaves the friction cone.'],
		['tipAngle', 'atan(width/height)', 'The weight passes over the lower edge.'],
		['firstAngle', 'min(slideAngle, tipAngle)', 'The smaller comes first.'],
		['criticalMu', 'width/height', 'Both at once.'],
		['normalOffset', 'height/2*tan(slope)', 'The normal force stands under the centre of mass.']
	],
	limits: [],
	regime(values) {
		const v = allOf(values, 'slideAngle', 'tipAngle', 'firstAngle');
		if (!v) return undefined;
		const tips = v.tipAngle < v.slideAngle;
		const first = tips
			? { regime: 'tips', because: 'It tips before it slides.' }
			: { regime: 'slides', because: 'It slides before it tips.' };
		if (values.slope === undefined || values.slope > v.firstAngle + 1e-9) return first;
		return values.slope < v.firstAngle - 1e-9
			? { regime: 'rests', because: `Too flat for either; ${first.because.toLowerCase()}` }
			: { regime: tips ? 'about to tip' : 'about to slip', because: first.because };
	},
	diagram(values) {
		const v = allOf(values, 'width', 'height', 'firstAngle');
		if (!v) return undefined;
		const slope = Math.min(values.slope ?? v.firstAngle, v.firstAngle);
		const at = (x: number, y: number): Vector =>
			add(along(slope, x), along(slope + Math.PI / 2, y));
		const foot = at((-v.height / 2) * Math.tan(slope), 0);
		const corners = [-v.width / 2, v.width / 2];
		return {
			bodies: [
				{
					...{ id: 'block', name: 'block of 1 N' },
					outline: [
						at(corners[0]!, 0),
						at(corners[1]!, 0),
						at(corners[1]!, v.height),
						at(corners[0]!, v.height)
					]
				}
			],
			lines: [{ name: 'board', from: at(-2 * v.width, 0), to: at(2 * v.width, 0) }],
			rigid: true,
			forces: [
				{
					body: 'block',
					kind: 'weight',
					name: 'weight',
					symbol: 'W',
					at: at(0, v.height / 2),
					vector: [0, -1]
				},
				{
					body: 'block',
					kind: 'normal',
					name: 'normal force',
					symbol: 'N',
					at: foot,
					vector: along(slope + Math.PI / 2, Math.cos(slope))
				},
				{
					body: 'block',
					kind: 'friction',
					name: 'friction',
					symbol: 'f',
					at: foot,
					vector: along(slope, Math.sin(slope))
				}
			]
		};
	},
	practice: {
		given: {
			...{ width: [0.1, 0.5, 0.05], height: [0.3, 1.2, 0.05], muStatic: [0.2, 0.8, 0.05] },
			slope: [0.08726646259971647, 0.4363323129985824, 0.017453292519943295]
		},
		ask: ['slideAngle', 'tipAngle', 'firstAngle', 'criticalMu']
	}
});
