import { allOf } from '../statics/block-diagram.ts';
import * as q from '../statics/quantities.ts';
import { buildSetup } from '../statics/setup.ts';
import { drawLadder } from './ladder-drawing.ts';
import { ladderLines, ladderQuantities } from './ladder-quantities.ts';

/**
 * A ladder with friction at both ends, on the point of slipping.
 * Formula: N_f = (W + W_p)/(1 + μ_f μ_w), N_w = μ_f N_f, tan θ = (c W + s W_p)/N_w − μ_w.
 * Valid for: slipping at both ends at once; short of it the two frictions share in many ways. Source: derived
 */
export const roughWall = buildSetup({
	id: 'rough-wall',
	number: 2,
	title: 'Ladder with friction at floor and wall',
	scene: 'A ladder leans against a rough wall and stands on a rough floor.',
	notes: [
		'Normal forces are those on the point of slipping. Short of it floor and wall share the load in many ways.',
		'A person without a stated place is taken at the top, the worst place.'
	],
	quantities: [
		...ladderQuantities,
		q.coefficient('muFloor', 'friction coefficient of the floor', '\\mu_f', { default: 'muWall' }),
		q.coefficient('muWall', 'friction coefficient of the wall', '\\mu_w', { default: 'muFloor' }),
		q.force('floorNormal', 'normal force of the floor when about to slip', 'N_f'),
		q.force('wallNormal', 'normal force of the wall when about to slip', 'N_w'),
		q.force('wallFriction', 'friction at the wall when about to slip', 'f_w'),
		q.slope('leastAngle', 'least angle with the floor', '\\theta_{min}'),
		q.ratio('climbFraction', 'farthest place of the person, as a part of the length', 's_{max}'),
		q.length('climbDistance', 'farthest distance of the person from the foot', 'x_{max}', {
			open: false
		})
	],
	lines: [
		...ladderLines,
		['floorNormal', '(weight + personWeight)/(1 + muFloor*muWall)', 'Both ends at their limit.'],
		['wallNormal', 'muFloor*floorNormal', 'The two level forces balance.'],
		['wallFriction', 'muWall*wallNormal', 'Friction at the wall at its limit.'],
		[
			'leastAngle',
			'atan(max(0, (weight*centreFraction + personWeight*personFraction)/wallNormal - muWall))',
			'Moments about the foot.'
		],
		[
			'climbFraction',
			'(wallNormal*(tan(angle) + muWall) - weight*centreFraction)/personWeight',
			'Moments about the foot.'
		],
		['climbDistance', 'climbFraction*length', 'Measured along the ladder.']
	],
	limits: [
		...['floorNormal', 'wallNormal', 'wallFriction', 'leastAngle', 'climbFraction', 'climbDistance']
	],
	regime(values) {
		const v = allOf(values, 'angle', 'leastAngle', 'muFloor');
		if (!v) return undefined;
		if (Math.abs(v.angle - v.leastAngle) <= 1e-9)
			return { regime: 'about to slip', because: 'Both ends are at their limit.' };
		if (v.angle < v.leastAngle)
			return { regime: 'slides', because: 'The ladder is flatter than the least angle.' };
		return v.muFloor * Math.tan(v.angle) >= 1
			? { regime: 'self-locks', because: 'So steep a ladder rests under any load at any place.' }
			: { regime: 'rests', because: 'The ladder is steeper than the least angle.' };
	},
	diagram(values) {
		const angle = values.angle ?? values.leastAngle;
		const v = allOf(
			...([
				{ ...values, angle: angle ?? NaN },
				'angle',
				'leastAngle',
				'weight',
				'personWeight'
			] as const),
			...(['centreFraction', 'personFraction', 'muFloor', 'muWall'] as const)
		);
		if (!v || v.angle < v.leastAngle - 1e-9 || v.angle === 0) return undefined;
		const moment = v.weight * v.centreFraction + v.personWeight * v.personFraction;
		const smooth = moment / Math.tan(v.angle);
		// At rest one of the possible sharings is drawn: no wall friction if the floor can do alone.
		const alone = smooth <= v.muFloor * (v.weight + v.personWeight);
		const normal = alone ? smooth : moment / (Math.tan(v.angle) + v.muWall);
		return drawLadder(
			{ ...values, angle: v.angle },
			{ normal, friction: alone ? 0 : v.muWall * normal }
		);
	},
	practice: {
		given: {
			...{ length: [3, 8, 0.5], weight: [80, 250, 10], personWeight: [500, 900, 10] },
			...{ personFraction: [0.3, 0.9, 0.05], muFloor: [0.25, 0.5, 0.02], muWall: [0.1, 0.4, 0.02] },
			angle: [0.9599310885968813, 1.2217304763960306, 0.017453292519943295]
		},
		ask: ['leastAngle', 'climbDistance', 'floorNormal', 'wallNormal']
	}
});
