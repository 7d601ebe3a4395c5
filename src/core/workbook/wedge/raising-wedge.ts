import * as q from '../statics/quantities.ts';
import { buildSetup } from '../statics/setup.ts';
import { drawWedge } from './wedge-drawing.ts';

/**
 * A wedge pushed level under a load that a guide keeps from going sideways.
 * Formula, raising: N = W/[cos α − μ₁ sin α − μ₃ (sin α + μ₁ cos α)], G = N (sin α + μ₁ cos α),
 * P = G + μ₂ [N (cos α − μ₁ sin α) + W_w]; slipping out: every friction turned round.
 * Sign: a negative hold force means that the wedge stays by itself and must be pulled out.
 * Valid for: one slanted face, a level floor, an upright guide. Source: derived
 */
export const raisingWedge = buildSetup({
	id: 'raising-wedge',
	number: 1,
	title: 'Wedge under a load',
	scene: 'A wedge is pushed level under a load that a guide or wall keeps from moving sideways.',
	notes: [
		'The load presses straight down; the guide is smooth unless a coefficient is given.',
		'A negative hold force means that the wedge stays by itself; its size is the pull that takes it out.'
	],
	quantities: [
		q.weight('load', 'load', 'W'),
		q.weight('wedgeWeight', 'weight of the wedge', 'W_w', { open: false, default: 0 }),
		q.slope('wedgeAngle', 'angle of the wedge', '\\alpha'),
		q.coefficient('muFace', 'friction coefficient of the slanted face', '\\mu_1', {
			default: 'muFloor'
		}),
		q.coefficient('muFloor', 'friction coefficient of the floor', '\\mu_2', { default: 'muFace' }),
		q.coefficient('muGuide', 'friction coefficient of the guide', '\\mu_3', { default: 0 }),
		q.force('push', 'push on the wedge', 'P'),
		q.force('faceForceUp', 'normal force on the slanted face, raising', 'N_1'),
		q.force('guideForceUp', 'force of the guide, raising', 'G'),
		q.force('floorForceUp', 'normal force of the floor, raising', 'N_2'),
		q.force('driveForce', 'push that just raises the load', 'P_r'),
		q.force('faceForceDown', 'normal force on the slanted face, slipping out', "N_1'"),
		q.signedForce('guideForceDown', 'force of the guide, slipping out', "G'"),
		q.force('floorForceDown', 'normal force of the floor, slipping out', "N_2'"),
		q.signedForce('holdForce', 'least push that keeps it from slipping out', 'P_h'),
		q.signedForce('withdrawForce', 'pull that just takes it out', 'P_w'),
		q.slope('lockAngle', 'greatest wedge angle that stays by itself (smooth guide)', '\\alpha_l', {
			max: Math.PI
		}),
		q.coefficient('lockMu', 'least coefficient on both faces to stay by itself', '\\mu_l')
	],
	lines: [
		[
			'faceForceUp',
			'load/(cos(wedgeAngle) - muFace*sin(wedgeAngle) - muGuide*(sin(wedgeAngle) + muFace*cos(wedgeAngle)))',
			'Upright forces on the load balance; friction on it acts down.'
		],
		[
			'guideForceUp',
			'faceForceUp*(sin(wedgeAngle) + muFace*cos(wedgeAngle))',
			'Level forces on the load.'
		],
		[
			'floorForceUp',
			'faceForceUp*(cos(wedgeAngle) - muFace*sin(wedgeAngle)) + wedgeWeight',
			'Upright forces on the wedge.'
		],
		['driveForce', 'guideForceUp + muFloor*floorForceUp', 'Level forces on the wedge.'],
		[
			'faceForceDown',
			'load/(cos(wedgeAngle) + muFace*sin(wedgeAngle) + muGuide*abs(sin(wedgeAngle) - muFace*cos(wedgeAngle)))',
			'Upright forces on the load; every friction turned round.'
		],
		[
			'guideForceDown',
			'faceForceDown*(sin(wedgeAngle) - muFace*cos(wedgeAngle))',
			'Level forces on the load.'
		],
		[
			'floorForceDown',
			'faceForceDown*(cos(wedgeAngle) + muFace*sin(wedgeAngle)) + wedgeWeight',
			'Upright forces on the wedge.'
		],
		['holdForce', 'guideForceDown - muFloor*floorForceDown', 'Level forces on the wedge.'],
		['withdrawForce', '-holdForce', 'The same, the other way.'],
		['lockAngle', 'atan(muFace) + atan(muFloor)', 'Both reactions in one line.'],
		['lockMu', 'tan(wedgeAngle/2)', 'The same with equal coefficients.']
	],
	limits: ['driveForce', 'holdForce', 'withdrawForce', 'lockAngle', 'lockMu', 'faceForceUp'],
	regime(values) {
		const { push, driveForce, holdForce } = values;
		if (holdForce === undefined) return undefined;
		if (push !== undefined && driveForce !== undefined) {
			if (driveForce > 0 && Math.abs(push - driveForce) <= 1e-9 * driveForce)
				return { regime: 'about to slip', because: 'The push just raises the load.' };
			if (driveForce > 0 && push > driveForce)
				return { regime: 'slides in', because: 'The push raises the load.' };
			if (push < holdForce)
				return { regime: 'slides out', because: 'The push is too small to hold it.' };
			if (push > 0) return { regime: 'rests', because: 'The push lies between the two limits.' };
		}
		return holdForce <= 0
			? { regime: 'self-locks', because: 'Friction alone keeps the wedge in, under any load.' }
			: { regime: 'slides out', because: 'Without a push it slips out.' };
	},
	noLimit: (_, ask) =>
		['driveForce', 'faceForceUp', 'guideForceUp', 'floorForceUp'].includes(ask)
			? { regime: 'self-locks', because: 'However hard the push, the load is not raised.' }
			: undefined,
	stretches: {
		push: {
			...{ from: 'holdForce', to: 'driveForce' },
			because: 'Any push between the least that holds and the one that raises the load will do.'
		}
	},
	diagram: drawWedge,
	practice: {
		given: {
			...{
				load: [500, 8000, 100],
				wedgeAngle: [0.08726646259971647, 0.3490658503988659, 0.017453292519943295]
			},
			...{ muFace: [0.1, 0.35, 0.01], muFloor: [0.1, 0.35, 0.01], muGuide: [0, 0.3, 0.05] }
		},
		ask: ['driveForce', 'holdForce', 'faceForceUp', 'lockAngle', 'lockMu']
	}
});
