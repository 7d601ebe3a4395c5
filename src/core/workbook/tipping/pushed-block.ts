import { allOf } from '../statics/block-diagram.ts';
import * as q from '../statics/quantities.ts';
import { buildSetup } from '../statics/setup.ts';

/**
 * A block on a level floor, pushed level at some height: does it slide or tip?
 * Formula: slides at μ_s W, tips at W w/(2 h).
 * Valid for: a level push, an even block. Source: derived
 */
export const pushedBlock = buildSetup({
	id: 'pushed-block',
	number: 2,
	title: 'Block pushed at a height: slide or tip',
	scene: 'A tall block on a level floor is pushed level at some height.',
	notes: ['The push is level. Width is measured in the direction of the push.'],
	quantities: [
		...[q.mass(), q.gravity, q.weight()],
		q.length('width', 'width in the direction of the push', 'w'),
		q.length('pushHeight', 'height of the push', 'h'),
		...[q.muStatic({ default: undefined }), q.force('force', 'push', 'P')],
		q.force('slideForce', 'push that would make it slide', 'P_s'),
		q.force('tipForce', 'push that would make it tip', 'P_t'),
		q.force('firstForce', 'push at which the first of the two happens', 'P_1'),
		q.length('greatestHeight', 'greatest height of the push without tipping', 'h_{max}', {
			max: 1e16
		}),
		q.length('normalOffset', 'distance of the normal force from the middle', 'x_N', { open: false })
	],
	lines: [
		['weight', 'mass*gravity', 'Weight is mass times g.'],
		['slideForce', 'muStatic*weight', 'The push equals static friction at its limit.'],
		['tipForce', 'weight*width/(2*pushHeight)', 'Moments about the far edge.'],
		['firstForce', 'min(slideForce, tipForce)', 'The smaller comes first.'],
		['greatestHeight', 'width/(2*muStatic)', 'Both at once: the weight cancels.'],
		['normalOffset', 'force*pushHeight/weight', 'Moments about the middle of the base.']
	],
	limits: [],
	regime(values) {
		const v = allOf(values, 'slideForce', 'tipForce', 'firstForce');
		if (!v) return undefined;
		const tips = v.tipForce < v.slideForce;
		const first = tips
			? { regime: 'tips', because: 'It tips before it slides.' }
			: { regime: 'slides', because: 'It slides before it tips.' };
		if (values.force === undefined || values.force > v.firstForce * (1 + 1e-9)) return first;
		return values.force < v.firstForce * (1 - 1e-9)
			? {
					regime: 'rests',
					because: `The push is too small for either; ${first.because.toLowerCase()}`
				}
			: { regime: tips ? 'about to tip' : 'about to slip', because: first.because };
	},
	diagram(values) {
		const v = allOf(values, 'weight', 'width', 'pushHeight', 'firstForce');
		if (!v) return undefined;
		const force = Math.min(values.force ?? v.firstForce, v.firstForce);
		const x = (force * v.pushHeight) / v.weight;
		const half = v.width / 2;
		const top = v.pushHeight * 1.25;
		return {
			bodies: [
				{
					id: 'block',
					name: 'block',
					outline: [
						[-half, 0],
						[half, 0],
						[half, top],
						[-half, top]
					]
				}
			],
			lines: [{ name: 'floor', from: [-2 * v.width, 0], to: [2 * v.width, 0] }],
			rigid: true,
			forces: [
				{
					body: 'block',
					kind: 'weight',
					name: 'weight',
					symbol: 'W',
					at: [0, top / 2],
					vector: [0, -v.weight]
				},
				{
					body: 'block',
					kind: 'push',
					name: 'push',
					symbol: 'P',
					at: [-half, v.pushHeight],
					vector: [force, 0]
				},
				{
					body: 'block',
					kind: 'normal',
					name: 'normal force',
					symbol: 'N',
					at: [x, 0],
					vector: [0, v.weight]
				},
				{
					body: 'block',
					kind: 'friction',
					name: 'friction',
					symbol: 'f',
					at: [x, 0],
					vector: [-force, 0]
				}
			]
		};
	},
	practice: {
		given: {
			...{ mass: [20, 120, 5], width: [0.3, 1, 0.05], pushHeight: [0.4, 1.6, 0.1] },
			...{ muStatic: [0.2, 0.7, 0.05], force: [20, 300, 10] }
		},
		ask: ['slideForce', 'tipForce', 'firstForce', 'greatestHeight', 'normalOffset']
	}
});
