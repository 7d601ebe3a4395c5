/**
 * A density over one to four unknowns, told line by line: the outer unknowns are fixed first, then the
 * innermost one is walked along. Work that depends on the outer ones alone is so done once a line.
 */
export type LineDensity = {
	/** Where to look first, one value an unknown, the innermost last. */
	start: readonly number[];
	/** How far each unknown may reasonably lie from there: the sd of its starting guess. */
	scale: readonly number[];
	/** Fixes the outer unknowns. */
	enter(outer: readonly number[]): void;
	/** Natural logarithm of the density at a value of the innermost unknown. */
	at(inner: number): number;
	/** Told once the spacing along a line is fixed; from then on `at` sees its whole multiples only. */
	spaced?(step: number): void;
};

/**
 * Log density at one point.
 *
 * @param density told line by line
 * @param point one value an unknown, the innermost last
 * @returns natural logarithm of the density, −Infinity where it is 0
 * Source: derived
 * Example: densityAt(standardNormal, [0]) → -0.9189385332046727
 */
export function densityAt(density: LineDensity, point: readonly number[]): number {
	density.enter(point.slice(0, -1));
	return density.at(point[point.length - 1]!);
}
