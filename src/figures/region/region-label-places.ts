import type { Box } from '#plot/box.ts';
import { insideRing } from '#plot/inside-ring.ts';
import { alongLine, aroundPoint } from '#plot/label-candidates.ts';
import type { Point } from '#plot/point.ts';
import { placesAlong } from '#plot/polyline.ts';
import { textWidth } from '#plot/text-width.ts';
import type { DrawnEdge, RegionGeometry } from './region-geometry.ts';

export const labelSize = 13;

/** About how much room a label takes, px. */
export const sizeOf = (text: string) => ({
	...{ width: textWidth(text, labelSize), height: labelSize + 1 }
});

/** Places along an edge, and failing those, level with a point of it on either side. */
export function beside(
	edge: DrawnEdge,
	text: string,
	gaps: { right: number; left: number }
): Box[] {
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
export function beyond(edge: DrawnEdge, text: string, { areas }: RegionGeometry): Box[] {
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
export function withinArea({ areas, frame }: RegionGeometry, area: number): Box[] {
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

/** The plot's corners, where there is often room: bottom right, top right, then the left ones. */
export function cornersOf({ frame }: RegionGeometry, text: string): Box[] {
	const size = sizeOf(text);
	const [dx, dy] = [size.width / 2 + 8, size.height / 2 + 8];
	return [
		{ ...size, cx: frame.right - dx, cy: frame.bottom - dy, angle: 0 },
		{ ...size, cx: frame.right - dx, cy: frame.top + dy, angle: 0 },
		{ ...size, cx: frame.left + dx, cy: frame.top + dy, angle: 0 },
		{ ...size, cx: frame.left + dx, cy: frame.bottom - dy, angle: 0 }
	];
}
