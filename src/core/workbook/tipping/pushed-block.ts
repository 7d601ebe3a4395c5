import { allOf } from '../statics/block-diagram.ts';
import { along } from '../statics/diagram.ts';
import * as q from '../statics/quantities.ts';
import { buildSetup } from '../statics/setup.ts';

/**
 * A block on a level floor, pushed on its near side at some height: does it slide or tip?
 * Formula: slides at μ_s W/(cos α + μ_s sin α), tips at W w/[2 (h cos α + w sin α)];
 * the normal force stands at x = P (h cos α + (w/2) sin α)/N.
 * Sign: forceAngle positive upwards; x positive on the far side from the push.
 * Valid for: an even block pushed through its middle plane. Source: derived
 */
export const pushedBlock = buildSetup({
	id: 'pushed-block',
	number: 2,
	title: 'Block pushed at a height: slide or tip',
	scene: 'A tall block on a level floor is pushed on its near side at some height.',
	notes: [
		'Width is measured in the direction of the push; the push acts on the near side.',
		'The angle counts from the level: positive lifts, negative presses down.',
		'The normal force counts from the middle of the base, positive away from the push.'
	],
	quantities: [
		...[q.mass(), q.gravity, q.weight()],
		q.length('width', 'width in the direction of the push', 'w'),
		q.length('pushHeight', 'height of the push', 'h'),
		...[q.muStatic({ default: undefined }), q.force('force', 'push', 'P')],
		q.direction('forceAngle', 'angle of the push above the level', '\\alpha', {
			...{ min: -Math.PI / 2, max: Math.PI / 2, default: 0 }
		}),
		q.force('normal', 'normal force', 'N', { open: true }),
		q.force('friction', 'friction needed for rest', 'f'),
		q.force('frictionLimit', 'greatest static friction', 'f_{max}'),
		q.force('slideForce', 'push that would make it slide', 'P_s'),
		q.force('tipForce', 'push that would make it tip', 'P_t'),
		q.force('firstForce', 'push at which the first of the two happens', 'P_1'),
		q.length('greatestHeight', 'greatest height of a level push without tipping', 'h_{max}', {
			max: 1e16
		}),
		q.length('normalOffset', 'distance of the normal force from the middle', 'x_N', { min: -1e6 })
	],
	lines: [
		['weight', 'mass*gravity', 'Weight is mass times g.'],
		['normal', 'weight - force*sin(forceAngle)', 'Nothing moves up or down.'],
		['friction', 'force*cos(forceAngle)', 'Level forces balance.'],
		['frictionLimit', 'muStatic*normal', 'Static friction reaches at most this.'],
		[
			'slideForce',
			'muStatic*weight/max(0, cos(forceAngle) + muStatic*sin(forceAngle))',
			'The level part equals static friction at its limit.'
		],
		[
			'tipForce',
			'weight*width/(2*max(0, pushHeight*cos(forceAngle) + width*sin(forceAngle)))',
			'Moments about the far edge.'
		],
		['firstForce', 'min(slideForce, tipForce)', 'The smaller comes first.'],
		['greatestHeight', 'width/(2*muStatic)', 'Both at once: the weight cancels.'],
		[
			'normalOffset',
			'force*(pushHeight*cos(forceAngle) + width/2*sin(forceAngle))/normal',
			'Moments about the middle of the base.'
		]
	],
	limits: [],
	regime({ force, slideForce, tipForce, firstForce }) {
		if (slideForce === undefined || tipForce === undefined || firstForce === undefined)
			return undefined;
		if (firstForce === Infinity)
			return { regime: 'self-locks', because: 'Along this line no push moves it.' };
		const tips = tipForce < slideForce;
		const first = tips
			? { regime: 'tips', because: 'It tips before it slides.' }
			: { regime: 'slides', because: 'It slides before it tips.' };
		if (force === undefined || force > firstForce * (1 + 1e-9)) return first;
		return force < firstForce * (1 - 1e-9)
			? {
					regime: 'rests',
					because: `The push is too small for either; ${first.because.toLowerCase()}`
				}
			: { regime: tips ? 'about to tip' : 'about to slip', because: first.because };
	},
	noLimit: (_, ask) =>
		ask === 'tipForce' || ask === 'slideForce'
			? {
					regime: 'self-locks',
					because: 'However hard the push along this line, this does not happen.'
				}
			: undefined,
	diagram(values) {
		const v = allOf(values, 'weight', 'width', 'pushHeight', 'firstForce', 'forceAngle');
		if (!v) return undefined;
		const force = Math.min(values.force ?? v.firstForce, v.firstForce);
		if (!Number.isFinite(force)) return undefined;
		const [level, lift] = along(v.forceAngle, force);
		const half = v.width / 2;
		const normal = v.weight - lift;
		const x = (level * v.pushHeight + half * lift) / normal;
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
					vector: [level, lift]
				},
				{
					body: 'block',
					kind: 'normal',
					name: 'normal force',
					symbol: 'N',
					at: [x, 0],
					vector: [0, normal]
				},
				{
					body: 'block',
					kind: 'friction',
					name: 'friction',
					symbol: 'f',
					at: [x, 0],
					vector: [-level, 0]
				}
			]
		};
	},
	practice: {
		given: {
			...{ mass: [20, 120, 5], width: [0.3, 1, 0.05], pushHeight: [0.4, 1.6, 0.1] },
			...{ muStatic: [0.2, 0.7, 0.05], force: [20, 300, 10] },
			forceAngle: [-0.3490658503988659, 0.3490658503988659, 0.08726646259971647]
		},
		ask: ['slideForce', 'tipForce', 'firstForce', 'greatestHeight', 'normalOffset']
	}
});
