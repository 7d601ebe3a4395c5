import type { Limit } from '#core/types.ts';
import type { Box } from '#plot/box.ts';
import { formatNumber } from '#core/units/format-number.ts';
import { withUnit } from '#plot/format.ts';
import { aroundPoint } from '#plot/label-candidates.ts';
import { placeLabels, type LabelRequest, type PlacedLabel } from '#plot/place-labels.ts';
import type { Point } from '#plot/point.ts';
import { massIn } from '#core/units/mass-text.ts';
import type { DrawnEdge, DrawnOverlay, RegionGeometry } from './region-geometry.ts';
import { beside, beyond, cornersOf, sizeOf, withinArea } from './region-label-places.ts';
import type { MassUnit, RegionBand, RegionPoint } from './types.ts';

/** Radius of the ring that marks the point, and half the size of a crossing's mark, px. */
export const pointRadius = 8;
export const crossingRadius = 5;
/** A second edge of the same kind gets a label of its own when it is at least this long, px. */
const longEnough = 110;

const edgeWords = { slip: 'slip edge', strength: 'strength edge' } as const;
const zoneWords = { slip: 'slips', strength: 'fingers open' } as const;

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
	const mass = (kg: number) => withUnit(formatNumber(massIn(kg, massUnit)), massUnit);
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
			overlay.lines.length > 0 ? overlay.label : `${overlay.label}: ${told(overlay, edges)}`;
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

/** What to say of an overlay that draws no line of its own. */
function told({ holds, kinds }: DrawnOverlay, own: readonly DrawnEdge[]): string {
	if (holds === 'none') return 'no load here holds';
	if (holds === 'all') return 'every load here holds';
	const missing = (['slip', 'strength'] as const).find(
		(kind) => !kinds.includes(kind) && own.some((edge) => edge.kind === kind)
	);
	return missing ? `no ${edgeWords[missing]} here` : 'the same edges';
}

/** The longest edge of a kind, and others long enough to need a label of their own. */
function longest(edges: readonly DrawnEdge[], kind: Limit): DrawnEdge[] {
	return edges
		.filter((edge) => edge.kind === kind)
		.sort((a, b) => b.length - a.length)
		.filter((edge, i) => i === 0 || edge.length > longEnough);
}
