import { allOf, drawBlock } from '../statics/block-diagram.ts';
import * as q from '../statics/quantities.ts';
import { buildSetup } from '../statics/setup.ts';

/**
 * Two blocks on one incline, tied or touching, with different coefficients.
 * Formula: tan θ = (μ₁ W₁ + μ₂ W₂)/(W₁ + W₂); link T = W₁ (sin θ − μ₁ cos θ).
 * Sign: the link force is positive when it holds the first (lower) block back.
 * Valid for: a link along the slope that stays loaded. Source: derived
 */
export const twoOnIncline = buildSetup({
	id: 'two-on-incline',
	number: 5,
	title: 'Two blocks tied or touching on an incline',
	scene: 'Two blocks on the same incline are tied together, or touch.',
	notes: [
		'The first block is the lower one. A positive link force holds it back (a tie); a negative one pushes it (a touch).',
		'The link is at its limit angle unless a slope is given.'
	],
	quantities: [
		q.weight('weight1', 'weight of the first block', 'W_1'),
		q.weight('weight2', 'weight of the second block', 'W_2'),
		q.coefficient('mu1', 'friction coefficient of the first block', '\\mu_1'),
		q.coefficient('mu2', 'friction coefficient of the second block', '\\mu_2'),
		...[q.gravity, q.slope()],
		q.slope('limitAngle', 'slope at which both are about to slide', '\\theta_s'),
		q.signedForce('linkForce', 'force in the link at that slope', 'T'),
		q.acceleration('acceleration', 'acceleration down the slope', 'a')
	],
	lines: [
		[
			'limitAngle',
			'atan((mu1*weight1 + mu2*weight2)/(weight1 + weight2))',
			'Both weights drive, both frictions hold.'
		],
		[
			'linkForce',
			'weight1*(sin(limitAngle) - mu1*cos(limitAngle))',
			'What the first block cannot hold by itself.'
		],
		[
			'acceleration',
			'gravity*max(0, sin(slope) - (mu1*weight1 + mu2*weight2)/(weight1 + weight2)*cos(slope))',
			'Both together.'
		]
	],
	limits: ['limitAngle', 'linkForce'],
	regime(values) {
		const v = allOf(values, 'slope', 'limitAngle');
		if (!v) return { regime: 'about to slip', because: 'The slope is the limiting one.' };
		if (Math.abs(v.slope - v.limitAngle) <= 1e-9)
			return { regime: 'about to slip', because: 'The slope is the limiting one.' };
		return v.slope < v.limitAngle
			? { regime: 'rests', because: 'The slope is below the limiting one.' }
			: { regime: 'slides down', because: 'The slope is above the limiting one.' };
	},
	diagram(values) {
		const v = allOf(values, 'weight1', 'weight2', 'mu1', 'mu2', 'limitAngle', 'linkForce');
		if (!v) return undefined;
		const slope = v.limitAngle;
		const draw = (n: 1 | 2, weight: number, mu: number, pull: number) =>
			drawBlock({
				...{ id: `block${n}`, name: n === 1 ? 'first block' : 'second block', slope, weight },
				at: n === 1 ? [-Math.cos(slope), -Math.sin(slope)] : [Math.cos(slope), Math.sin(slope)],
				...{ normal: weight * Math.cos(slope), friction: mu * weight * Math.cos(slope) },
				others: [{ kind: 'rope', name: 'link', symbol: 'T', angle: slope, size: pull }]
			});
		const first = draw(1, v.weight1, v.mu1, v.linkForce);
		const second = draw(2, v.weight2, v.mu2, -v.linkForce);
		return {
			bodies: [first.body, second.body],
			forces: [...first.forces, ...second.forces],
			lines: []
		};
	},
	practice: {
		given: {
			...{ weight1: [20, 500, 10], weight2: [20, 500, 10] },
			...{ mu1: [0.1, 0.3, 0.02], mu2: [0.3, 0.6, 0.02] },
			slope: [0.4363323129985824, 0.7853981633974483, 0.017453292519943295]
		},
		ask: ['limitAngle', 'linkForce', 'acceleration']
	}
});
