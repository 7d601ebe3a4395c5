import { requireAllowed } from '../units/allowed-range.ts';

/**
 * Finds the friction ratio needed when something pushes the body outward by the same force at every load.
 * demand = tan(σ + atan(P/V))
 * @param slope σ of the hold below the horizontal, rad, between −π/2 and π/2
 * @param vertical V, what the hands carry, N, above 0
 * @param push P, N, positive away from the wall
 * @returns ratio of friction to normal force needed; Infinity where the pull leads off the hold
 * Sign: an outward push makes a heavier hang easier, an inward push makes it harder.
 * Valid for: a push that does not change with load (hips, knees or feet on the wall).
 * @throws RangeError for a field outside its range
 * Source: derived.
 * Example: slope 31°, 539.36575 N, push 20 N: 0.652479.
 */
export function steadyPushDemand(slope: number, vertical: number, push: number): number {
	requireAllowed('slope', slope, { above: -Math.PI / 2, below: Math.PI / 2, unit: 'rad' });
	requireAllowed('vertical', vertical, { above: 0, unit: 'N' });
	requireAllowed('push', push, { unit: 'N' });
	const direction = slope + Math.atan(push / vertical);
	return direction < Math.PI / 2 ? Math.tan(direction) : Infinity;
}

/**
 * Finds the steady push of an assist rope that stays on, leaning, while plates are added.
 * P = A sin φ
 * @param assistForce A, pull of the rope, N, 0 or more
 * @param lean φ of the rope from straight up, rad, between −π/2 and π/2, positive away from the wall
 * @returns push on the hands, N, positive away from the wall
 * Valid for: a rope whose pull and angle stay as they are while the body gets heavier.
 * @throws RangeError for a field outside its range
 * Source: derived.
 * Example: 100 N at 10° push by 17.36 N.
 */
export function counterweightPush(assistForce: number, lean: number): number {
	requireAllowed('assistForce', assistForce, { min: 0, unit: 'N' });
	requireAllowed('lean', lean, { above: -Math.PI / 2, below: Math.PI / 2, unit: 'rad' });
	return assistForce * Math.sin(lean);
}
