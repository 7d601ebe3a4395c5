import type { Limit } from '#core/types.ts';
import type { Box } from '#plot/box.ts';
import { formatThreeDigits, withUnit } from '#plot/format.ts';
import { insideRing } from '#plot/inside-ring.ts';
import { alongLine, aroundPoint } from '#plot/label-candidates.ts';
import { placeLabels, type LabelRequest, type PlacedLabel } from '#plot/place-labels.ts';
import type { Point } from '#plot/point.ts';
import { placesAlong } from '#plot/polyline.ts';
import { textWidth } from '#plot/text-width.ts';
import { massToScreen } from './mass-unit.ts';
import type { DrawnEdge, RegionGeometry } from './region-geometry.ts';
import type { MassUnit, RegionBand, RegionPoint } from './types.ts';

export const labelSize = 13;
/** Radius of the ring that marks the point, and half the size of a crossing's mark, px. */
export const pointRadius = 8;
export const crossingRadius = 5;
/** A second edge of the same kind gets a label of its own when it is at least this long, px. */
const longEnough = 110;

const edgeWords = { slip: 'slip edge', strength: 'strength edge' } as const;
const zoneWords = { slip: 'slips', strength: 'fingers open' } as const;

const sizeOf = (text: string) => ({ width: textWidth(text, labelSize), height: labelSize + 1 });
const square = ([cx, cy]: Point, half: number): Box => ({
	...{ cx, cy, angle: 0 },
	...{ width: 2 * half, height: 2 * half }
});

export type RegionLabelInput = {
	geometry: RegionGeometry;
	point: RegionPoint;
	massUnit: MassUnit;
	band?: RegionBand | undefined;
};

/** Where the point is drawn: at the nearest place of the plot when it lies outside. */
export function shownPoint({ frame, place }: RegionGeometry, point: RegionPoint): Point {
	const [x, y] = place(point);
	return [
		Math.min(Math.max(x, frame.left), frame.right),
		Math.min(Math.max(y, frame.top), frame.bottom)
	];
}

/** The words on the drawing with their places; none overlaps another, and only the point's must stand. */
export function regionLabels({ geometry, point, massUnit, band }: RegionLabelInput): PlacedLabel[] {
	const { frame, edges, overlays, crossings, areas } = geometry;
	const you = shownPoint(geometry, point);
	const lines = [...edges, ...overlays.flatMap((overlay) => overlay.lines)].map((e) => e.line);
	const boxes = [square(you, pointRadius + 1)];
	for (const crossing of crossings) boxes.push(square(crossing.place, crossingRadius + 1));
	const mass = (kg: number) => withUnit(formatThreeDigits(massToScreen(kg, massUnit)), massUnit);
	const request = (id: string, text: string, candidates: LabelRequest['candidates']) => ({
		...{ id, text, candidates }
	});

	const [px, py] = geometry.place(point);
	const outside = Math.abs(px - you[0]) > 1 || Math.abs(py - you[1]) > 1;
	const youText = outside ? `you, off this picture: ${mass(point.netMass)}` : 'you are here';
	const requests: LabelRequest[] = [
		{ ...request('you', youText, aroundPoint(you, sizeOf(youText), pointRadius + 4)), always: true }
	];
	const whole = wholePlotWords(geometry);
	if (whole) {
		const middle = middleOf(geometry);
		const candidates = [0, -0.15, 0.15, -0.3, 0.3].map((share) => ({
			...sizeOf(whole),
			...{ cx: middle[0], cy: middle[1] + share * (frame.bottom - frame.top), angle: 0 }
		}));
		requests.push({ ...request('whole', whole, candidates), always: true });
	}
	for (const [i, crossing] of crossings.entries()) {
		const text = `limits cross: ${mass(crossing.netMass)}`;
		const candidates = [6, 13].flatMap((gap) =>
			aroundPoint(crossing.place, sizeOf(text), crossingRadius + gap)
		);
		requests.push(request(`crossing ${i}`, text, candidates));
	}
	for (const kind of ['slip', 'strength'] as const) {
		for (const [i, edge] of longest(edges, kind).entries()) {
			const gaps = { right: kind === 'slip' ? 8 : 4, left: 5 };
			const candidates = beside(edge, edgeWords[kind], gaps);
			requests.push(request(`edge ${kind} ${i}`, edgeWords[kind], candidates));
		}
	}
	for (const [i, overlay] of overlays.entries()) {
		const byLength = [...overlay.lines].sort((a, b) => b.length - a.length);
		const slipFirst = byLength.sort(
			(a, b) => Number(b.kind === 'slip') - Number(a.kind === 'slip')
		);
		const text =
			overlay.lines.length > 0
				? overlay.label
				: `${overlay.label}: ${overlay.empty ? 'no load here holds' : 'the same edges'}`;
		const candidates = slipFirst.flatMap((edge) => beside(edge, text, { right: 4, left: 4 }));
		if (overlay.lines.length === 0) candidates.push(...cornersOf(geometry, text));
		requests.push(request(`overlay ${i}`, text, candidates));
	}
	if (band) {
		const ends = [band.from, band.to].map((m) => shownPoint(geometry, { ...point, netMass: m }));
		const candidates = ends.flatMap((end) => aroundPoint(end, sizeOf(band.label), 7));
		requests.push(request('band', band.label, candidates));
	}
	if (!whole) {
		for (const area of new Set(areas.map((a) => a.area))) {
			requests.push(request(`holds ${area}`, 'holds', withinArea(geometry, area)));
		}
	}
	for (const kind of ['slip', 'strength'] as const) {
		const candidates = longest(edges, kind).flatMap((e) => beyond(e, zoneWords[kind], geometry));
		requests.push(request(`zone ${kind}`, zoneWords[kind], candidates));
	}
	const faint: Point[][] = [[[frame.left, you[1]], you, [you[0], frame.bottom]]];
	return placeLabels(requests, { frame: inset(frame, 3), lines, faint, boxes });
}

