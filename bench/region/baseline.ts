import { contours } from 'd3';
import { evaluateHang, loadAtNetMass } from '#core/index.ts';
import { hangOnAxis } from '#core/region/hang-on-axis.ts';
import type { Hang, RegionAxis } from '#core/types.ts';

/** A point of the plot, both axes from 0 to 1. */
export type Point = { x: number; y: number };

/** Lines of the plot as lists of points. */
export type Lines = Point[][];

const size = 400;
/** Infinite margins would spoil the contour's interpolation. */
const cap = 4;

/**
 * The baseline: the margin at every node of a 400 × 400 grid, one evaluateHang each, contoured at 1
 * with d3-contour. Hangs are made once a column and loads once a node.
 */
export function contourRegion(
	hang: Hang,
	o: { axis: RegionAxis; from: number; to: number; load: { from: number; to: number } }
): Lines {
	const values = new Array<number>(size * size);
	for (let i = 0; i < size; i++) {
		const value = o.from + ((o.to - o.from) * i) / (size - 1);
		const there = hangOnAxis(hang, o.axis, value, hang.hangingMass)!;
		for (let j = 0; j < size; j++) {
			const netMass = o.load.from + ((o.load.to - o.load.from) * j) / (size - 1);
			const { slipMargin, strengthMargin } = evaluateHang(there, loadAtNetMass(netMass, there));
			values[j * size + i] = Math.min(slipMargin, strengthMargin, cap);
		}
	}
	const [contour] = contours().size([size, size]).thresholds([1])(values);
	return contour!.coordinates
		.flat()
		.map((ring) =>
			ring.map(([x, y]) => ({ x: (x! - 0.5) / (size - 1), y: (y! - 0.5) / (size - 1) }))
		);
}
