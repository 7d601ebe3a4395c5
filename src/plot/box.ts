import type { Point } from './point.ts';

/** A rectangle on the drawing, perhaps turned: its middle, its size, and its angle in degrees. */
export type Box = { cx: number; cy: number; width: number; height: number; angle: number };

export type Frame = { left: number; top: number; right: number; bottom: number };

/** Cosine and sine of a box's angle; most boxes are level, and there are many. */
function turnOf({ angle }: Box): [number, number] {
	if (angle === 0) return [1, 0];
	const turn = (angle * Math.PI) / 180;
	return [Math.cos(turn), Math.sin(turn)];
}

/** The four corners of a box, in order round it. */
export function corners(box: Box): Point[] {
	const [c, s] = turnOf(box);
	const [w, h] = [box.width / 2, box.height / 2];
	return [
		[box.cx - c * w + s * h, box.cy - s * w - c * h],
		[box.cx + c * w + s * h, box.cy + s * w - c * h],
		[box.cx + c * w - s * h, box.cy + s * w + c * h],
		[box.cx - c * w - s * h, box.cy - s * w + c * h]
	];
}

/** Whether a box lies wholly within a frame. */
export function boxInside(box: Box, frame: Frame): boolean {
	const [c, s] = turnOf(box).map(Math.abs) as [number, number];
	const reachX = (c * box.width + s * box.height) / 2;
	const reachY = (s * box.width + c * box.height) / 2;
	return (
		box.cx - reachX >= frame.left &&
		box.cx + reachX <= frame.right &&
		box.cy - reachY >= frame.top &&
		box.cy + reachY <= frame.bottom
	);
}

/** Whether all of `b` lies beyond one of the sides of `a`. */
function separated(a: Box, b: Box): boolean {
	const [c, s] = turnOf(a);
	let [left, right, above, below] = [true, true, true, true];
	for (const [x, y] of corners(b)) {
		const across = (x - a.cx) * c + (y - a.cy) * s;
		const down = (y - a.cy) * c - (x - a.cx) * s;
		if (across > -a.width / 2) left = false;
		if (across < a.width / 2) right = false;
		if (down > -a.height / 2) above = false;
		if (down < a.height / 2) below = false;
	}
	return left || right || above || below;
}

/** Whether two boxes, turned or not, cover any common ground. */
export function boxesOverlap(a: Box, b: Box): boolean {
	const reach = Math.hypot(a.width, a.height) + Math.hypot(b.width, b.height);
	if (Math.hypot(a.cx - b.cx, a.cy - b.cy) * 2 >= reach) return false;
	return !separated(a, b) && !separated(b, a);
}

/** Whether a line of straight pieces enters a box. */
export function lineEntersBox(line: readonly Point[], box: Box): boolean {
	const [c, s] = turnOf(box);
	const [w, h] = [box.width / 2, box.height / 2];
	const reach = Math.hypot(w, h);
	let [x0, y0] = [NaN, NaN];
	for (const [px, py] of line) {
		const [x1, y1] = [px - box.cx, py - box.cy];
		const away =
			(x0 > reach && x1 > reach) ||
			(x0 < -reach && x1 < -reach) ||
			(y0 > reach && y1 > reach) ||
			(y0 < -reach && y1 < -reach) ||
			Number.isNaN(x0);
		if (!away) {
			const from: Point = [x0 * c + y0 * s, y0 * c - x0 * s];
			if (pieceEnters(from, [x1 * c + y1 * s, y1 * c - x1 * s], w, h)) return true;
		}
		[x0, y0] = [x1, y1];
	}
	return false;
}

/** Liang and Barsky's test of a straight piece against a box about the origin. */
function pieceEnters([x0, y0]: Point, [x1, y1]: Point, w: number, h: number): boolean {
	if ((x0 > w && x1 > w) || (x0 < -w && x1 < -w)) return false;
	if ((y0 > h && y1 > h) || (y0 < -h && y1 < -h)) return false;
	let [enter, leave] = [0, 1];
	for (const [from, step, half] of [
		[x0, x1 - x0, w],
		[y0, y1 - y0, h]
	] as const) {
		if (step === 0) {
			if (Math.abs(from) > half) return false;
			continue;
		}
		const [a, b] = [(-half - from) / step, (half - from) / step];
		enter = Math.max(enter, Math.min(a, b));
		leave = Math.min(leave, Math.max(a, b));
	}
	return enter <= leave;
}
