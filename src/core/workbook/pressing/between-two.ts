import { allOf } from '../statics/block-diagram.ts';
import * as q from '../statics/quantities.ts';
import { buildSetup } from '../statics/setup.ts';

/**
 * Something pressed between two upright faces: a book between hands, a climber between walls.
 * Formula: W ≤ (μ₁ + μ₂) N.
 * Valid for: upright, parallel faces. Source: openstaxUniversityPhysics, section 6.2.
 */
export const betweenTwo = buildSetup({
	id: 'between-two',
	number: 1,
	title: 'Pressed between two upright faces',
	scene: 'A body is pressed between two upright faces and held up by friction alone.',
	notes: ['Both faces press with the same force, or it would move sideways.'],
	quantities: [
		...[q.mass(), q.gravity, q.weight()],
		q.coefficient('mu1', 'friction coefficient of the first face', '\\mu_1', { default: 'mu2' }),
		q.coefficient('mu2', 'friction coefficient of the second face', '\\mu_2', { default: 'mu1' }),
		q.force('press', 'pressing force', 'N'),
		q.force('leastPress', 'least pressing force', 'N_{min}'),
		q.force('frictionLimit', 'greatest friction of both faces', 'f_{max}'),
		q.mass('greatestMass', 'greatest mass that is held', 'm_{max}', { open: false }),
		q.coefficient('neededMu', 'least coefficient, equal on both faces', '\\mu_{min}', { max: 1e6 })
	],
	lines: [
		['weight', 'mass*gravity', 'Weight is mass times g.'],
		['leastPress', 'weight/(mu1 + mu2)', 'Both frictions at their limit carry the weight.'],
		['frictionLimit', '(mu1 + mu2)*press', 'The most both faces can give.'],
		['greatestMass', 'frictionLimit/gravity', 'What that carries.'],
		['neededMu', 'weight/(2*press)', 'Each face carries half.']
	],
	limits: ['leastPress', 'frictionLimit', 'greatestMass', 'neededMu'],
	regime(values) {
		const v = allOf(values, 'weight', 'frictionLimit');
		if (!v) return undefined;
		if (Math.abs(v.frictionLimit - v.weight) <= 1e-9 * v.weight)
			return { regime: 'about to slip', because: 'Friction just carries the weight.' };
		return v.frictionLimit > v.weight
			? { regime: 'rests', because: 'Friction can carry the weight.' }
			: { regime: 'slides down', because: 'Friction cannot carry the weight.' };
	},
	noLimit: (values, ask) =>
		ask === 'leastPress' && values.mu1 === 0
			? {
					regime: 'impossible',
					because: 'Without friction no pressing force, however large, holds it.'
				}
			: undefined,
	diagram(values) {
		const press = values.press ?? values.leastPress;
		const v = allOf({ ...values, press: press ?? NaN }, 'weight', 'mu1', 'mu2', 'press');
		if (!v || (v.mu1 + v.mu2) * v.press < v.weight * (1 - 1e-12)) return undefined;
		const share = v.mu1 / (v.mu1 + v.mu2);
		const on = { body: 'body' };
		return {
			bodies: [
				{
					id: 'body',
					name: 'body',
					outline: [
						[-0.5, -0.7],
						[0.5, -0.7],
						[0.5, 0.7],
						[-0.5, 0.7]
					]
				}
			],
			lines: [
				{ name: 'first face', from: [-0.5, -1], to: [-0.5, 1] },
				{ name: 'second face', from: [0.5, -1], to: [0.5, 1] }
			],
			forces: [
				{ ...on, kind: 'weight', name: 'weight', symbol: 'W', at: [0, 0], vector: [0, -v.weight] },
				{
					...on,
					kind: 'normal',
					name: 'first face',
					symbol: 'N',
					at: [-0.5, 0],
					vector: [v.press, 0]
				},
				{
					...on,
					kind: 'normal',
					name: 'second face',
					symbol: 'N',
					at: [0.5, 0],
					vector: [-v.press, 0]
				},
				{
					...on,
					kind: 'friction',
					name: 'friction',
					symbol: 'f_1',
					at: [-0.5, 0],
					vector: [0, share * v.weight]
				},
				{
					...on,
					kind: 'friction',
					name: 'friction',
					symbol: 'f_2',
					at: [0.5, 0],
					vector: [0, (1 - share) * v.weight]
				}
			]
		};
	},
	practice: {
		given: {
			...{ mass: [1, 80, 1], mu1: [0.3, 0.9, 0.05], mu2: [0.3, 0.9, 0.05], press: [20, 900, 10] }
		},
		ask: ['leastPress', 'greatestMass', 'frictionLimit', 'neededMu']
	}
});
