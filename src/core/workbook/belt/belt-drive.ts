import { allOf } from '../statics/block-diagram.ts';
import * as q from '../statics/quantities.ts';
import { buildSetup } from '../statics/setup.ts';
import { drawDrum } from './rope-round-drum.ts';

/**
 * A belt that drives a pulley, on the point of slipping.
 * Formula: (T₁ − m v²)/(T₂ − m v²) = exp(μ β/sin γ), power (T₁ − T₂) v.
 * Valid for: even speed, a limp belt. Source: derived
 */
export const beltDrive = buildSetup({
	id: 'belt-drive',
	number: 2,
	title: 'Belt that drives a pulley',
	scene: 'A belt drives a pulley and is on the point of slipping.',
	notes: [
		'The wrap is the angle of contact. Half the groove angle is 90° for a flat belt.',
		'The mass of the belt counts only where it is given.'
	],
	quantities: [
		q.force('tight', 'tension of the tight side', 'T_1'),
		q.force('slack', 'tension of the slack side', 'T_2'),
		q.coefficient('mu', 'friction coefficient', '\\mu'),
		q.ratio('turns', 'number of turns', 'n'),
		q.quantity('wrap', 'angle of wrap', '\\beta', 'rad', { min: 0, max: 1000 }),
		q.slope('grooveHalfAngle', 'half the groove angle', '\\gamma', {
			open: true,
			default: Math.PI / 2
		}),
		q.length('diameter', 'diameter of the pulley', 'd', { round: 'diameter' }),
		q.length('radius', 'radius of the pulley', 'r', { round: 'radius' }),
		q.quantity('rate', 'turning rate', '\\omega', 'rad/s', { min: 0, max: 1e6 }),
		q.speed('speed', 'speed of the belt', 'v'),
		q.quantity('massPerLength', 'mass of the belt per metre', "m'", 'kg/m', {
			min: 0,
			max: 1e4,
			default: 0
		}),
		q.force('centrifugal', 'tension that only turns the belt', 'T_c', { default: 0 }),
		q.ratio('tensionRatio', 'greatest ratio of the tensions', 'k', { max: 1e300 }),
		q.force('netForce', 'useful force at the rim', 'F'),
		...[q.torque('torque', 'turning moment', 'M')],
		q.quantity('power', 'power', '\\Pi', 'W', { min: 0, max: 1e12 })
	],
	lines: [
		['wrap', '2*pi*turns', 'One turn is 2π.'],
		['radius', 'diameter/2', 'Half the diameter.'],
		['speed', 'radius*rate', 'Speed of the rim.'],
		['centrifugal', 'massPerLength*speed^2', 'Part of the tension that presses on nothing.'],
		['tensionRatio', 'exp(mu*wrap/sin(grooveHalfAngle))', 'Each bit of wrap multiplies the force.'],
		['slack', 'centrifugal + (tight - centrifugal)/tensionRatio', 'The belt is about to slip.'],
		['netForce', 'tight - slack', 'What turns the pulley.'],
		['torque', 'netForce*radius', 'Force times arm.'],
		['power', 'netForce*speed', 'Force times speed.']
	],
	limits: ['slack', 'tight', 'tensionRatio', 'netForce', 'torque', 'power'],
	regime: () => ({ regime: 'about to slip', because: 'The belt carries all it can.' }),
	diagram(values) {
		const v = allOf(values, 'tight', 'slack', 'wrap');
		if (!v) return undefined;
		return drawDrum({ ...v, radius: values.radius ?? 0.5 });
	},
	practice: {
		given: {
			...{
				tight: [200, 4000, 50],
				mu: [0.15, 0.4, 0.01],
				diameter: [0.2, 1.2, 0.05],
				rate: [10, 60, 1]
			},
			wrap: [2.443460952792061, 3.6651914291880923, 0.08726646259971647]
		},
		ask: ['slack', 'torque', 'power', 'netForce']
	}
});
