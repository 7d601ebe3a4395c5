import type { Frame } from '#plot/box.ts';
import { linesPath } from '#plot/paths.ts';
import type { Point } from '#plot/point.ts';
import { clipToHeights, simplify } from '#plot/polyline.ts';
import { linearScale, logScale, type Scale } from '#plot/scales.ts';
import { linearTicks, ratioTicks } from '#plot/ticks.ts';
import { massIn, type MassUnit } from '#core/units/mass-text.ts';
import type { CurvePoint, LoadRange } from './types.ts';

/** All small figures are drawn at this size and scaled to their place, so that they compare. */
export const size = { width: 320, height: 172 };
export const frame: Frame = { left: 34, top: 20, right: 312, bottom: 138 };

/** Margins between which the axis stays where it is when the person's own margin moves. */
const settled = { from: 0.8, to: 1.25 };

/** The two scales that every mechanism of one board shares, and their ticks. */
export type BoardAxes = {
	x: Scale;
	y: Scale;
	xTicks: number[];
	yTicks: number[];
	unit: MassUnit;
};

/**
 * The axes of a board: net load in the unit shown, and slip margin on a ratio axis of at least a factor
 * of two about the person's own.
 * @param range loads, kg
 * @param margin the person's own slip margin, above 0 and finite
 */
export function boardAxes(range: LoadRange, margin: number, unit: MassUnit): BoardAxes {
	const x = linearScale(
		[massIn(range.from, unit), massIn(range.to, unit)],
		[frame.left, frame.right]
	);
	const calm = margin >= settled.from && margin <= settled.to;
	const halves = calm ? 0 : 2 * Math.log2(margin);
	const [low, high] = [2 ** ((Math.floor(halves) - 1) / 2), 2 ** ((Math.ceil(halves) + 1) / 2)];
	const y = logScale([low, high], [frame.bottom, frame.top]);
	return {
		x,
		y,
		xTicks: linearTicks(x.domain[0], x.domain[1], 5),
		yTicks: ratioTicks(low, high, 4),
		unit
	};
}

/** One path for the loads where a curve can be trusted, and one for those where it cannot. */
export function curvePaths(
	points: readonly CurvePoint[],
	doubts: readonly LoadRange[],
	{ x, y, unit }: BoardAxes
): { sure: string; doubtful: string } {
	const [low, high] = y.domain;
	const place = ({ netMass, margin }: CurvePoint): Point => [x(massIn(netMass, unit)), y(margin)];
	const path = (part: CurvePoint[][]) =>
		linesPath(
			part.flatMap((line) =>
				clipToHeights(line.map(place), y(high), y(low)).map((piece) => simplify(piece, 0.15))
			)
		);
	const { sure, doubtful } = split(points, doubts);
	return { sure: path(sure), doubtful: path(doubtful) };
}

/** Cuts a curve where doubts begin and end; neighbours share the point at the cut. */
export function split(
	points: readonly CurvePoint[],
	doubts: readonly LoadRange[]
): { sure: CurvePoint[][]; doubtful: CurvePoint[][] } {
	const sure: CurvePoint[][] = [];
	const doubtful: CurvePoint[][] = [];
	const ends = doubts.flatMap(({ from, to }) => [from, to]);
	const all = [...points];
	for (let i = 1; i < points.length; i++) {
		const [a, b] = [points[i - 1]!, points[i]!];
		for (const end of ends) if (end > a.netMass && end < b.netMass) all.push(between(a, b, end));
	}
	all.sort((a, b) => a.netMass - b.netMass);
	let last: CurvePoint[][] | undefined;
	for (let i = 1; i < all.length; i++) {
		const [a, b] = [all[i - 1]!, all[i]!];
		const middle = (a.netMass + b.netMass) / 2;
		const side = doubts.some(({ from, to }) => middle > from && middle < to) ? doubtful : sure;
		if (side === last) side.at(-1)!.push(b);
		else side.push([a, b]);
		last = side;
	}
	return { sure, doubtful };
}

function between(a: CurvePoint, b: CurvePoint, netMass: number): CurvePoint {
	const t = (netMass - a.netMass) / (b.netMass - a.netMass);
	const margin = a.margin + t * (b.margin - a.margin);
	// From or to a margin that has no size the cut takes the end that has one.
	return { netMass, margin: Number.isFinite(margin) ? margin : Math.min(a.margin, b.margin) };
}

/** Which way a curve leaves the picture, if it does. */
export function leaves(points: readonly CurvePoint[], { y }: BoardAxes): 'above' | 'below' | '' {
	const [low, high] = y.domain;
	if (points.some(({ margin }) => margin < low)) return 'below';
	return points.some(({ margin }) => margin > high) ? 'above' : '';
}
