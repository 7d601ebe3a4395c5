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

/** Clips a segment to a box (Liang and Barsky's way); says whether any of it lies inside. */
export function crosses({ from, to }: Segment, box: Box): boolean {
	let enter = 0;
	let leave = 1;
	const dx = to.x - from.x;
	const dy = to.y - from.y;
	const sides = [
		[-dx, from.x - box.x],
		[dx, box.x + box.width - from.x],
		[-dy, from.y - box.y],
		[dy, box.y + box.height - from.y]
	] as const;
	for (const [step, room] of sides) {
		if (step === 0) {
			if (room < 0) return false;
			continue;
		}
		const at = room / step;
		if (step < 0) enter = Math.max(enter, at);
		else leave = Math.min(leave, at);
		if (enter > leave) return false;
	}
	return true;
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

/** Shortest distance between a box and a segment, px; 0 when they touch. */
export function boxToSegment(box: Box, segment: Segment): number {
	if (crosses(segment, box)) return 0;
	const { x, y, width, height } = box;
	let least = Infinity;
	for (const corner of [
		{ x, y },
		{ x: x + width, y },
		{ x, y: y + height },
		{ x: x + width, y: y + height }
	]) {
		const near = nearestOnSegment(segment, corner);
		least = Math.min(least, Math.hypot(near.x - corner.x, near.y - corner.y));
	}
	for (const end of [segment.from, segment.to]) {
		const near = nearestInBox(box, end);
		least = Math.min(least, Math.hypot(near.x - end.x, near.y - end.y));
	}
	return least;
}
