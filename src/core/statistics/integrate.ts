import type { LineDensity } from './line-density.ts';
import { layLattice, type Lattice } from './lattice.ts';
import { covarianceOf, sumLattice, type LatticeSum } from './lattice-sum.ts';
import { findPeak } from './peak.ts';
import { cholesky } from './symmetric.ts';

/** A density laid out and added up: evidence, and weighted points to average anything else over. */
export type Integral = { lattice: Lattice; sum: LatticeSum };

/** Spacing allowed to be off by at most this share at double spacing, hence by its square at the full one. */
export const usualCoarseness = 5e-4;

/** How closely and how far down to look. */
export type Closeness = {
	/** Spacing in posterior standard deviations, 0.2 to 1; 0.76 when left out. */
	step?: number;
	/** How far below the top to reach, nats; 26 when left out. */
	depth?: number;
	/** How much a sum over every second point may differ, as a share; 5e-4 when left out. */
	coarseness?: number;
	/** Widest spacing of each unknown in its own unit, given the means: for what will be averaged later. */
	most?: (mean: readonly number[]) => number[];
};

/**
 * Integrates a one-humped density to about 1e-7 of itself and returns the weighted points.
 *
 * First pass: peak and curvature, then coarse lattices until their moments settle. Second pass: steps of `step`
 * posterior standard deviations (at most one), down to exp(−depth) of the top, with closer steps along any
 * unknown whose every-second-point sum still differs.
 *
 * @param density likelihood times starting guess, told line by line
 * @param options how closely and how far down to look
 * @returns lattice and its sums
 * Source: trefethenWeideman2014; passes derived
 * Example: integrate(standardNormal).sum.logEvidence → 0 within 1e-10
 */
export function integrate(density: LineDensity, options: Closeness = {}): Integral {
	const { step = 0.76, depth = 26, coarseness = usualCoarseness } = options;
	const { point, covariance: curvature } = findPeak(density);
	let [mean, covariance] = [point, curvature];
	for (let pass = 0; pass < 6; pass += 1) {
		const steps = mean.map(() => 1.1);
		const coarse = layLattice(density, { mean, covariance, steps, depth: 12 });
		const sum = sumLattice(coarse);
		const found = covarianceOf(coarse, sum);
		const before = covariance;
		const ratios = found.map((row, k) => row[k]! / before[k]![k]!);
		// Steps far too wide for the density see one point: keep its place, and look again closer.
		const lost = ratios.some((r) => !(r > 0.02)) || !cholesky(found);
		mean = sum.mean;
		covariance = lost ? before.map((row) => row.map((value) => value / 9)) : found;
		if (!lost && !coarse.cutOff && ratios.every((r) => r > 0.7 && r < 1.5)) break;
	}
	const most = options.most?.(mean);
	let steps = mean.map((_, k) =>
		Math.min(step, (most?.[k] ?? Infinity) / Math.sqrt(covariance[k]![k]!))
	);
	for (let pass = 0; ; pass += 1) {
		const lattice = layLattice(density, { mean, covariance, steps, depth });
		const sum = sumLattice(lattice);
		const fine = sum.coarseness.every((c) => c <= coarseness);
		if (fine || pass === 8) return { lattice, sum };
		// The logarithm of the error grows at least as the inverse of the spacing: aim at half of what is allowed.
		steps = steps.map((s, k) => {
			const coarse = Math.min(sum.coarseness[k]!, 0.5);
			if (coarse <= coarseness) return s;
			return s * Math.max(0.5, Math.log(coarse) / Math.log(coarseness / 2));
		});
	}
}
