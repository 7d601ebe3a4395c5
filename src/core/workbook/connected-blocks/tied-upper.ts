import { allOf, drawBlock } from '../statics/block-diagram.ts';
import { along } from '../statics/diagram.ts';
import * as q from '../statics/quantities.ts';
import { buildSetup } from '../statics/setup.ts';

/**
 * One block on another on an incline; the upper one is tied to the top, the lower slides out.
 * Formula: tan θ = [μ₁ W_u + μ₂ (W_u + W_l)]/W_l; T = W_u (sin θ + μ₁ cos θ).
 * Valid for: a tie along the slope. Source: derived
 */
export const tiedUpper = buildSetup({
	id: 'tied-upper',
	number: 6,
	title: 'Lower block slides out from under a tied one',
	scene:
		'Two blocks are stacked on an incline; the upper one is tied to the top, and the lower one is about to slide out.',
	notes: ['The tie is parallel to the slope.'],
	quantities: [
		q.weight('weightUpper', 'weight of the tied upper block', 'W_u'),
		q.weight('weightLower', 'weight of the lower block', 'W_l'),
		q.coefficient('muBetween', 'friction coefficient between the blocks', '\\mu_1', {
			default: 'muPlane'
		}),
		q.coefficient('muPlane', 'friction coefficient on the incline', '\\mu_2', {
			default: 'muBetween'
		}),
		q.slope('limitAngle', 'slope at which the lower block is about to slide', '\\theta_s'),
		q.force('tension', 'tension of the tie', 'T')
	],
	lines: [
		[
			'limitAngle',
			'atan((muBetween*weightUpper + muPlane*(weightUpper + weightLower))/weightLower)',
			'Friction on both faces of the lower block holds its weight.'
		],
		[
			'tension',
			'weightUpper*(sin(limitAngle) + muBetween*cos(limitAngle))',
			'The tie holds the upper block against weight and friction.'
		]
	],
	limits: ['limitAngle', 'tension', 'muBetween', 'muPlane', 'weightUpper', 'weightLower'],
	regime: () => ({ regime: 'about to slip', because: 'The lower block is about to slide out.' }),
	diagram(values) {
		const v = allOf(
			values,
			'weightUpper',
			'weightLower',
			'muBetween',
			'muPlane',
			'limitAngle',
			'tension'
		);
		if (!v) return undefined;
		const slope = v.limitAngle;
		const press = v.weightUpper * Math.cos(slope);
		const ground = (v.weightUpper + v.weightLower) * Math.cos(slope);
		const upper = drawBlock({
			...{ id: 'upper', name: 'upper block', at: along(slope + Math.PI / 2, 0.6), slope },
			...{ weight: v.weightUpper, normal: press, friction: -v.muBetween * press },
			others: [{ kind: 'rope', name: 'tie', symbol: 'T', angle: slope, size: v.tension }]
		});
		const lower = drawBlock({
			...{ id: 'lower', name: 'lower block', at: [0, 0], slope, width: 1.6 },
			...{ weight: v.weightLower, normal: ground, friction: v.muPlane * ground },
			others: [
				{
					kind: 'normal',
					name: 'from the upper block',
					symbol: 'N_1',
					angle: slope - Math.PI / 2,
					size: press
				},
				{
					kind: 'friction',
					name: 'between the blocks',
					symbol: 'f_1',
					angle: slope,
					size: v.muBetween * press
				}
			]
		});
		return {
			bodies: [lower.body, upper.body],
			forces: [...lower.forces, ...upper.forces],
			lines: []
		};
	},
	practice: {
		given: {
			...{ weightUpper: [10, 200, 5], weightLower: [40, 400, 10] },
			...{ muBetween: [0.1, 0.4, 0.02], muPlane: [0.1, 0.4, 0.02] }
		},
		ask: ['limitAngle', 'tension']
	}
});
