/** A place in the drawing, px; y points down, as on the screen. */
export type Point = { x: number; y: number };
export type Box = { x: number; y: number; width: number; height: number };
export type Segment = { from: Point; to: Point };

export function add(a: Point, b: Point, times = 1): Point {
	return { x: a.x + b.x * times, y: a.y + b.y * times };
}

export function middle(box: Box): Point {
	return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

export function boxAround(points: Point[], margin = 0): Box {
	const xs = points.map((point) => point.x);
	const ys = points.map((point) => point.y);
	const x = Math.min(...xs) - margin;
	const y = Math.min(...ys) - margin;
	return { x, y, width: Math.max(...xs) + margin - x, height: Math.max(...ys) + margin - y };
}

export function inset(box: Box, margin: number): Box {
	return {
		x: box.x + margin,
		y: box.y + margin,
		width: box.width - 2 * margin,
		height: box.height - 2 * margin
	};
}

export function overlaps(a: Box, b: Box, margin = 0): boolean {
	return (
		a.x < b.x + b.width + margin &&
		b.x < a.x + a.width + margin &&
		a.y < b.y + b.height + margin &&
		b.y < a.y + a.height + margin
	);
}

export function contains(outer: Box, inner: Box): boolean {
	return (
		inner.x >= outer.x &&
		inner.y >= outer.y &&
		inner.x + inner.width <= outer.x + outer.width &&
		inner.y + inner.height <= outer.y + outer.height
	);
}

export function holdsPoint(box: Box, point: Point): boolean {
	return (
		point.x >= box.x &&
		point.x <= box.x + box.width &&
		point.y >= box.y &&
		point.y <= box.y + box.height
	);
}

/** Whether any of a segment lies in a box, its edge included. Called thousands of times a drawing. */
export function crosses({ from, to }: Segment, { x, y, width, height }: Box): boolean {
	const right = x + width;
	const bottom = y + height;
	if (from.x < x && to.x < x) return false;
	if (from.x > right && to.x > right) return false;
	if (from.y < y && to.y < y) return false;
	if (from.y > bottom && to.y > bottom) return false;
	const dx = to.x - from.x;
	const dy = to.y - from.y;
	// All four corners on one side of the line: it passes by.
	const side = (cx: number, cy: number) => dx * (cy - from.y) - dy * (cx - from.x);
	const a = side(x, y);
	const b = side(right, y);
	const c = side(x, bottom);
	const d = side(right, bottom);
	return !((a > 0 && b > 0 && c > 0 && d > 0) || (a < 0 && b < 0 && c < 0 && d < 0));
}

export function segmentsCross(a: Segment, b: Segment): boolean {
	const side = (s: Segment, p: Point) =>
		(s.to.x - s.from.x) * (p.y - s.from.y) - (s.to.y - s.from.y) * (p.x - s.from.x);
	return side(a, b.from) * side(a, b.to) < 0 && side(b, a.from) * side(b, a.to) < 0;
}

/** The point of a segment, not before the share `least` of its length, that is nearest to a point. */
export function nearestOnSegment({ from, to }: Segment, point: Point, least = 0): Point {
	const dx = to.x - from.x;
	const dy = to.y - from.y;
	const square = dx * dx + dy * dy;
	const share = square === 0 ? 1 : ((point.x - from.x) * dx + (point.y - from.y) * dy) / square;
	const kept = Math.min(1, Math.max(least, share));
	return { x: from.x + dx * kept, y: from.y + dy * kept };
}

export function nearestInBox(box: Box, point: Point): Point {
	return {
		x: Math.min(box.x + box.width, Math.max(box.x, point.x)),
		y: Math.min(box.y + box.height, Math.max(box.y, point.y))
	};
}

/** Shortest distance between a point and a segment, px. */
export function pointToSegment(x: number, y: number, { from, to }: Segment): number {
	const dx = to.x - from.x;
	const dy = to.y - from.y;
	const square = dx * dx + dy * dy;
	let share = square === 0 ? 0 : ((x - from.x) * dx + (y - from.y) * dy) / square;
	share = share < 0 ? 0 : share > 1 ? 1 : share;
	const ex = from.x + dx * share - x;
	const ey = from.y + dy * share - y;
	return Math.sqrt(ex * ex + ey * ey);
}

/** Shortest distance between a box and a segment, px; 0 when they touch. */
export function boxToSegment(box: Box, segment: Segment): number {
	if (crosses(segment, box)) return 0;
	const { x, y, width, height } = box;
	const right = x + width;
	const bottom = y + height;
	return Math.min(
		pointToSegment(x, y, segment),
		pointToSegment(right, y, segment),
		pointToSegment(x, bottom, segment),
		pointToSegment(right, bottom, segment),
		pointToBox(segment.from, box),
		pointToBox(segment.to, box)
	);
}

function pointToBox(point: Point, { x, y, width, height }: Box): number {
	const dx = Math.max(x - point.x, 0, point.x - x - width);
	const dy = Math.max(y - point.y, 0, point.y - y - height);
	return Math.sqrt(dx * dx + dy * dy);
}
