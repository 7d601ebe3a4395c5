import { allOf } from '../statics/block-diagram.ts';
import { add, along, type Vector } from '../statics/diagram.ts';
import * as q from '../statics/quantities.ts';
import { buildSetup } from '../statics/setup.ts';

/**
 * A rope or belt round a drum that does not turn, or turns beneath it.
 * Formula: larger force / smaller force ≤ exp(μ β); in a groove of half angle γ, μ/sin γ for μ.
 * Valid for: a limp, light rope. Source: derived
 */
export const ropeRoundDrum = buildSetup({
	id: 'rope-round-drum',
	number: 1,
	title: 'Rope round a drum or bar',
	scene: 'A rope goes round a fixed bar; a load hangs on one end and the other end is held.',
	notes: [
		'The wrap is the whole angle of contact; one turn is 2π.',
		'Half the groove angle is 90° for a flat drum. The size of the drum does not matter.'
	],
	quantities: [
		...[q.mass('loadMass', 'mass of the load', 'm'), q.gravity, q.weight('load', 'load', 'W')],
		q.coefficient('mu', 'friction coefficient', '\\mu'),
		q.ratio('turns', 'number of turns', 'n'),
		q.quantity('wrap', 'angle of wrap', '\\beta', 'rad', { min: 0, max: 1000 }),
		q.slope('grooveHalfAngle', 'half the groove angle', '\\gamma', {
			open: true,
			default: Math.PI / 2
		}),
		q.coefficient('muEffective', 'coefficient with the groove', "\\mu'", { max: 1e6 }),
		q.ratio('tensionRatio', 'greatest ratio of the two forces', 'k', { max: 1e300 }),
		q.force('holdForce', 'least force that holds the load', 'T_h'),
		q.force('raiseForce', 'force that just raises the load', 'T_r', { max: 1e300 }),
		q.force('force', 'force at the held end', 'T'),
		q.ratio('neededTurns', 'least number of turns for rest', 'n_{min}'),
		q.ratio('neededMu', 'least coefficient for rest', '\\mu_{min}')
	],
	lines: [
		['load', 'loadMass*gravity', 'Weight is mass times g.'],
		['wrap', '2*pi*turns', 'One turn is 2π.'],
		['muEffective', 'mu/sin(grooveHalfAngle)', 'A groove presses on both its sides.'],
		['tensionRatio', 'exp(muEffective*wrap)', 'Each bit of wrap multiplies the force.'],
		['holdForce', 'load/tensionRatio', 'The load is about to sink: friction helps.'],
		['raiseForce', 'load*tensionRatio', 'The load is about to rise: friction hinders.'],
		[
			'neededTurns',
			'abs(ln(load/force))/(2*pi*muEffective)',
			'The law, turned round for the wrap.'
		],
		['neededMu', 'abs(ln(load/force))/wrap', 'The law, turned round for the coefficient.']
	],
	limits: ['holdForce', 'raiseForce', 'tensionRatio', 'neededTurns', 'neededMu'],
	regime(values) {
		const v = allOf(values, 'holdForce', 'raiseForce', 'force');
		if (!v) return undefined;
		if (Math.abs(v.force / v.holdForce - 1) <= 1e-9)
			return { regime: 'about to slip', because: 'The load is about to sink.' };
		if (Math.abs(v.force / v.raiseForce - 1) <= 1e-9)
			return { regime: 'about to slip', because: 'The load is about to rise.' };
		if (v.force < v.holdForce) return { regime: 'slides', because: 'The load sinks.' };
		return v.force > v.raiseForce
			? { regime: 'slides', because: 'The load rises.' }
			: { regime: 'rests', because: 'The force lies between the two limits.' };
	},
	diagram(values) {
		const v = allOf(values, 'load', 'wrap', 'holdForce');
		if (!v) return undefined;
		const held = Math.min(values.force ?? v.holdForce, values.raiseForce ?? Infinity);
		const force = Math.max(held, v.holdForce);
		return drawDrum({ tight: v.load, slack: force, wrap: v.wrap, radius: 0.5 });
	},
	practice: {
		given: {
			...{
				load: [100, 2000, 10],
				mu: [0.1, 0.4, 0.01],
				turns: [0.25, 2.5, 0.25],
				force: [20, 400, 10]
			}
		},
		ask: ['holdForce', 'raiseForce', 'neededTurns', 'tensionRatio']
	}
});

/**
 * Rope and drum taken as one body: two pulls along the tangents and the force of the axle.
 * @param of forces in N, wrap in rad, drum radius in m; the load end leaves straight down on the right
 * @returns the diagram
 * Source: derived
 */
export function drawDrum(of: { tight: number; slack: number; wrap: number; radius: number }) {
	const { tight, slack, wrap, radius } = of;
	const away = along(wrap + Math.PI / 2, slack);
	const loaded: Vector = [0, -tight];
	const axle = add(loaded, away).map((x) => -x) as Vector;
	const circle = Array.from({ length: 72 }, (_, i) => along((i * Math.PI) / 36, radius));
	return {
		bodies: [{ id: 'drum', name: 'drum with rope', outline: circle }],
		lines: [],
		forces: [
			{
				body: 'drum',
				kind: 'rope' as const,
				name: 'loaded end',
				symbol: 'T_1',
				at: along(0, radius),
				vector: loaded
			},
			{
				body: 'drum',
				kind: 'rope' as const,
				name: 'held end',
				symbol: 'T_2',
				at: along(wrap, radius),
				vector: away
			},
			{
				body: 'drum',
				kind: 'reaction' as const,
				name: 'axle',
				symbol: 'R',
				at: [0, 0] as Vector,
				vector: axle
			}
		]
	};
}
