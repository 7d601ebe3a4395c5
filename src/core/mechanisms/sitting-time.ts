import { requireAllowed } from '../units/allowed-range.ts';

/**
 * Finds the friction ratio after some time on the hold, on its way to a limit.
 * μ(t) = μ_∞ − (μ_∞ − μ_0) exp(−t/λ), μ_∞ = μ_0 (1 + (rise − 1)/(1 + n/fadeForce))
 * @param time t since first touch, s, 0 or more
 * @param o.coefficient μ_0 at first touch, 0 or more
 * @param o.rise final over first ratio, above 0; below 1 on surfaces that take up moisture
 * @param o.timeConstant λ, s, above 0
 * @param o.force n on one pad, N, 0 or more; needed with fadeForce only
 * @param o.fadeForce force at which half the rise is left, N, above 0; leave out for none
 * @returns ratio
 * Sign: load itself does not matter, unless the rise fades with force: then heavier is harder.
 * Valid for: smooth sealed surfaces (rising) or porous ones (falling). One study finds the time
 * constant the same at every load, another no effect of time at heavy load: fadeForce, an assumed
 * form, lets one try the second.
 * @throws RangeError for a field outside its range
 * Source: adams2013, dzidek2017pnas, jsme2003
 * Example: coefficient 0.5, rise 3, timeConstant 6 s: 1.13 after 6 s.
 */
export function sittingRatio(
	time: number,
	o: {
		coefficient: number;
		rise: number;
		timeConstant: number;
		force?: number;
		fadeForce?: number;
	}
): number {
	const { coefficient, rise, timeConstant, force = 0, fadeForce } = o;
	requireAllowed('time', time, { min: 0, unit: 's' });
	requireAllowed('coefficient', coefficient, { min: 0 });
	requireAllowed('rise', rise, { above: 0 });
	requireAllowed('timeConstant', timeConstant, { above: 0, unit: 's' });
	requireAllowed('force', force, { min: 0, unit: 'N' });
	if (fadeForce !== undefined) requireAllowed('fadeForce', fadeForce, { above: 0, unit: 'N' });
	const left = fadeForce === undefined ? 1 : 1 / (1 + force / fadeForce);
	const gain = coefficient * (rise - 1) * left;
	return coefficient + gain * -Math.expm1(-time / timeConstant);
}

/**
 * Finds the time constant from when a share of the way to the limit was reached.
 * λ = −t/ln(1 − share)
 * @param time t, s, above 0
 * @param share of the way, above 0 and below 1
 * @returns λ, s
 * Valid for: first-order settling.
 * @throws RangeError for a field outside its range
 * Source: derived.
 * Example: 95 % after 20 s: 6.68 s; 99 % after 20 s: 4.34 s.
 */
export function settlingTimeConstant(time: number, share: number): number {
	requireAllowed('time', time, { above: 0, unit: 's' });
	requireAllowed('share', share, { above: 0, below: 1 });
	return -time / Math.log1p(-share);
}
