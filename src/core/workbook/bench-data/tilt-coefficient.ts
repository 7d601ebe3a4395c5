import { studentFactor } from './student-factor.ts';

/** Coefficient from several tilts: mean, spread, and the range that holds it in 95 of 100 cases. */
export type TiltResult = {
	coefficient: number;
	coefficientError: number;
	spread: number;
	likely: [low: number, high: number];
	/** Coefficient of each tilt. */
	each: number[];
};

/**
 * Friction coefficient from the angles at which something started to slide.
 * Formula: μ = mean of tan θ; standard error s/√n.
 * @param angles at least two angles, rad, above 0 and below 90°
 * @returns mean coefficient, standard error, spread of single tilts, likely range
 * Valid for: repeats under the same conditions.
 * Errors: RangeError naming the angle (counted from 1) at fault.
 * Source: derived
 * Example: tilts at 30° and 31° give a coefficient of 0.5891.
 */
export function tiltCoefficient(angles: number[]): TiltResult {
	if (angles.length < 2) throw new RangeError(`angles = ${angles.length}: at least 2 are needed`);
	angles.forEach((angle, index) => {
		if (!(angle > 0 && angle < Math.PI / 2))
			throw new RangeError(`angle ${index + 1} = ${angle} rad must lie between 0 and 1.5708 (90°)`);
	});
	const each = angles.map(Math.tan);
	const count = each.length;
	const coefficient = each.reduce((a, b) => a + b, 0) / count;
	const squares = each.reduce((total, x) => total + (x - coefficient) ** 2, 0);
	const spread = Math.sqrt(squares / (count - 1));
	const coefficientError = spread / Math.sqrt(count);
	const reach = studentFactor(count - 1) * coefficientError;
	return {
		...{ coefficient, coefficientError, spread, each },
		likely: [coefficient - reach, coefficient + reach]
	};
}

/**
 * Pairs of normal force and friction from a tilt of a loaded sled.
 * Formula: N = W cos θ, f = W sin θ.
 * @param tilts weight on the slope, N, and the angle at which it started, rad
 * @returns pairs for the fits
 * Source: derived
 * Example: 10 N at 30° is the pair (8.660, 5).
 */
export function pairsFromTilts(tilts: { weight: number; angle: number }[]) {
	return tilts.map(({ weight, angle }) => ({
		...{ normal: weight * Math.cos(angle), friction: weight * Math.sin(angle) }
	}));
}
