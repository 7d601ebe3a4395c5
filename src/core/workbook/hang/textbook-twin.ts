import { loadAtNetMass } from '../../mechanics/load-at-net-mass.ts';
import { evaluateHang } from '../../strength/evaluate-hang.ts';
import type { Hang } from '../../types.ts';
import type { Values } from '../algebra/evaluate.ts';

/** A problem of the incline family that has the same forces as one hand of a hang. */
export type TextbookTwin = { family: 'incline'; given: Values; ask: string; sentence: string };

/**
 * Finds the textbook problem behind a hang: a block on an incline.
 * Formula: weight F (the load on one hand), slope σ + δ (the hold as the load sees it),
 * μ_s the ratio that the friction law gives at that load.
 * @param hang the hang
 * @param netMass net mass on the hands, kg, above 0
 * @returns the twin; undefined where the load leads off the hold or needs no friction
 * Valid for: one load; at another the twin has another coefficient, unless the ratio is constant.
 * Errors: RangeError naming the field at fault, from the hang's mechanics.
 * Source: derived
 * Example: 70 kg plumb on 32° with ratio 0.64 is a 343.2 N block on 32° with μ_s = 0.64.
 */
export function textbookTwin(hang: Hang, netMass: number): TextbookTwin | undefined {
	const { hangingMass, ropeAngle, push = 0 } = hang;
	const load = loadAtNetMass(netMass, { hangingMass, ropeAngle, push });
	const { force, normal, tangential, ratio } = evaluateHang(hang, load);
	if (!(normal > 0) || !(tangential >= 0)) return undefined;
	const slope = Math.atan2(tangential, normal);
	return {
		family: 'incline',
		given: { weight: force, slope, muStatic: ratio, force: 0, arrangement: 1 },
		ask: 'frictionNeeded',
		sentence:
			'One hand is a block on an incline: its weight is the load on the hand, its slope the hold as the load sees it.'
	};
}
