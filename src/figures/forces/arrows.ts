import { add, boxAround, type Box, type Point } from './geometry.ts';
import type { Arrow, ArrowKind } from './types.ts';

/** Forces below this, N, are nothing: no arrow. */
const nothing = 1e-9;
const longestHead = 10;
const leastHead = 4;

/** The arrow of a force (N, y up) at a tail (px, y down); none for a zero force. */
export function arrowOf(
	id: string,
	kind: ArrowKind,
	force: Point,
	tail: Point,
	scale: number
): Arrow | undefined {
	const size = Math.hypot(force.x, force.y);
	if (size < nothing) return undefined;
	const way = { x: force.x / size, y: -force.y / size };
	const tip = { x: tail.x + force.x * scale, y: tail.y - force.y * scale };
	const length = size * scale;
	const head = Math.min(longestHead, Math.max(leastHead, 0.55 * length));
	const half = 0.4 * head;
	const base = add(tip, way, -head);
	return {
		id,
		kind,
		force,
		segment: { from: tail, to: tip },
		neck: length > head ? add(tip, way, -0.8 * head) : tail,
		head: [
			tip,
			{ x: base.x - way.y * half, y: base.y + way.x * half },
			{ x: base.x + way.y * half, y: base.y - way.x * half }
		]
	};
}

export function headBox(arrow: Arrow): Box {
	return boxAround(arrow.head);
}

/** A square around a handle's ring. */
export function ringBox({ x, y }: Point, radius = 9): Box {
	return { x: x - radius, y: y - radius, width: 2 * radius, height: 2 * radius };
}
