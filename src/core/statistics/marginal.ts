import { gaussLegendre } from './gauss-legendre.ts';
import type { Lattice } from './lattice.ts';
import { logSum } from './log-sum.ts';

const rule = gaussLegendre(6, 0, 1);
const degree = 7;

/** Natural log of the density of the first unknown, at even places, ascending. */
function marginal(lattice: Lattice): { at: number[]; log: number[] } {
	const { outer, outerValues, outerPlaces, starts, inner, logDensity } = lattice;
	if (outer === 0) return { at: [...inner], log: [...logDensity] };
	const places = new Map<number, { at: number; lines: number[] }>();
	for (let line = 0; line + 1 < starts.length; line += 1) {
		const place = outerPlaces[line * outer]!;
		const same = places.get(place);
		if (same) same.lines.push(line);
		else places.set(place, { at: outerValues[line * outer]!, lines: [line] });
	}
	const sorted = [...places.values()].sort((a, b) => a.at - b.at);
	const log = sorted.map(({ lines }) =>
		logSum(lines.map((line) => logSum(logDensity.subarray(starts[line], starts[line + 1]))))
	);
	return { at: sorted.map(({ at }) => at), log };
}

/** Lagrange interpolation through the places nearest to a cell; t counts places. */
function interpolate(log: readonly number[], cell: number, t: number): number {
	const last = Math.min(degree, log.length - 1);
	const first = Math.min(Math.max(0, cell - (last >> 1)), log.length - 1 - last);
	let value = 0;
	for (let i = first; i <= first + last; i += 1) {
		let term = log[i]!;
		for (let j = first; j <= first + last; j += 1) if (j !== i) term *= (t - j) / (i - j);
		value += term;
	}
	return value;
}

/** The first unknown of a lattice on its own, as a smooth density. */
export type Marginal = {
	/** The value below which a share lies, 0 < share < 1. */
	quantile(share: number): number;
	/** The share that lies below a value, 0 to 1. */
	below(value: number): number;
};

/**
 * The first unknown of a lattice, the others averaged out, as a smooth density.
 *
 * The logarithm of the marginal density is interpolated through the lattice's places by polynomials of degree 7,
 * its exponential integrated cell by cell with six Gauss–Legendre points, and the sum inverted by bisection.
 *
 * @param lattice whose first unknown is wanted
 * @returns shares below values and values below shares, in the unknown's own unit
 * Source: derived
 * Example: marginalOf(latticeOfTwoStandardNormals).quantile(0.5) → 0
 */
export function marginalOf(lattice: Lattice): Marginal {
	const { at, log } = marginal(lattice);
	const most = log.reduce((a, b) => Math.max(a, b), -Infinity);
	const part = (cell: number, until: number): number =>
		rule.points.reduce((sum, x, k) => {
			const value = interpolate(log, cell, cell + x * until);
			return sum + rule.weights[k]! * until * Math.exp(value - most);
		}, 0);
	const sums = [0];
	for (let cell = 0; cell + 1 < at.length; cell += 1) sums.push(sums[cell]! + part(cell, 1));
	const total = sums[sums.length - 1]!;
	const width = at[1]! - at[0]!;
	return {
		quantile(share) {
			const wanted = share * total;
			let cell = 0;
			while (cell + 2 < at.length && sums[cell + 1]! < wanted) cell += 1;
			let [low, high] = [0, 1];
			for (let round = 0; round < 50; round += 1) {
				const middle = (low + high) / 2;
				if (sums[cell]! + part(cell, middle) < wanted) low = middle;
				else high = middle;
			}
			return at[cell]! + ((low + high) / 2) * width;
		},
		below(value) {
			const place = (value - at[0]!) / width;
			if (place <= 0) return 0;
			if (place >= at.length - 1) return 1;
			const cell = Math.floor(place);
			return (sums[cell]! + part(cell, place - cell)) / total;
		}
	};
}
