import { allOf } from '../statics/block-diagram.ts';
import { along } from '../statics/diagram.ts';
import * as q from '../statics/quantities.ts';
import { buildSetup } from '../statics/setup.ts';

/**
 * A wedge with two slanted faces driven into a log.
 * Formula: drive P = 2 N (sin α/2 + μ cos α/2); it stays by itself while μ ≥ tan α/2.
 * Valid for: an even wedge, its weight left out. Source: derived
 */
export const splittingWedge = buildSetup({
	id: 'splitting-wedge',
	number: 3,
	title: 'Wedge driven into a log',
	scene: 'An even wedge is driven into a log and left there.',
	notes: [
		'The angle is the whole angle between the two faces. The weight of the wedge is left out.'
	],
	quantities: [
		q.slope('wedgeAngle', 'angle between the faces', '\\alpha', { max: Math.PI }),
		...[
			q.coefficient('mu', 'friction coefficient', '\\mu'),
			q.force('grip', 'normal force on each face', 'N')
		],
		q.coefficient('lockMu', 'least coefficient to stay by itself', '\\mu_l', { max: 1e17 }),
		q.slope('lockAngle', 'greatest angle that stays by itself', '\\alpha_l', { max: Math.PI }),
		q.force('driveForce', 'push that drives it in', 'P'),
		q.signedForce('withdrawForce', 'pull that takes it out', 'P_w')
	],
	lines: [
		['lockMu', 'tan(wedgeAngle/2)', 'Both face reactions in one line: the grip cancels.'],
		['lockAngle', '2*atan(mu)', 'The same, turned round.'],
		[
			'driveForce',
			'2*grip*(sin(wedgeAngle/2) + mu*cos(wedgeAngle/2))',
			'Both faces push and rub back.'
		],
		['withdrawForce', '2*grip*(mu*cos(wedgeAngle/2) - sin(wedgeAngle/2))', 'Friction turned round.']
	],
	limits: ['lockMu', 'lockAngle', 'driveForce', 'withdrawForce'],
	regime(values) {
		const v = allOf(values, 'mu', 'lockMu');
		if (!v) return undefined;
		if (Math.abs(v.mu - v.lockMu) <= 1e-9)
			return { regime: 'about to slip', because: 'It just stays.' };
		return v.mu > v.lockMu
			? { regime: 'self-locks', because: 'It stays however hard the log presses.' }
			: { regime: 'slides out', because: 'The log presses it out.' };
	},
	diagram(values) {
		const v = allOf(values, 'wedgeAngle', 'mu', 'grip', 'driveForce');
		if (!v) return undefined;
		const half = v.wedgeAngle / 2;
		const side = (sign: 1 | -1) => {
			const at: [number, number] = [sign * Math.tan(half) * 0.5, 0.5];
			return [
				{
					...{ body: 'wedge', kind: 'normal' as const, name: 'face', symbol: 'N', at },
					vector: along(sign === 1 ? Math.PI - half : half, v.grip)
				},
				{
					...{ body: 'wedge', kind: 'friction' as const, name: 'friction', symbol: 'f', at },
					vector: along(Math.PI / 2 - sign * half, v.mu * v.grip)
				}
			];
		};
		const top = Math.tan(half);
		return {
			bodies: [
				{
					id: 'wedge',
					name: 'wedge',
					outline: [
						[0, 0],
						[top, 1],
						[-top, 1]
					]
				}
			],
			lines: [],
			forces: [
				{
					body: 'wedge',
					kind: 'push',
					name: 'push',
					symbol: 'P',
					at: [0, 1],
					vector: [0, -v.driveForce]
				},
				...side(1),
				...side(-1)
			]
		};
	},
	practice: {
		given: {
			...{ wedgeAngle: [0.17453292519943295, 0.6981317007977318, 0.03490658503988659] },
			...{ mu: [0.1, 0.5, 0.02], grip: [200, 3000, 100] }
		},
		ask: ['lockMu', 'lockAngle', 'driveForce', 'withdrawForce']
	}
});
