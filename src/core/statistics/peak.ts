import { densityAt, type LineDensity } from './line-density.ts';
import { cholesky, inverseWith, solveWith } from './symmetric.ts';

/** Where a density is highest, and the covariance that its curvature there suggests. */
export type Peak = { point: number[]; covariance: number[][] };

function derivatives(density: LineDensity, point: number[], steps: number[]) {
	const shifted = (...moves: [number, number][]): number => {
		const moved = [...point];
		for (const [k, times] of moves) moved[k]! += times * steps[k]!;
		return densityAt(density, moved);
	};
	const here = densityAt(density, point);
	const up = point.map((_, k) => shifted([k, 1]));
	const down = point.map((_, k) => shifted([k, -1]));
	const slope = point.map((_, k) => (up[k]! - down[k]!) / (2 * steps[k]!));
	const bend = point.map((_, i) =>
		point.map((_, j) => {
			if (i === j) return -(up[i]! - 2 * here + down[i]!) / steps[i]! ** 2;
			const mixed =
				shifted([i, 1], [j, 1]) -
				shifted([i, 1], [j, -1]) -
				shifted([i, -1], [j, 1]) +
				shifted([i, -1], [j, -1]);
			return -mixed / (4 * steps[i]! * steps[j]!);
		})
	);
	return { here, slope, bend };
}

function stabilised(bend: number[][], scale: readonly number[]): number[][] {
	for (let extra = 0; ; extra = extra === 0 ? 1e-3 : extra * 4) {
		const root = cholesky(
			bend.map((row, i) =>
				row.map((value, j) => (i === j ? value + extra / scale[i]! ** 2 : value))
			)
		);
		if (root) return root;
		if (extra > 1e12) return scale.map((s, i) => scale.map((_, j) => (i === j ? 1 / s : 0)));
	}
}

/**
 * Finds roughly where a density is highest and how wide it is there; only a starting point for lattices.
 *
 * Newton's method with differences for derivatives, damped until the curvature is that of a hill and the step
 * climbs; ends when a further step would gain less than 1e-3.
 *
 * @param density told line by line
 * @returns the point and the inverse of the curvature
 * Source: nocedalWright2006, section 3.4
 * Example: findPeak(standardNormal).point → [0]
 */
export function findPeak(density: LineDensity): Peak {
	let point = [...density.start];
	let steps = density.scale.map((s) => 0.05 * s);
	let root: number[][] = [];
	for (let round = 0; round < 60; round += 1) {
		const { here, slope, bend } = derivatives(density, point, steps);
		root = stabilised(bend, density.scale);
		const move = solveWith(root, slope);
		const gain = move.reduce((sum, m, k) => sum + m * slope[k]!, 0);
		const spread = inverseWith(root).map((row, k) => Math.sqrt(row[k]!));
		steps = steps.map((s, k) => Math.min(s, 0.1 * spread[k]!));
		if (gain < 1e-3) break;
		let part = Math.min(1, ...move.map((m, k) => (3 * density.scale[k]!) / Math.abs(m)));
		while (part > 1e-6) {
			const next = point.map((p, k) => p + part * move[k]!);
			if (densityAt(density, next) > here) {
				point = next;
				break;
			}
			part /= 2;
		}
		if (part <= 1e-6) break;
	}
	return { point, covariance: inverseWith(root) };
}
