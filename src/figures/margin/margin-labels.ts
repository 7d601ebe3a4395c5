import type { Box } from '#plot/box.ts';
import { formatNumber } from '#core/units/format-number.ts';
import { formatRatioTick, withUnit } from '#plot/format.ts';
import { alongLine, aroundPoint } from '#plot/label-candidates.ts';
import { placeLabels, type LabelRequest, type PlacedLabel } from '#plot/place-labels.ts';
import type { Point } from '#plot/point.ts';
import { lineLength, placesAlong } from '#plot/polyline.ts';
import { textWidth } from '#plot/text-width.ts';
import { massIn } from '#core/units/mass-text.ts';
import type { MassUnit } from '../region/types.ts';
import { windowStrip, type DrawnSeries, type MarginGeometry } from './margin-geometry.ts';
import type { MarginPoint, MarginSeries } from './types.ts';

export const labelSize = 13;
export const markerRadius = 5;

const sizeOf = (text: string) => ({ width: textWidth(text, labelSize), height: labelSize + 1 });
const level = (text: string, cx: number, cy: number): Box => ({
	...sizeOf(text),
	cx,
	cy,
	angle: 0
});

/** A net-load range in the screen's unit: "37.1–63.6 kg". */
export function rangeText(from: number, to: number, unit: MassUnit): string {
	const [a, b] = [from, to].map((kg) => formatNumber(massIn(kg, unit)));
	return withUnit(`${a}–${b}`, unit);
}

/** What to write for a curve of which the axis shows nothing. */
export function unseenText({ label, kind, points }: MarginSeries, [low, high]: Scaled): string {
	const known = points.filter(({ margin }) => !Number.isNaN(margin));
	if (known.length > 0 && known.every(({ margin }) => margin === Infinity)) {
		return kind === 'other' ? `${label}: no limit ↑` : `no ${kind} limit ↑`;
	}
	if (known.length > 0 && known.every(({ margin }) => margin > high)) {
		return `${label} above ${formatRatioTick(high)} ↑`;
	}
	if (known.length > 0 && known.every(({ margin }) => margin < low)) {
		return `${label} below ${formatRatioTick(low)} ↓`;
	}
	return `${label}: not known here`;
}
type Scaled = readonly [low: number, high: number];

/** The words on the drawing with their places; none overlaps another, and only the point's must stand. */
export function marginLabels(
	geometry: MarginGeometry,
	point: MarginPoint,
	massUnit: MassUnit
): PlacedLabel[] {
	const { frame, x, y, curves, markers, edge, windows, you } = geometry;
	const requests: LabelRequest[] = [];
	const ask = (id: string, text: string, candidates: Box[], always = false) =>
		requests.push({ id, text, candidates, always });

	const shown = massIn(point.netMass, massUnit);
	const outside = shown < x.domain[0] - 1e-9 || shown > x.domain[1] + 1e-9;
	const youText = outside
		? `you, off this picture: ${withUnit(formatNumber(shown), massUnit)}`
		: 'you are here';
	const floor = frame.bottom - windowStrip;
	const spots = [0.03, 0.97, 0.12, 0.88, 0.22, 0.78, 0.35, 0.65, 0.5];
	const besideYou = spots.flatMap((share) => {
		const cy = frame.top + 10 + share * (floor - frame.top - 20);
		const off = sizeOf(youText).width / 2 + 6;
		return [level(youText, you + off, cy), level(youText, you - off, cy)];
	});
	ask('you', youText, besideYou, true);

	for (const { kind, margin, place } of markers) {
		const text = formatNumber(margin);
		const candidates = [4, 9].flatMap((gap) =>
			aroundPoint(place, sizeOf(text), markerRadius + gap)
		);
		ask(`value ${kind}`, text, candidates);
	}
	for (const { interval, from, to } of windows) {
		const text = `holds ${rangeText(interval.from, interval.to, massUnit)}`;
		const half = sizeOf(text).width / 2;
		const places = [(from + to) / 2, from + half, to - half, frame.left + 4 + half];
		const held = places.map((cx) => Math.min(Math.max(cx, frame.left + half), frame.right - half));
		ask(
			`window ${from}`,
			text,
			held.map((cx) => level(text, cx, frame.bottom - 19))
		);
	}
	if (windows.length === 0) {
		const text = 'no load in this range holds';
		const shares = [0.5, 0.3, 0.7];
		const candidates = shares.map((share) =>
			level(text, frame.left + share * (frame.right - frame.left), frame.bottom - 15)
		);
		ask('window none', text, candidates, true);
	}
	const domain = y.domain;
	for (const [i, curve] of curves.entries()) {
		if (curve.lines.length > 0) {
			ask(`curve ${curve.series.kind} ${i}`, curve.series.label, besideCurve(curve));
			continue;
		}
		const text = unseenText(curve.series, domain);
		const top = !text.endsWith('↓');
		const candidates = [0, 1, 2, 3].flatMap((row) => {
			const cy = top ? frame.top + 10 + row * 18 : floor - 10 - row * 18;
			const half = sizeOf(text).width / 2;
			return [frame.left + half + 6, frame.right - half - 4].map((cx) => level(text, cx, cy));
		});
		ask(`curve ${curve.series.kind} ${i}`, text, candidates);
	}
	const edgeText = '1: the edge';
	const half = sizeOf(edgeText).width / 2;
	const edgePlaces = [
		frame.right - half - 4,
		frame.left + half + 6,
		(frame.left + frame.right) / 2
	];
	const edgeBoxes = edgePlaces.flatMap((cx) => [
		level(edgeText, cx, edge - 12),
		level(edgeText, cx, edge + 12)
	]);
	ask('edge', edgeText, edgeBoxes);

	const lines: Point[][] = curves.flatMap((curve) => curve.lines);
	lines.push([
		[frame.left, edge],
		[frame.right, edge]
	]);
	return placeLabels(requests, {
		frame: { ...frame, top: frame.top - 4, left: frame.left + 3 },
		lines,
		faint: [
			[
				[you, frame.top],
				[you, frame.bottom]
			]
		],
		boxes: markers.map(({ place: [cx, cy] }) => ({
			...{ cx, cy, angle: 0 },
			...{ width: 2 * markerRadius, height: 2 * markerRadius }
		}))
	});
}

/** Places along a curve's longest part, then level beside it. */
function besideCurve({ lines, series }: DrawnSeries): Box[] {
	const longest = [...lines].sort((a, b) => lineLength(b) - lineLength(a))[0] ?? [];
	const size = sizeOf(series.label);
	const length = lineLength(longest);
	const spots = placesAlong(
		longest,
		[0.2, 0.4, 0.6, 0.8].map((share) => share * length)
	);
	return [
		...alongLine(longest, size, { right: 3, left: 3 }),
		...spots.flatMap((spot) => aroundPoint(spot, size, 8))
	];
}
