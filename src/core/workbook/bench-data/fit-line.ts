import { checkPairs, leftOver, sum, type Fit, type Pair } from './pairs.ts';

/** Friction with a part that does not depend on load (adhesion). */
export type LineFit = Fit & {
	coefficient: number;
	coefficientError: number;
	/** Friction at no load, N. */
	intercept: number;
	interceptError: number;
};

/**
 * Fits a line with intercept to pairs of normal force and friction.
 * Formula: μ = Σ (N − N̄)(f − f̄)/Σ (N − N̄)², S = f̄ − μ N̄; errors from s² = Σ residual²/(n − 2).
 * @param pairs at least three pairs, N, not all at one load
 * @returns coefficient, intercept (N), their standard errors, residuals
 * Valid for: errors of the same size at every load.
 * Errors: RangeError naming the pair at fault, or that all loads are the same.
 * Source: nistStrd, Norris (checked against it).
 * Example: pairs (10, 6), (20, 10), (30, 14) give coefficient 0.4 and intercept 2 N.
 */
export function fitLine(pairs: Pair[]): LineFit {
	checkPairs(pairs, 3);
	const count = pairs.length;
	const meanNormal = sum(pairs, ({ normal }) => normal) / count;
	const meanFriction = sum(pairs, ({ friction }) => friction) / count;
	const squares = sum(pairs, ({ normal }) => (normal - meanNormal) ** 2);
	if (!(squares > 0)) throw new RangeError(`normal = ${meanNormal} N in every pair: vary the load`);
	const coefficient =
		sum(pairs, ({ normal, friction }) => (normal - meanNormal) * (friction - meanFriction)) /
		squares;
	const intercept = meanFriction - coefficient * meanNormal;
	const fit = leftOver(pairs, (normal) => intercept + coefficient * normal, 2);
	return {
		...fit,
		...{ coefficient, coefficientError: fit.spread / Math.sqrt(squares) },
		intercept,
		interceptError: fit.spread * Math.sqrt(1 / count + meanNormal ** 2 / squares)
	};
}
