import type { Point } from './point.ts';

/** Whether a point lies within a closed outline (a ray from it crosses the outline an odd number of times). */
export function insideRing([x, y]: Point, ring: readonly Point[]): boolean {
	let inside = false;
	for (let i = 0, j = ring.length - 1; i < ring.length; j = i++) {
		const [[xi, yi], [xj, yj]] = [ring[i]!, ring[j]!];
		if (yi > y !== yj > y && x < xi + ((xj - xi) * (y - yi)) / (yj - yi)) inside = !inside;
	}
	return inside;
}