const inset = (frame: RegionGeometry['frame'], by: number) => ({
	left: frame.left + by,
	top: frame.top + by,
	right: frame.right - by,
	bottom: frame.bottom - by
});

const middleOf = ({ frame }: RegionGeometry): Point => [
	(frame.left + frame.right) / 2,
	(frame.top + frame.bottom) / 2
];

/** What to say of a plot without a single edge, which would otherwise look broken. */
function wholePlotWords({ areas, edges }: RegionGeometry): string | undefined {
	if (areas.length === 0) return 'No load in this range holds';
	return edges.length === 0 ? 'Every load in this range holds' : undefined;
}

/** The longest edge of a kind, and others long enough to need a label of their own. */
function longest(edges: readonly DrawnEdge[], kind: Limit): DrawnEdge[] {
	return edges
		.filter((edge) => edge.kind === kind)
		.sort((a, b) => b.length - a.length)
		.filter((edge, i) => i === 0 || edge.length > longEnough);
}

/** Places along an edge, and failing those, level with a point of it on either side. */
function beside(edge: DrawnEdge, text: string, gaps: { right: number; left: number }): Box[] {
	const size = sizeOf(text);
	const spots = placesAlong(
		edge.line,
		[0.3, 0.5, 0.7].map((f) => f * edge.length)
	);
	return [
		...alongLine(edge.line, size, gaps),
		...spots.flatMap((spot) => aroundPoint(spot, size, gaps.right + 3))
	];
}

/** Level places a little way off an edge on the side that fails. */
function beyond(edge: DrawnEdge, text: string, { areas }: RegionGeometry): Box[] {
	const size = sizeOf(text);
	const boxes: Box[] = [];
	for (const away of [46, 34, 64, 24]) {
		for (const fraction of [0.5, 0.35, 0.65, 0.2, 0.8]) {
			const at = fraction * edge.length;
			const [a, b] = placesAlong(edge.line, [at - 4, at + 4]) as [Point, Point];
			const length = Math.hypot(b[0] - a[0], b[1] - a[1]) || 1;
			const [ux, uy] = [(b[0] - a[0]) / length, (b[1] - a[1]) / length];
			// A wide word needs more room from an upright edge than from a level one.
			const off = away + (Math.abs(uy) * size.width) / 2 - (Math.abs(uy) * size.height) / 2;
			const box = { ...size, cx: a[0] - uy * off, cy: a[1] + ux * off, angle: 0 };
			if (!areas.some(({ ring }) => insideRing([box.cx, box.cy], ring))) boxes.push(box);
		}
	}
	return boxes;
}

/** Level places inside an area, the roomiest first. */
function withinArea({ areas, frame }: RegionGeometry, area: number): Box[] {
	const rings = areas.filter((a) => a.area === area).map((a) => a.ring);
	const size = sizeOf('holds');
	const boxes: { box: Box; room: number }[] = [];
	const [columns, rows] = [24, 16];
	for (let i = 1; i < columns; i++) {
		const cx = frame.left + ((frame.right - frame.left) * i) / columns;
		let run: number[] = [];
		const flush = () => {
			if (run.length > 0) {
				const cy = (run[0]! + run.at(-1)!) / 2;
				const central = 1 - Math.abs(i / columns - 0.5);
				boxes.push({ box: { ...size, cx, cy, angle: 0 }, room: run.length * central });
				if (run.length > 5) {
					const third = { ...size, cx, cy: run[Math.floor(run.length / 4)]!, angle: 0 };
					boxes.push({ box: third, room: run.length * central * 0.6 });
				}
			}
			run = [];
		};
		for (let j = 0; j <= rows; j++) {
			const cy = frame.top + ((frame.bottom - frame.top) * (j + 0.5)) / (rows + 1);
			if (rings.some((ring) => insideRing([cx, cy], ring))) run.push(cy);
			else flush();
		}
		flush();
	}
	return boxes.sort((a, b) => b.room - a.room).map(({ box }) => box);
}

function cornersOf({ frame }: RegionGeometry, text: string): Box[] {
	const size = sizeOf(text);
	const [dx, dy] = [size.width / 2 + 8, size.height / 2 + 8];
	return [
		{ ...size, cx: frame.right - dx, cy: frame.bottom - dy, angle: 0 },
		{ ...size, cx: frame.right - dx, cy: frame.top + dy, angle: 0 },
		{ ...size, cx: frame.left + dx, cy: frame.top + dy, angle: 0 },
		{ ...size, cx: frame.left + dx, cy: frame.bottom - dy, angle: 0 }
	];
}
