import { allOf } from '../statics/block-diagram.ts';
import * as q from '../statics/quantities.ts';
import { buildSetup } from '../statics/setup.ts';

/**
 * A vehicle on a flat curve: does it skid or overturn first?
 * Formula: overturns at v = √(g r b/(2 h)), skids at v = √(μ g r).
 * Valid for: a flat road, no springs. Source: derived
 */
export const flatCurve = buildSetup({
	id: 'flat-curve',
	number: 3,
	title: 'Vehicle on a flat curve: skid or overturn',
	scene: 'A vehicle drives round a flat curve.',
	notes: ['The road is flat. The track is the distance between left and right wheels.'],
	quantities: [
		...[q.gravity, q.muStatic({ default: undefined }), q.speed()],
		q.length('radius', 'radius of the curve', 'r', { round: 'radius' }),
		q.length('track', 'track', 'b'),
		q.length('centreHeight', 'height of the centre of mass', 'h'),
		q.speed('tipSpeed', 'speed at which it would overturn', 'v_t'),
		q.speed('skidSpeed', 'speed at which it would skid', 'v_s'),
		q.speed('firstSpeed', 'speed at which the first of the two happens', 'v_1'),
		q.coefficient('criticalMu', 'coefficient above which it overturns first', '\\mu_c', {
			max: 1e6
		}),
		q.coefficient('neededMu', 'coefficient needed at its speed', '\\mu_{min}', { max: 1e6 })
	],
	lines: [
		['tipSpeed', 'sqrt(gravity*radius*track/(2*centreHeight))', 'Moments about the outer wheels.'],
		['skidSpeed', 'sqrt(muStatic*gravity*radius)', 'Friction gives the whole turning force.'],
		['firstSpeed', 'min(tipSpeed, skidSpeed)', 'The smaller comes first.'],
		['criticalMu', 'track/(2*centreHeight)', 'Both at once: speed, radius and weight cancel.'],
		['neededMu', 'speed^2/(gravity*radius)', 'Turning force over weight.']
	],
	limits: [],
	regime(values) {
		const v = allOf(values, 'tipSpeed', 'skidSpeed', 'firstSpeed');
		if (!v) return undefined;
		const first =
			v.tipSpeed < v.skidSpeed
				? { regime: 'tips', because: 'It overturns before it skids.' }
				: { regime: 'slides', because: 'It skids before it overturns.' };
		if (values.speed === undefined || values.speed > v.firstSpeed) return first;
		return {
			regime: 'rests',
			because: `It holds the road at this speed; ${first.because.toLowerCase()}`
		};
	},
	diagram(values) {
		const v = allOf(values, 'gravity', 'radius', 'track', 'centreHeight');
		if (!v) return undefined;
		const speed = values.speed ?? values.firstSpeed ?? values.tipSpeed ?? 0;
		const turning = (speed * speed) / v.radius;
		const half = v.track / 2;
		const top = 2 * v.centreHeight;
		return {
			bodies: [
				{
					...{ id: 'vehicle', name: 'vehicle, per kilogram', mass: 1, acceleration: [-turning, 0] },
					outline: [
						[-half, 0],
						[half, 0],
						[half, top],
						[-half, top]
					]
				}
			],
			lines: [{ name: 'road', from: [-2 * v.track, 0], to: [2 * v.track, 0] }],
			forces: [
				{
					body: 'vehicle',
					kind: 'weight',
					name: 'weight',
					symbol: 'W',
					at: [0, v.centreHeight],
					vector: [0, -v.gravity]
				},
				{
					...{
						body: 'vehicle',
						kind: 'normal',
						name: 'normal force',
						symbol: 'N',
						vector: [0, v.gravity]
					},
					at: [(turning * v.centreHeight) / v.gravity, 0]
				},
				{
					body: 'vehicle',
					kind: 'friction',
					name: 'friction',
					symbol: 'f',
					at: [0, 0],
					vector: [-turning, 0]
				}
			]
		};
	},
	practice: {
		given: {
			...{ radius: [20, 200, 5], track: [1.2, 1.8, 0.05], centreHeight: [0.5, 1.4, 0.05] },
			...{ muStatic: [0.4, 0.9, 0.05], speed: [5, 20, 0.5] }
		},
		ask: ['tipSpeed', 'skidSpeed', 'firstSpeed', 'criticalMu', 'neededMu']
	}
});
