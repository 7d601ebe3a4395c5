import type { Box, Point, Segment } from './geometry.ts';

type Wanted = { own: Segment; width: number; height: number };

/** Clear space between a label and its arrow, px. */
const gap = 4;
const directions = Array.from({ length: 12 }, (_, i) => ({
	x: Math.cos((i * Math.PI) / 6),
	y: Math.sin((i * Math.PI) / 6)
}));

/** Around the tip, then along both sides of the shaft. */
export function besides({ own, width, height }: Wanted): Point[] {
	const centres: Point[] = [];
	const { from, to } = own;
	const at = (point: Point, way: Point, distance: number) =>
		centres.push({
			x: point.x + way.x * (distance + width / 2),
			y: point.y + way.y * (distance + height / 2)
		});
	for (const distance of [gap + 3, gap + 9]) {
		for (const way of directions) at(to, way, distance);
	}
	const length = Math.hypot(to.x - from.x, to.y - from.y);
	if (length < 1) return centres;
	const across = { x: -(to.y - from.y) / length, y: (to.x - from.x) / length };
	for (const share of [0.9, 0.75, 0.6, 0.45, 0.3]) {
		const point = { x: from.x + (to.x - from.x) * share, y: from.y + (to.y - from.y) * share };
		for (const side of [1, -1]) {
			for (const distance of [gap, gap + 6]) {
				// A box clears a line at the support of its corner, not at its half width.
				const clear =
					distance + (Math.abs(across.x) * width) / 2 + (Math.abs(across.y) * height) / 2;
				centres.push({
					x: point.x + across.x * clear * side,
					y: point.y + across.y * clear * side
				});
			}
		}
	}
	return centres;
}

/** A mesh of places over the whole frame. */
export function everywhere({ width, height }: Wanted, frame: Box, mesh: number): Point[] {
	const centres: Point[] = [];
	const columns = Math.max(1, Math.floor((frame.width - width) / mesh));
	const rows = Math.max(1, Math.floor((frame.height - height) / (mesh * 0.85)));
	for (let i = 0; i <= columns; i++) {
		for (let j = 0; j <= rows; j++) {
			centres.push({
				x: frame.x + width / 2 + ((frame.width - width) * i) / columns,
				y: frame.y + height / 2 + ((frame.height - height) * j) / rows
			});
		}
	}
	return centres;
}
