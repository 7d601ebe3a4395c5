import { cholesky, solveWith } from './symmetric.ts';

/** A function to climb: its value, its slope, and a matrix that says how it bends. */
export type Hill = {
	value: number;
	slope: number[];
	/** Positive definite stand-in for minus the curvature. */
	bend: number[][];
	/** Minus the curvature itself, where it is known; otherwise it is found by differences of the slope. */
	curvature?: number[][];
};

/** Where a climb ended. */
export type Summit = { point: number[]; hill: Hill; converged: boolean; lastMove: number[] };

/** Minus the curvature by differences of the slope: what Newton's method needs near the top. */
function bendByDifferences(
	hillAt: (point: number[]) => Hill,
	point: number[],
	bend: number[][]
): number[][] {
	const columns = point.map((_, j) => {
		const step = 1e-4 / Math.sqrt(Math.max(bend[j]![j]!, 1e-12));
		const moved = (by: number): number[] => point.map((p, k) => (k === j ? p + by : p));
		const up = hillAt(moved(step)).slope;
		const down = hillAt(moved(-step)).slope;
		return up.map((u, i) => -(u - down[i]!) / (2 * step));
	});
	return columns.map((column, i) => column.map((value, j) => (value + columns[j]![i]!) / 2));
}

/**
 * Climbs to the top of a smooth hill by Newton's method with halved steps.
 *
 * Moves by bend⁻¹ slope, halved until the value rises; the bend is the one given (expected information), or by
 * differences of the slope once that is nearly a top, so that the last digits come fast.
 *
 * @param hillAt value, slope and bend at a point
 * @param start first point
 * @param rounds most moves to make
 * @returns the last point; converged when a further move would gain less than 1e-20 of curvature-scaled slope
 * Source: nocedalWright2006, sections 3.1 and 3.3
 * Example: climb(parabola, [3], 50).point → [0]
 */
export function climb(
	hillAt: (point: number[]) => Hill,
	start: readonly number[],
	rounds: number
): Summit {
	let point = [...start];
	let hill = hillAt(point);
	let move = point.map(() => 0);
	for (let round = 0; round < rounds; round += 1) {
		const expected = cholesky(hill.bend);
		const sharp = expected
			? cholesky(hill.curvature ?? bendByDifferences(hillAt, point, hill.bend))
			: undefined;
		const root = sharp ?? expected;
		if (!root) break;
		move = solveWith(root, hill.slope);
		const gain = move.reduce((sum, m, k) => sum + m * hill.slope[k]!, 0);
		if (gain < 1e-20) return { point, hill, converged: true, lastMove: move };
		let part = 1;
		let next = hill;
		let moved = point;
		while (part > 1e-10) {
			moved = point.map((p, k) => p + part * move[k]!);
			next = hillAt(moved);
			if (next.value >= hill.value) break;
			part /= 2;
		}
		// Rounding alone is left to climb.
		if (part <= 1e-10) return { point, hill, converged: gain < 1e-10, lastMove: move };
		const stuck = next.value === hill.value && gain < 1e-12;
		[point, hill] = [moved, next];
		if (stuck) return { point, hill, converged: true, lastMove: move };
	}
	return { point, hill, converged: false, lastMove: move };
}
