import type { Point } from './point.ts';

/** Length of a line of straight pieces. */
export function lineLength(line: readonly Point[]): number {
	let length = 0;
	for (let i = 1; i < line.length; i++) length += pieceLength(line, i);
	return length;
}

function pieceLength(line: readonly Point[], i: number): number {
	return Math.hypot(line[i]![0] - line[i - 1]![0], line[i]![1] - line[i - 1]![1]);
}

/** The places at given distances along a line; distances must rise. Past the end: the end. */
export function placesAlong(line: readonly Point[], distances: readonly number[]): Point[] {
	const places: Point[] = [];
	if (line.length === 0) return places;
	let [i, start] = [1, 0];
	for (const distance of distances) {
		while (i < line.length - 1 && start + pieceLength(line, i) < distance) {
			start += pieceLength(line, i);
			i++;
		}
		const [from, to] = [line[i - 1]!, line[i] ?? line[i - 1]!];
		const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
		const t = length === 0 ? 0 : Math.min(Math.max((distance - start) / length, 0), 1);
		places.push([from[0] + (to[0] - from[0]) * t, from[1] + (to[1] - from[1]) * t]);
	}
	return places;
}

/**
 * Leaves out the points that a straight piece already passes within `tolerance` of: a smooth edge
 * of 240 columns then needs a few tens of pieces, and looks the same.
 */
export function simplify(line: readonly Point[], tolerance: number): Point[] {
	if (line.length <= 2) return [...line];
	const kept = new Uint8Array(line.length);
	kept[0] = kept[line.length - 1] = 1;
	const open: [number, number][] = [[0, line.length - 1]];
	for (let span = open.pop(); span; span = open.pop()) {
		const [from, to] = span;
		let [worst, at] = [tolerance, -1];
		for (let i = from + 1; i < to; i++) {
			const away = distanceToPiece(line[i]!, line[from]!, line[to]!);
			if (away > worst) [worst, at] = [away, i];
		}
		if (at < 0) continue;
		kept[at] = 1;
		open.push([from, at], [at, to]);
	}
	return line.filter((_, i) => kept[i]);
}

function distanceToPiece(point: Point, from: Point, to: Point): number {
	const [x, y] = nearestOnPiece(point, from, to);
	return Math.hypot(point[0] - x, point[1] - y);
}

function nearestOnPiece([x, y]: Point, from: Point, to: Point): Point {
	const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
	const square = dx * dx + dy * dy;
	const t = square === 0 ? 0 : ((x - from[0]) * dx + (y - from[1]) * dy) / square;
	const held = Math.min(Math.max(t, 0), 1);
	return [from[0] + held * dx, from[1] + held * dy];
}

/** The point of a line that lies nearest to a given one, and how far off it is. */
export function nearestOnLine(
	point: Point,
	line: readonly Point[]
): { place: Point; distance: number } | undefined {
	let best: { place: Point; distance: number } | undefined;
	for (let i = 0; i < line.length; i++) {
		const place = nearestOnPiece(point, line[Math.max(0, i - 1)]!, line[i]!);
		const distance = Math.hypot(point[0] - place[0], point[1] - place[1]);
		if (!best || distance < best.distance) best = { place, distance };
	}
	return best;
}

/**
 * The parts of a line that lie between two heights, cut where it crosses them. A point whose height
 * is not a number breaks the line; an infinite one runs straight up or down from its neighbour.
 */
export function clipToHeights(line: readonly Point[], low: number, high: number): Point[][] {
	const parts: Point[][] = [];
	let part: Point[] = [];
	const close = () => {
		if (part.length > 1) parts.push(part);
		part = [];
	};
	const within = (y: number) => y >= low && y <= high;
	for (let i = 0; i < line.length; i++) {
		const [a, b] = [line[i - 1], line[i]!];
		if (Number.isNaN(b[1])) {
			close();
			continue;
		}
		if (a && !Number.isNaN(a[1])) {
			if (!within(a[1]) && within(b[1])) part.push(cut(b, a, a[1] < low ? low : high));
			else if (within(a[1]) && !within(b[1])) part.push(cut(a, b, b[1] < low ? low : high));
			else if ((a[1] < low && b[1] > high) || (a[1] > high && b[1] < low)) {
				const [first, second] = a[1] < low ? [low, high] : [high, low];
				part.push(cut(a, b, first), cut(a, b, second));
			}
		}
		if (within(b[1])) part.push(b);
		else close();
	}
	close();
	return parts;
}

function cut(a: Point, b: Point, y: number): Point {
	const finite = Number.isFinite(a[1]) && Number.isFinite(b[1]);
	if (finite) return [a[0] + (b[0] - a[0]) * ((y - a[1]) / (b[1] - a[1])), y];
	return [Number.isFinite(a[1]) ? a[0] : b[0], y];
}
