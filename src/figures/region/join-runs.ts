import type { Limit } from '#core/types.ts';
import type { Point } from '#plot/point.ts';
import type { RegionEdge } from './region-shape.ts';

type Run = { kind: Limit | 'range'; points: Point[] };

const key = (kind: string, [x, y]: Point) => `${kind} ${x} ${y}`;

/**
 * Strings runs of one kind together where one starts at the very point at which another stops, so
 * that dashes and labels run on. Runs along the range's own ends are no limit and are left out.
 */
export function joinRuns(runs: readonly Run[]): RegionEdge[] {
	const edges = runs.filter(
		(run): run is RegionEdge =>
			run.kind !== 'range' &&
			run.points.some(([x, y]) => x !== run.points[0]![0] || y !== run.points[0]![1])
	);
	const starts = new Map<string, RegionEdge>();
	for (const edge of edges) starts.set(key(edge.kind, edge.points[0]!), edge);
	const followed = new Set<RegionEdge>();
	const follower = (edge: RegionEdge) => starts.get(key(edge.kind, edge.points.at(-1)!));
	for (const edge of edges) {
		const next = follower(edge);
		if (next) followed.add(next);
	}
	const joined: RegionEdge[] = [];
	const used = new Set<RegionEdge>();
	// Edges that nothing leads to come first; what is left after them runs in closed loops.
	for (const first of [...edges.filter((edge) => !followed.has(edge)), ...edges]) {
		if (used.has(first)) continue;
		used.add(first);
		const points = [...first.points];
		for (let next = follower(first); next && !used.has(next); next = follower(next)) {
			used.add(next);
			points.push(...next.points.slice(1));
		}
		joined.push({ kind: first.kind, points });
	}
	return joined;
}
