import type { Lattice } from './lattice.ts';

/** What a lattice adds up to. */
export type LatticeSum = {
	/** Natural logarithm of the density's integral: the evidence, when the density is likelihood times prior. */
	logEvidence: number;
	/** Share of the whole at each point; sums to 1. */
	weights: Float64Array;
	/** Mean of each unknown, the innermost last. */
	mean: number[];
	/** How far the sum over every second point alone is off, as a share, one an unknown. */
	coarseness: number[];
};

/**
 * Adds up a lattice: evidence, shares and mean, and a check of its own spacing.
 *
 * Z ≈ V Σ exp(l_k). Every second point along one unknown gives the same integral at twice the spacing: for a
 * smooth density the error at the full spacing is at most about the square of that difference.
 *
 * @param lattice points, log densities and the volume V of a cell
 * @returns evidence (natural log), shares, means in the unknowns' own units, coarseness (no unit)
 * Source: trefethenWeideman2014, section 5; coarseness derived from it
 * Example: sumLattice(latticeOfStandardNormal).logEvidence → 0 within 1e-10
 */
export function sumLattice(lattice: Lattice): LatticeSum {
	const { outer, outerValues, outerPlaces, starts, inner, logDensity, innerStep, cell } = lattice;
	const unknowns = outer + 1;
	let most = -Infinity;
	for (let k = 0; k < logDensity.length; k += 1) if (logDensity[k]! > most) most = logDensity[k]!;
	const weights = new Float64Array(logDensity.length);
	const even = new Array<number>(unknowns).fill(0);
	const mean = new Array<number>(unknowns).fill(0);
	let total = 0;
	for (let line = 0; line + 1 < starts.length; line += 1) {
		let mass = 0;
		let first = 0;
		for (let k = starts[line]!; k < starts[line + 1]!; k += 1) {
			const weight = Math.exp(logDensity[k]! - most);
			weights[k] = weight;
			mass += weight;
			first += weight * inner[k]!;
			if (Math.round(inner[k]! / innerStep) % 2 === 0) even[outer]! += weight;
		}
		total += mass;
		mean[outer]! += first;
		for (let i = 0; i < outer; i += 1) {
			mean[i]! += mass * outerValues[line * outer + i]!;
			if (outerPlaces[line * outer + i]! % 2 === 0) even[i]! += mass;
		}
	}
	for (let i = 0; i < unknowns; i += 1) mean[i]! /= total;
	for (let k = 0; k < weights.length; k += 1) weights[k]! /= total;
	return {
		logEvidence: most + Math.log(total * cell),
		weights,
		mean,
		coarseness: even.map((part) => Math.abs((2 * part) / total - 1))
	};
}

/**
 * Covariance of a lattice's unknowns.
 *
 * Σ w (θ_i − mean_i)(θ_j − mean_j).
 *
 * @param lattice points
 * @param sum their shares and means
 * @returns symmetric matrix, the innermost unknown last, in the unknowns' own units
 * Source: trefethenWeideman2014
 * Example: covarianceOf(latticeOfStandardNormal, itsSum) → [[1]]
 */
export function covarianceOf(
	lattice: Lattice,
	{ weights, mean }: Pick<LatticeSum, 'weights' | 'mean'>
): number[][] {
	const { outer, outerValues, starts, inner } = lattice;
	const covariance = mean.map(() => new Array<number>(outer + 1).fill(0));
	const off = new Array<number>(outer + 1).fill(0);
	for (let line = 0; line + 1 < starts.length; line += 1) {
		let mass = 0;
		let first = 0;
		let second = 0;
		for (let k = starts[line]!; k < starts[line + 1]!; k += 1) {
			const d = inner[k]! - mean[outer]!;
			mass += weights[k]!;
			first += weights[k]! * d;
			second += weights[k]! * d * d;
		}
		for (let i = 0; i < outer; i += 1) off[i] = outerValues[line * outer + i]! - mean[i]!;
		for (let i = 0; i < outer; i += 1) {
			for (let j = 0; j <= i; j += 1) covariance[i]![j]! += mass * off[i]! * off[j]!;
			covariance[outer]![i]! += first * off[i]!;
		}
		covariance[outer]![outer]! += second;
	}
	return covariance.map((row, i) => row.map((value, j) => (j <= i ? value : covariance[j]![i]!)));
}
