/**
 * Says how long a session takes: every hang with its set-up, and a rest between any two.
 *
 * hangs · (set-up + target time) + (hangs − 1) · rest
 *
 * @param hangs number of hangs, warm-up included, whole, 0 or more
 * @param times target, rest and set-up time of a hang, s, each 0 or more
 * @returns seconds
 * @throws RangeError when a time or the number is below 0
 * Source: derived
 * Example: sessionSeconds(3, { target: 5, rest: 180, setup: 30 }) → 465
 */
export function sessionSeconds(
	hangs: number,
	times: { target: number; rest: number; setup: number }
): number {
	for (const [field, value] of Object.entries({ hangs, ...times })) {
		if (!(value >= 0)) throw new RangeError(`${field} is ${value}; it must be 0 or more`);
	}
	return hangs === 0 ? 0 : hangs * (times.setup + times.target) + (hangs - 1) * times.rest;
}
