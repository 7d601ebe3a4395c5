import type { LineDensity } from './line-density.ts';
import { Growing } from './growing.ts';
import { cholesky, inverseWith } from './symmetric.ts';
import { walkLine } from './walk-line.ts';

/** Points of an even, sheared lattice over the part of a density that matters, gathered in lines. */
export type Lattice = {
	/** Number of outer unknowns. */
	outer: number;
	/** Outer unknowns of each line, line after line. */
	outerValues: Float64Array;
	/** Whole lattice coordinates of each line, line after line. */
	outerPlaces: Int16Array;
	/** Where each line's points begin; one more entry than lines. */
	starts: Int32Array;
	/** Innermost unknown at each point. */
	inner: Float64Array;
	/** Natural logarithm of the density at each point. */
	logDensity: Float64Array;
	/** Distance between neighbours along a line. */
	innerStep: number;
	/** Volume that one point stands for. */
	cell: number;
	/** True when the lattice met its outermost edge, so that part of the density lies beyond. */
	cutOff: boolean;
};

/** How a lattice is laid: around which moments, how close, and how far down the density it reaches. */
export type Laying = {
	mean: readonly number[];
	covariance: readonly (readonly number[])[];
	/** Spacing in standard deviations, one an unknown, the innermost last. */
	steps: readonly number[];
	/** Points this much below the highest log density are left out. */
	depth: number;
};

/** How many places the outer unknowns may lie from the middle, by their number: far beyond any hump. */
const edges = [0, 1000, 200, 60];

/**
 * Lays an even lattice over every point where a one-humped density matters, by flooding from its middle.
 *
 * Outer unknowns at mean + L (steps ∘ k), L Lᵀ their covariance, k whole numbers; the innermost at whole
 * multiples of its conditional sd times its step. Neighbouring lines are visited while their tops stand above
 * the floor (highest log density − depth). The sum of densities times the cell's volume is the trapezoid rule.
 *
 * @param density told line by line
 * @param laying moments, spacing and depth
 * @returns the lattice's points
 * Source: trefethenWeideman2014 (trapezoid rule); flooding derived
 * Example: layLattice(standardNormal, { mean: [0], covariance: [[1]], steps: [0.7], depth: 26 }).inner.length → 21
 */
export function layLattice(density: LineDensity, laying: Laying): Lattice {
	const { mean, covariance, steps, depth } = laying;
	const outer = mean.length - 1;
	const precision = inverseWith(cholesky(covariance)!);
	const innerSd = 1 / Math.sqrt(precision[outer]![outer]!);
	const lean = precision[outer]!.slice(0, outer).map((p) => -p * innerSd * innerSd);
	const root = outer ? cholesky(covariance.slice(0, outer).map((row) => row.slice(0, outer)))! : [];
	const innerStep = steps[outer]! * innerSd;
	density.spaced?.(innerStep);

	const edge = edges[outer]!;
	const width = 2 * edge + 1;
	const seen = new Uint8Array(width ** outer);
	const queue: number[][] = [new Array<number>(outer).fill(0)];
	const indexOf = (places: number[]): number =>
		places.reduce((sum, k) => sum * width + k + edge, 0);
	seen[indexOf(queue[0]!)] = 1;
	const outerValues = new Growing();
	const places: number[] = [];
	const starts = [0];
	const inner = new Growing();
	const logDensity = new Growing();
	let highest = -Infinity;
	let cutOff = false;
	const floor = (top: number): number => {
		if (top > highest) highest = top;
		return highest - depth;
	};
	for (let at = 0; at < queue.length; at += 1) {
		const k = queue[at]!;
		const values = root.map((row, i) => {
			let value = mean[i]!;
			for (let j = 0; j <= i; j += 1) value += row[j]! * steps[j]! * k[j]!;
			return value;
		});
		let centre = mean[outer]!;
		for (let i = 0; i < outer; i += 1) centre += lean[i]! * (values[i]! - mean[i]!);
		density.enter(values);
		const before = inner.size;
		walkLine(density, Math.round(centre / innerStep), innerStep, floor, (place, value) => {
			inner.push(place * innerStep);
			logDensity.push(value);
		});
		if (inner.size === before) continue;
		for (let i = 0; i < outer; i += 1) {
			outerValues.push(values[i]!);
			places.push(k[i]!);
		}
		starts.push(inner.size);
		for (let i = 0; i < outer; i += 1) {
			for (const way of [-1, 1]) {
				if (Math.abs(k[i]! + way) > edge) {
					cutOff = true;
					continue;
				}
				const next = [...k];
				next[i]! += way;
				const index = indexOf(next);
				if (seen[index]) continue;
				seen[index] = 1;
				queue.push(next);
			}
		}
	}
	let cell = innerStep;
	for (let i = 0; i < outer; i += 1) cell *= root[i]![i]! * steps[i]!;
	return {
		outer,
		outerValues: outerValues.values.slice(0, outerValues.size),
		outerPlaces: Int16Array.from(places),
		starts: Int32Array.from(starts),
		inner: inner.values.slice(0, inner.size),
		logDensity: logDensity.values.slice(0, logDensity.size),
		innerStep,
		cell,
		cutOff
	};
}
