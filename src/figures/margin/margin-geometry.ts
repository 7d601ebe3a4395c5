import type { Interval } from '#core/types.ts';
import type { Frame } from '#plot/box.ts';
import { linesPath } from '#plot/paths.ts';
import type { Point } from '#plot/point.ts';
import { clipToHeights, lineLength, simplify } from '#plot/polyline.ts';
import { linearScale, logScale, type Scale } from '#plot/scales.ts';
import { linearTicks, ratioDomain, ratioTicks } from '#plot/ticks.ts';
import { massIn } from '#core/units/mass-text.ts';
import type { MassUnit } from '../region/types.ts';
import type { MarginPoint, MarginSeries } from './types.ts';

const around = { left: 40, top: 27, right: 14, bottom: 45 };
/** Height kept free above the load axis for the holding window, px. */
export const windowStrip = 30;

export type DrawnSeries = { series: MarginSeries; lines: Point[][]; length: number; path: string };

export type MarginGeometry = {
	frame: Frame;
	x: Scale;
	y: Scale;
	xTicks: number[];
	yTicks: number[];
	curves: DrawnSeries[];
	/** Height of the margin 1, px. */
	edge: number;
	/** The holding windows along the load axis, px. */
	windows: { interval: Interval; from: number; to: number }[];
	/** The current load on the slip and the strength curve, where the axis reaches that far. */
	markers: { kind: 'slip' | 'strength'; margin: number; place: Point }[];
	you: number;
};

export type MarginView = {
	series: readonly MarginSeries[];
	load: { from: number; to: number };
	massUnit: MassUnit;
	point: MarginPoint;
	window: readonly Interval[];
	width: number;
	height: number;
};

/** Everything the margin figure draws, in px, but for its labels. */
export function marginGeometry(view: MarginView): MarginGeometry {
	const { series, load, massUnit, point, width, height } = view;
	const frame: Frame = {
		left: around.left,
		top: around.top,
		right: Math.max(width - around.right, around.left + 40),
		bottom: Math.max(height - around.bottom, around.top + windowStrip + 40)
	};
	const perUnit = massIn(1, massUnit);
	const [from, to] = [load.from * perUnit, load.to * perUnit];
	const x = linearScale([from, to], [frame.left, frame.right]);
	const margins = series.flatMap(({ points }) => points.map(({ margin }) => margin));
	const [low, high] = ratioDomain(margins.filter((margin) => margin > 0 && margin < Infinity));
	const y = logScale([low, high], [frame.bottom - windowStrip, frame.top]);
	const across = (netMass: number) => x(netMass * perUnit);

	const curves = series.map((one): DrawnSeries => {
		// A margin of 0 lies infinitely far down the ratio axis, an infinite one infinitely far up.
		const line = one.points.map(({ netMass, margin }): Point => [across(netMass), y(margin)]);
		const lines = clipToHeights(line, y(high), y(low)).map((part) => simplify(part, 0.2));
		const length = lines.reduce((sum, part) => sum + lineLength(part), 0);
		return { series: one, lines, length, path: linesPath(lines) };
	});
	const inRange = point.netMass >= load.from && point.netMass <= load.to;
	const markers: MarginGeometry['markers'] = [];
	for (const kind of ['slip', 'strength'] as const) {
		const margin = kind === 'slip' ? point.slipMargin : point.strengthMargin;
		if (!inRange || !(margin >= low && margin <= high)) continue;
		markers.push({ kind, margin, place: [across(point.netMass), y(margin)] });
	}
	return {
		...{ frame, x, y, curves, markers },
		xTicks: linearTicks(from, to, (frame.right - frame.left) / 65),
		yTicks: ratioTicks(low, high, (frame.bottom - windowStrip - frame.top) / 22),
		edge: y(1),
		windows: view.window.map((interval) => ({
			interval,
			from: across(interval.from),
			to: across(interval.to)
		})),
		you: Math.min(Math.max(across(point.netMass), frame.left), frame.right)
	};
}
