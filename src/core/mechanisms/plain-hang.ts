import { loadAtNetMass } from '../mechanics/load-at-net-mass.ts';
import { evaluateHang, type HangResult } from '../strength/evaluate-hang.ts';
import type { Hang } from '../types.ts';

/**
 * Strips a set-up of everything that makes load matter: what a mechanism is then shown on, alone.
 * Plumb rope, no push, a flat hold at the patch's slope, a patch of fixed size, a constant ratio;
 * slope, patch and ratio are those the set-up has at the given load, hanging plumb
 * @param hang the person's own set-up
 * @param netMass the person's own load, kg, above 0
 * @returns the plain hang; its slip margin is the same at every load
 * Valid for: holds that a plumb pull presses on (slope below 90° in the middle of the patch).
 * @throws RangeError for a field outside its range, or a hold that a plumb pull leads off
 * Source: derived.
 * Example: the plain hang of a plain hang is itself.
 */
export function plainHang(hang: Hang, netMass: number): Hang {
	const here = plumbResult(hang, netMass);
	return {
		...hang,
		ropeAngle: 0,
		push: 0,
		slope: here.meanSlope,
		radius: undefined,
		friction: { kind: 'constant', coefficient: here.ratio },
		grip: { ...hang.grip, contact: { kind: 'fixed', padArea: here.padArea } }
	};
}

/**
 * Weighs a set-up at one load as it would be with a plumb rope and no push.
 * H = 0
 * @param hang the set-up
 * @param netMass m, kg, above 0
 * @returns forces, patch and ratio, as from evaluateHang
 * Valid for: holds that a plumb pull presses on.
 * @throws RangeError for a field outside its range, or a hold that a plumb pull leads off
 * Source: derived.
 * Example: at slope 32° and 70 kg on two hands the normal force is 291.07788 N.
 */
export function plumbResult(hang: Hang, netMass: number): HangResult {
	const plumb = { hangingMass: hang.hangingMass, ropeAngle: 0 };
	const here = evaluateHang(hang, loadAtNetMass(netMass, plumb));
	if (here.normal > 0 && here.pressure > 0) return here;
	throw new RangeError(
		`hang.slope must leave the middle of the patch below 1.5708 rad, but it is ${here.meanSlope}`
	);
}
