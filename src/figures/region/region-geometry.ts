import type { Limit } from '#core/types.ts';
import type { Frame } from '#plot/box.ts';
import { hatchPath, linesPath } from '#plot/paths.ts';
import type { Point } from '#plot/point.ts';
import { lineLength, nearestOnLine, simplify } from '#plot/polyline.ts';
import { linearScale, type Scale } from '#plot/scales.ts';
import { linearTicks } from '#plot/ticks.ts';
import { massIn } from '#core/units/mass-text.ts';
import { regionShape, type RegionShape } from './region-shape.ts';
import type { MassUnit, Region, RegionAxisView, RegionOverlay, RegionPoint } from './types.ts';

/** Room round the plot for ticks, their numbers and the axis names. */
const around = { left: 40, top: 27, right: 14, bottom: 45 };
/** How far a drawn line may stray from the true one, px. */
const fine = 0.2;
/** An overlay's edge nearer than this to the region's own is the same line, px. */
const same = 1.5;

export type DrawnEdge = { kind: Limit; line: Point[]; length: number };
export type DrawnOverlay = {
	label: string;
	/** Its edges, but for what lies on the region's own. */
	lines: DrawnEdge[];
	path: string;
	/** The kinds of edge it has, drawn or not. */
	kinds: Limit[];
	holds: 'none' | 'some' | 'all';
};

export type RegionGeometry = {
	frame: Frame;
	/** Both scales work in the screen's units. */
	x: Scale;
	y: Scale;
	xTicks: number[];
	yTicks: number[];
	place: (point: RegionPoint) => Point;
	unplace: (place: Point) => RegionPoint;
	areas: { area: number; ring: Point[] }[];
	edges: DrawnEdge[];
	overlays: DrawnOverlay[];
	crossings: { place: Point; netMass: number }[];
	paths: { area: string; slip: string; hatch: string; strength: string };
};

export type RegionView = {
	region: Region;
	axis: RegionAxisView;
	load: { from: number; to: number };
	massUnit: MassUnit;
	overlays: readonly RegionOverlay[];
	width: number;
	height: number;
};

/** Axis values at the two ends of a region, SI. */
export function axisRange(region: Region): [number, number] {
	const [first, last] = [region.columns[0], region.columns.at(-1)];
	if (!first || !last) throw new RangeError('region.columns has 0 entries; at least 1 is needed');
	return [first.value, last.value];
}

/** Everything about the drawing that does not move with the point: scales, lines and paths, in px. */
export function regionGeometry(view: RegionView): RegionGeometry {
	const { region, axis, load, massUnit, width, height } = view;
	const frame: Frame = {
		left: around.left,
		top: around.top,
		right: Math.max(width - around.right, around.left + 40),
		bottom: Math.max(height - around.bottom, around.top + 40)
	};
	const [from, to] = axisRange(region).map(axis.toScreen) as [number, number];
	const heights = [load.from, load.to].map((m) => massIn(m, massUnit)) as [number, number];
	const x = linearScale([from, to], [frame.left, frame.right]);
	const y = linearScale(heights, [frame.bottom, frame.top]);
	const perUnit = massIn(1, massUnit);
	const place = (point: RegionPoint): Point => [
		x(axis.toScreen(point.value)),
		y(point.netMass * perUnit)
	];

	const shape = regionShape(region);
	const edges = drawn(shape, place);
	const rings = shape.rings.map(({ area, points }) => ({
		area,
		ring: simplify(
			points.map(([value, netMass]) => place({ value, netMass })),
			fine
		)
	}));
	const linesOf = (kind: Limit) => edges.filter((e) => e.kind === kind).map((e) => e.line);
	const slip = linesOf('slip');
	return {
		frame,
		x,
		y,
		xTicks: linearTicks(from, to, (frame.right - frame.left) / 65),
		yTicks: linearTicks(heights[0], heights[1], (frame.bottom - frame.top) / 42),
		place,
		unplace: ([px, py]) => ({
			value: axis.fromScreen(x.invert(px)),
			netMass: y.invert(py) / perUnit
		}),
		areas: rings,
		edges,
		overlays: view.overlays.map(({ label, region: other }): DrawnOverlay => {
			const shape = regionShape(other);
			const whole = drawn(shape, place);
			const lines = whole.flatMap((edge) => apartFrom(edge, edges));
			return {
				label,
				lines,
				path: linesPath(lines.map((edge) => edge.line)),
				kinds: [...new Set(whole.map((edge) => edge.kind))],
				holds: shape.rings.length === 0 ? 'none' : whole.length === 0 ? 'all' : 'some'
			};
		}),
		crossings: region.crossings.map((c) => ({ place: place(c), netMass: c.netMass })),
		paths: {
			area: linesPath(
				rings.map(({ ring }) => ring),
				true
			),
			slip: linesPath(slip),
			hatch: slip.map((line) => hatchPath(line, 9, 6)).join(''),
			strength: linesPath(linesOf('strength'))
		}
	};
}

function drawn(shape: RegionShape, place: RegionGeometry['place']): DrawnEdge[] {
	return shape.edges.map(({ kind, points }) => {
		const line = simplify(
			points.map(([value, netMass]) => place({ value, netMass })),
			fine
		);
		return { kind, line, length: lineLength(line) };
	});
}

/** The parts of an edge that do not lie on the region's own edges of the same kind. */
function apartFrom(edge: DrawnEdge, own: readonly DrawnEdge[]): DrawnEdge[] {
	const near = (point: Point) =>
		own.some(
			(other) =>
				other.kind === edge.kind && (nearestOnLine(point, other.line)?.distance ?? Infinity) < same
		);
	const parts: Point[][] = [];
	let part: Point[] = [];
	const flush = () => {
		if (part.length > 1) parts.push(part);
		part = [];
	};
	const on = edge.line.map(near);
	for (let i = 1; i < edge.line.length; i++) {
		const [a, b] = [edge.line[i - 1]!, edge.line[i]!];
		const covered = on[i - 1] && on[i] && near([(a[0] + b[0]) / 2, (a[1] + b[1]) / 2]);
		if (covered) {
			flush();
			continue;
		}
		if (part.length === 0) part.push(a);
		part.push(b);
	}
	flush();
	return parts.map((line) => ({ kind: edge.kind, line, length: lineLength(line) }));
}
