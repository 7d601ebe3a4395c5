import type { Values } from '../algebra/evaluate.ts';
import { allOf } from '../statics/block-diagram.ts';
import type { Verdict } from '../statics/types.ts';

/**
 * What a block on an incline does, from rest.
 * @param values quantities of the set-up, as far as known
 * @returns rests, about to slip, slides up or down, self-locks, lifts off; undefined when unsettled
 * Valid for: the set-up `block-on-incline`. Source: derived
 */
export function judgeIncline(values: Values): Verdict | undefined {
	const { slope, muStatic, force } = values;
	if (slope === undefined || muStatic === undefined) return undefined;
	const v = allOf(values, 'drive', 'normal', 'frictionLimit');
	if (force === 0 || !v) {
		if (force !== undefined && force !== 0) return undefined;
		const spare = muStatic - Math.tan(slope);
		if (Math.abs(spare) <= 1e-9 * Math.max(1, muStatic))
			return { regime: 'about to slip', because: 'The slope equals the friction angle.' };
		return spare > 0
			? {
					regime: 'self-locks',
					because: 'The slope is below the friction angle: any weight rests.'
				}
			: { regime: 'slides down', because: 'The slope is above the friction angle.' };
	}
	if (v.normal < 0) return { regime: 'lifts off', because: 'The force pulls it off the surface.' };
	const spare = v.frictionLimit - Math.abs(v.drive);
	const way = v.drive > 0 ? 'up' : 'down';
	if (Math.abs(spare) <= 1e-9 * Math.max(v.frictionLimit, Math.abs(v.drive)))
		return { regime: 'about to slip', because: `It is about to start ${way} the slope.` };
	if (spare > 0) return { regime: 'rests', because: 'Static friction can cancel the drive.' };
	return {
		regime: `slides ${way}`,
		because: `The drive ${way} the slope is above the static limit.`
	};
}
