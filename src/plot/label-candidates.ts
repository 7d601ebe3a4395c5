import type { Box } from './box.ts';
import type { Point } from './point.ts';
import { lineLength, placesAlong } from './polyline.ts';

type Size = { width: number; height: number };

/** Where along a line a label would rather stand, as fractions of its length, best first. */
const fractions = [0.5, 0.42, 0.58, 0.34, 0.66, 0.26, 0.74, 0.18, 0.82, 0.1, 0.9];

/**
 * Places for a label that follows a line, best first: near the middle, then toward the ends, on
 * the line's right-hand side (as one travels along it, y down) `right` off it, or on its left
 * `left` off it. Text never stands on its head: its angle lies within ±90°, and
 * upright text reads upward.
 */
export function alongLine(
	line: readonly Point[],
	size: Size,
	gaps: { right: number; left: number }
): Box[] {
	const total = lineLength(line);
	if (total < size.width * 0.7) return [];
	const boxes: [Box[], Box[]] = [[], []];
	for (const fraction of fractions) {
		const middle = fraction * total;
		const reach = Math.min(size.width / 2, middle, total - middle);
		if (reach < size.width * 0.34) continue;
		const [a, m, b] = placesAlong(line, [middle - reach, middle, middle + reach]) as [
			Point,
			Point,
			Point
		];
		const chord = Math.hypot(b[0] - a[0], b[1] - a[1]) || 1;
		const [ux, uy] = [(b[0] - a[0]) / chord, (b[1] - a[1]) / chord];
		// How far the line bulges to the right of its chord: the label must clear that too.
		const bulge = (m[0] - a[0]) * -uy + (m[1] - a[1]) * ux;
		let angle = (Math.atan2(uy, ux) * 180) / Math.PI;
		if (angle >= 90) angle -= 180;
		if (angle < -90) angle += 180;
		const foot: Point = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
		for (const [side, gap] of [gaps.right, gaps.left].entries()) {
			const sign = side === 0 ? 1 : -1;
			const off = sign * (gap + size.height / 2 + Math.max(0, sign * bulge));
			boxes[side as 0 | 1].push({
				...size,
				cx: foot[0] - uy * off,
				cy: foot[1] + ux * off,
				angle
			});
		}
	}
	return [...boxes[0], ...boxes[1]];
}

/** Level places round about a point, best first: right, left, above, below and the corners. */
export function aroundPoint([x, y]: Point, size: Size, gap: number): Box[] {
	const [w, h] = [size.width / 2, size.height / 2];
	const near = gap * 0.7;
	const offsets: [number, number][] = [
		[near + w, -gap - h],
		[-near - w, -gap - h],
		[near + w, gap + h],
		[-near - w, gap + h],
		[gap + w, 0],
		[-gap - w, 0],
		[0, -gap - h],
		[0, gap + h],
		[gap + w, -2.2 * h - gap],
		[-gap - w, -2.2 * h - gap],
		[gap + w, 2.2 * h + gap],
		[-gap - w, 2.2 * h + gap]
	];
	return offsets.map(([dx, dy]) => ({ ...size, cx: x + dx, cy: y + dy, angle: 0 }));
}
