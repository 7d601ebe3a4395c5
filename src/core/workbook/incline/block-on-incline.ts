import { allOf, drawBlock } from '../statics/block-diagram.ts';
import * as q from '../statics/quantities.ts';
import { buildSetup } from '../statics/setup.ts';
import { judgeIncline } from './judge-incline.ts';

/**
 * A block on an incline under its weight and one more force at any angle.
 * Formula: N = W cos θ − P sin β; drive D = P cos β − W sin θ; it rests while |D| ≤ μ_s N.
 * Sign: up the slope is positive; forceAngle β counts from up-slope, positive away from the surface;
 * forceElevation counts from the level (0 for a level push into the slope).
 * Valid for: a block that does not tip. Source: openstaxUniversityPhysics, sections 6.1 and 6.2.
 */
export const blockOnIncline = buildSetup({
	id: 'block-on-incline',
	number: 1,
	title: 'Block on an incline',
	scene: 'A block lies on an incline.',
	notes: [
		'Up the slope counts positive, for friction and for acceleration.',
		'The angle of the force counts from the up-slope direction, positive away from the surface; its elevation counts from the level.',
		'A negative hold force means that it rests by itself; its size is the force down the slope that would start it.',
		'Free sliding means: no force but weight, normal force and friction.'
	],
	quantities: [
		...[q.mass(), q.gravity, q.weight(), q.slope(), q.muStatic(), q.muKinetic()],
		q.force('force', 'applied force', 'P', { default: 0 }),
		q.direction('forceAngle', 'angle of the force from up-slope', '\\beta', { default: 0 }),
		q.direction('forceElevation', 'angle of the force above the level', '\\epsilon', {
			...{ min: -2 * Math.PI, max: 2 * Math.PI }
		}),
		q.force('normal', 'normal force', 'N'),
		q.force('downhillPart', 'part of the weight down the slope', 'W_\\parallel'),
		q.signedForce('drive', 'drive up the slope, friction aside', 'D'),
		q.force('frictionNeeded', 'friction needed for rest', 'f_n'),
		q.force('frictionLimit', 'greatest static friction', 'f_{max}'),
		q.force('slidingFriction', 'friction while sliding', 'f_k'),
		q.signedForce('friction', 'friction that acts, up the slope positive', 'f'),
		q.acceleration('acceleration', 'acceleration up the slope, starting from rest', 'a'),
		q.acceleration('accelerationMovingUp', 'acceleration up the slope while it moves up', 'a_{up}'),
		q.acceleration(
			...([
				'accelerationMovingDown',
				'acceleration up the slope while it moves down',
				'a_{dn}'
			] as const)
		),
		q.acceleration('freeDown', 'acceleration down the slope, sliding freely down', 'a_1'),
		q.acceleration('freeUp', 'slowing while it slides freely up', 'a_2'),
		q.signedForce('holdForce', 'least force that keeps it from sliding down', 'P_h'),
		q.force('startUpForce', 'greatest force before it starts up', 'P_s'),
		q.force('steadyUpForce', 'force for steady sliding up', 'P_u'),
		q.signedForce('steadyDownForce', 'force for steady sliding down', 'P_d'),
		q.slope('reposeAngle', 'steepest slope on which it rests by itself', '\\theta_s'),
		q.slope('steadyAngle', 'slope of steady free sliding', '\\theta_k'),
		q.force('leastUpForce', 'least force that starts it up, at its best angle', 'P_b'),
		q.force('smoothForce', 'force along this line that would hold it without friction', 'P_0'),
		q.fraction('efficiency', 'efficiency of pulling it up', '\\eta'),
		q.length('distance', 'distance slid down from rest', 'd'),
		q.time('slideTime', 'time of sliding freely down from rest', 't'),
		q.speed('endSpeed', 'speed after sliding freely down from rest', 'v')
	],
	lines: [
		['weight', 'mass*gravity', 'Weight is mass times g.'],
		['forceElevation', 'slope + forceAngle', 'The slope adds to the angle.'],
		['normal', 'weight*cos(slope) - force*sin(forceAngle)', 'Nothing moves off the surface.'],
		['downhillPart', 'weight*sin(slope)', 'Part of the weight along the slope.'],
		['drive', 'force*cos(forceAngle) - downhillPart', 'What would move it, friction aside.'],
		['frictionNeeded', 'abs(drive)', 'Friction must cancel the drive for rest.'],
		['frictionLimit', 'muStatic*normal', 'Static friction reaches at most this.'],
		['slidingFriction', 'muKinetic*normal', 'Friction while the surfaces slip.'],
		[
			'friction',
			'when(frictionNeeded <= frictionLimit, -drive, -sgn(drive)*slidingFriction)',
			'At rest friction is only what the drive needs; sliding, it opposes the slip.'
		],
		['acceleration', '(drive + friction)/mass', 'What is left over speeds it up.'],
		['accelerationMovingUp', '(drive - slidingFriction)/mass', 'Moving up, friction acts down.'],
		['accelerationMovingDown', '(drive + slidingFriction)/mass', 'Moving down, friction acts up.'],
		['freeDown', 'gravity*(sin(slope) - muKinetic*cos(slope))', 'The mass cancels.'],
		['freeUp', 'gravity*(sin(slope) + muKinetic*cos(slope))', 'Weight and friction both slow it.'],
		[
			'holdForce',
			'weight*(sin(slope) - muStatic*cos(slope))/(cos(forceAngle) - muStatic*sin(forceAngle))',
			'About to slide down: friction at its limit acts up.'
		],
		[
			'startUpForce',
			'weight*(sin(slope) + muStatic*cos(slope))/(cos(forceAngle) + muStatic*sin(forceAngle))',
			'About to slide up: friction at its limit acts down.'
		],
		[
			'steadyUpForce',
			'weight*(sin(slope) + muKinetic*cos(slope))/(cos(forceAngle) + muKinetic*sin(forceAngle))',
			'Steady motion up: forces balance, friction acts down.'
		],
		[
			'steadyDownForce',
			'weight*(sin(slope) - muKinetic*cos(slope))/(cos(forceAngle) - muKinetic*sin(forceAngle))',
			'Steady motion down: forces balance, friction acts up.'
		],
		['reposeAngle', 'atan(muStatic)', 'W sin θ equals μ W cos θ: the weight cancels.'],
		['steadyAngle', 'atan(muKinetic)', 'The same with kinetic friction.'],
		[
			'leastUpForce',
			'weight*sin(slope + reposeAngle)',
			'Best at the friction angle off the slope.'
		],
		[
			'smoothForce',
			'weight*sin(slope)/cos(forceAngle)',
			'Without friction only the weight along the slope counts.'
		],
		['efficiency', 'smoothForce/startUpForce', 'Useful force over real force.'],
		['slideTime', 'sqrt(2*distance/freeDown)', 'Even acceleration from rest.'],
		['endSpeed', 'sqrt(2*distance*freeDown)', 'Even acceleration from rest.']
	],
	limits: [...['frictionLimit', 'holdForce', 'startUpForce', 'reposeAngle', 'leastUpForce']],
	regime: judgeIncline,
	noLimit: (_, ask) =>
		ask === 'startUpForce' || ask === 'steadyUpForce'
			? {
					regime: 'self-locks',
					because: 'However hard the push along this line, it never slides up.'
				}
			: undefined,
	diagram(values) {
		const v = allOf(values, 'weight', 'normal', 'slope', 'force', 'forceAngle', 'friction');
		if (!v || v.normal < 0) return undefined;
		const { slope, force, forceAngle, weight, normal, friction } = v;
		const { body, forces } = drawBlock({
			...{ id: 'block', name: 'block', at: [0, 0], slope, weight, normal, friction },
			others: [
				{ kind: 'push', name: 'applied force', symbol: 'P', angle: slope + forceAngle, size: force }
			],
			...(values.mass !== undefined && {
				mass: values.mass,
				acceleration: values.acceleration ?? 0
			})
		});
		const along = [2 * Math.cos(slope), 2 * Math.sin(slope)] as const;
		const line = { name: 'incline', from: [-along[0], -along[1]] as [number, number] };
		return { bodies: [body], forces, lines: [{ ...line, to: [along[0], along[1]] }] };
	},
	practice: {
		given: {
			...{ mass: [2, 60, 1], muStatic: [0.3, 0.7, 0.05], muKinetic: [0.15, 0.28, 0.01] },
			slope: [0.17453292519943295, 0.7853981633974483, 0.017453292519943295],
			...{ force: [10, 500, 10], forceAngle: [0, 0.4363323129985824, 0.08726646259971647] }
		},
		ask: ['friction', 'acceleration', 'startUpForce', 'holdForce', 'steadyUpForce', 'normal']
	}
});
