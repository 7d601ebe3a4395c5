/**
 * How much a leaning pull changes the friction a slope demands, as a logarithm.
 *
 * r = ln tan(σ + δ) − ln tan σ; a pull that leads away from the wall (δ > 0) asks for more.
 * Trials carry this less its mean over the planned trials, fixed when the plan is made.
 *
 * @param slope σ, slope of the hold below the horizontal, rad, 0 < σ < π/2
 * @param tilt δ, angle of the net pull from the vertical, rad, positive away from the wall
 * @returns r, no unit, positive is harder, 0 for a plumb pull
 * @throws RangeError when σ or σ + δ is not strictly between 0 and π/2
 * Source: derived (plane statics, demand = tan(σ + δ))
 * Example: ropeTerm(Math.PI / 6, (5 * Math.PI) / 180) → 0.19292672
 */
export function ropeTerm(slope: number, tilt: number): number {
	if (!(slope > 0 && slope < Math.PI / 2))
		throw new RangeError(`slope: ${slope} rad is not strictly between 0 and π/2`);
	const leaning = slope + tilt;
	if (!(leaning > 0 && leaning < Math.PI / 2))
		throw new RangeError(`slope + tilt: ${leaning} rad is not strictly between 0 and π/2`);
	return Math.log(Math.tan(leaning)) - Math.log(Math.tan(slope));
}
