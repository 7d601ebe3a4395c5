import type { Box, Frame } from './box.ts';
import { formatTick } from './format.ts';
import { alongLine, aroundPoint } from './label-candidates.ts';
import { linesPath } from './paths.ts';
import { placeLabels, type LabelRequest, type PlacedLabel } from './place-labels.ts';
import type { Point } from './point.ts';
import { clipToHeights, lineLength, placesAlong, simplify } from './polyline.ts';
import { linearScale, logScale, type Scale } from './scales.ts';
import { textWidth } from './text-width.ts';
import { linearTicks, ratioTicks } from './ticks.ts';

/** Colours by meaning; app.css says what each stands for. */
export type Look = 'ink' | 'soft' | 'slip' | 'strength' | 'rope' | 'you' | 'normal';

export type ChartLine = {
	id: string;
	/** Written on the line; none where another line already says it. */
	label?: string | undefined;
	/** In the axes' units. */
	points: readonly Point[];
	look: Look;
	dash?: string;
	/** px; 1.8 unless told. */
	width?: number;
};

export type ChartMark = { id: string; at: Point; label?: string; look: Look };

export type ChartAxis = {
	label: string;
	domain: readonly [number, number];
	/** Equal factors are equal steps; ticks are then powers of √2. */
	ratio?: boolean;
	format?: (value: number) => string;
};

export type ChartView = {
	x: ChartAxis;
	y: ChartAxis;
	lines: readonly ChartLine[];
	marks?: readonly ChartMark[];
	width: number;
	height: number;
};

export type DrawnChart = {
	frame: Frame;
	x: Scale;
	y: Scale;
	xTicks: number[];
	yTicks: number[];
	xFormat: (value: number) => string;
	yFormat: (value: number) => string;
	lines: { line: ChartLine; path: string }[];
	marks: { mark: ChartMark; place: Point }[];
	labels: (PlacedLabel & { look: Look })[];
};

export const chartLabelSize = 13;
const markRadius = 5;

/** Everything a chart of labelled lines draws, in px: it names its lines on the lines. */
export function lineChart(view: ChartView): DrawnChart {
	const { width, height } = view;
	const frame: Frame = {
		left: 46,
		top: 27,
		right: Math.max(width - 14, 90),
		bottom: Math.max(height - 45, 90)
	};
	const x = scaleOf(view.x, [frame.left, frame.right]);
	const y = scaleOf(view.y, [frame.bottom, frame.top]);
	const drawn = view.lines.map((line) => {
		const places = line.points.map(([a, b]): Point => [x(a), y(b)]);
		const parts = clipToHeights(places, frame.top, frame.bottom).map((part) => simplify(part, 0.2));
		return { line, parts, path: linesPath(parts) };
	});
	const marks = (view.marks ?? [])
		.map((mark) => ({ mark, place: [x(mark.at[0]), y(mark.at[1])] as Point }))
		.filter(({ place }) => insideFrame(place, frame));
	return {
		...{ frame, x, y, marks },
		xTicks: ticksOf(view.x, (frame.right - frame.left) / 65),
		yTicks: ticksOf(view.y, (frame.bottom - frame.top) / 30),
		xFormat: view.x.format ?? formatTick,
		yFormat: view.y.format ?? formatTick,
		lines: drawn.map(({ line, path }) => ({ line, path })),
		labels: labelsOf(drawn, marks, frame)
	};
}

function scaleOf({ domain, ratio }: ChartAxis, range: readonly [number, number]): Scale {
	return ratio ? logScale(domain, range) : linearScale(domain, range);
}

function ticksOf({ domain: [from, to], ratio }: ChartAxis, count: number): number[] {
	return ratio ? ratioTicks(from, to, count) : linearTicks(from, to, count);
}

function insideFrame([x, y]: Point, frame: Frame): boolean {
	const edge = 0.5;
	return (
		x >= frame.left - edge &&
		x <= frame.right + edge &&
		y >= frame.top - edge &&
		y <= frame.bottom + edge
	);
}

function labelsOf(
	drawn: { line: ChartLine; parts: Point[][] }[],
	marks: { mark: ChartMark; place: Point }[],
	frame: Frame
): DrawnChart['labels'] {
	const looks = new Map<string, Look>();
	const requests: LabelRequest[] = [];
	const ask = (id: string, text: string, look: Look, candidates: Box[], always = false) => {
		looks.set(id, look);
		requests.push({ id, text, candidates, always });
	};
	const sizeOf = (text: string) => ({
		width: textWidth(text, chartLabelSize),
		height: chartLabelSize + 1
	});
	for (const { mark, place } of marks) {
		if (mark.label === undefined) continue;
		const candidates = [3, 8, 16].flatMap((gap) =>
			aroundPoint(place, sizeOf(mark.label!), markRadius + gap)
		);
		ask(`mark ${mark.id}`, mark.label, mark.look, candidates, true);
	}
	for (const { line, parts } of drawn) {
		const longest = [...parts].sort((a, b) => lineLength(b) - lineLength(a))[0];
		if (line.label === undefined || !longest) continue;
		const size = sizeOf(line.label);
		const length = lineLength(longest);
		const spots = placesAlong(
			longest,
			[0.15, 0.3, 0.5, 0.7, 0.85].map((share) => share * length)
		);
		ask(`line ${line.id}`, line.label, line.look, [
			...alongLine(longest, size, { right: 3, left: 3 }),
			...spots.flatMap((spot) => aroundPoint(spot, size, 8))
		]);
	}
	const placed = placeLabels(requests, {
		frame: { ...frame, left: frame.left + 3, top: frame.top - 6 },
		lines: drawn.flatMap(({ parts }) => parts),
		boxes: marks.map(({ place: [cx, cy] }) => ({
			...{ cx, cy, angle: 0 },
			...{ width: 2 * markRadius, height: 2 * markRadius }
		}))
	});
	return placed.map((label) => ({ ...label, look: looks.get(label.id)! }));
}
