import { checkPairs, leftOver, sum, type Fit, type Pair } from './pairs.ts';

/** Friction in proportion to load: one coefficient and its standard error. */
export type ProportionalFit = Fit & { coefficient: number; coefficientError: number };

/**
 * Fits a line through the origin to pairs of normal force and friction.
 * Formula: μ = Σ N f/Σ N²; standard error s/√(Σ N²), s² = Σ residual²/(n − 1).
 * @param pairs at least two pairs, N
 * @returns coefficient (no unit), its standard error, residuals
 * Valid for: errors of the same size at every load.
 * Errors: RangeError naming the pair at fault.
 * Source: nistStrd, NoInt1 and NoInt2 (checked against it).
 * Example: pairs (4, 3), (5, 4), (6, 4) give 0.7272727 ± 0.0420827.
 */
export function fitThroughOrigin(pairs: Pair[]): ProportionalFit {
	checkPairs(pairs, 2);
	const squares = sum(pairs, ({ normal }) => normal * normal);
	const coefficient = sum(pairs, ({ normal, friction }) => normal * friction) / squares;
	const fit = leftOver(pairs, (normal) => coefficient * normal, 1);
	return { ...fit, coefficient, coefficientError: fit.spread / Math.sqrt(squares) };
}
