import type { Interval, Limit } from '#core/types.ts';
import type { Point } from '#plot/point.ts';
import { joinAcrossBreak } from './join-across-break.ts';
import { joinRuns } from './join-runs.ts';
import type { Region } from './types.ts';
import { endsOf, type End } from './window-ends.ts';

/**
 * One edge of the holding area, in axis value (SI) and net mass (kg), net mass up. Travelling along
 * it the side that holds lies on the left, the side that fails on the right.
 */
export type RegionEdge = { kind: Limit; points: Point[] };

export type RegionShape = {
	/** Closed outlines that together fill the holding area; outlines of one area share its number. */
	rings: { area: number; points: Point[] }[];
	edges: RegionEdge[];
};

type Run = { kind: Limit | 'range'; points: Point[] };
type Track = { area: number; lower: Run; upper: Run };

const signature = (intervals: readonly Interval[]) =>
	intervals.map((interval) => `${interval.lowerLimit} ${interval.upperLimit}`).join(', ');

/**
 * The outline and the edges of the holding area from its columns. Between columns whose windows are
 * alike their ends are joined; where they are not, or a break lies between, both sides are carried
 * on to the break and joined there: closed to a point, changed in kind, or cut off by an edge that
 * stands upright.
 */
export function regionShape(region: Region): RegionShape {
	const { columns, breaks, crossings } = region;
	const rings: RegionShape['rings'] = [];
	const runs: Run[] = [];
	const parents: number[] = [];
	const root = (area: number): number => (parents[area] === area ? area : root(parents[area]!));
	let tracks: Track[] = [];

	const open = (value: number, ends: readonly End[]) => {
		tracks = [];
		for (let i = 0; i + 1 < ends.length; i += 2) {
			const [low, high] = [ends[i]!, ends[i + 1]!];
			parents.push(parents.length);
			tracks.push({
				area: parents.length - 1,
				lower: { kind: low.kind, points: [[value, low.netMass]] },
				upper: { kind: high.kind, points: [[value, high.netMass]] }
			});
		}
	};
	const extend = (value: number, ends: readonly End[]) => {
		tracks.forEach((track, i) => {
			track.lower.points.push([value, ends[2 * i]!.netMass]);
			track.upper.points.push([value, ends[2 * i + 1]!.netMass]);
		});
	};
	const close = () => {
		for (const { area, lower, upper } of tracks) {
			const back = [...upper.points].reverse();
			rings.push({ area, points: [...lower.points, ...back] });
			runs.push(lower, { kind: upper.kind, points: back });
		}
	};

	const signatures = columns.map((column) => signature(column.intervals));
	let nextBreak = 0;
	for (let i = 0; i < columns.length; i++) {
		const { value, intervals } = columns[i]!;
		const before = columns[i - 1];
		if (!before) {
			open(value, endsOf(intervals));
			while (breaks[nextBreak]! <= value) nextBreak++;
			continue;
		}
		const within: number[] = [];
		while (breaks[nextBreak]! <= value) within.push(breaks[nextBreak++]!);
		if (signatures[i] === signatures[i - 1] && within.length === 0) {
			extend(value, endsOf(intervals));
			continue;
		}
		const at = within[within.length >> 1] ?? (before.value + value) / 2;
		const join = joinAcrossBreak({
			at,
			left: [columns[i - 2], before].filter(
				(c) => c && signature(c.intervals) === signatures[i - 1]
			),
			right: [columns[i + 1], columns[i]].filter(
				(c) => c && signature(c.intervals) === signatures[i]
			),
			crossings,
			spacing: value - before.value
		});
		extend(at, join.left);
		const old = tracks;
		close();
		runs.push(
			...join.uprights.map(({ kind, from, to }) => ({
				kind,
				points: [
					[at, from],
					[at, to]
				] as Point[]
			}))
		);
		open(at, join.right);
		for (const [l, track] of old.entries()) {
			for (const [r, next] of tracks.entries()) {
				const low = Math.max(join.left[2 * l]!.netMass, join.right[2 * r]!.netMass);
				const high = Math.min(join.left[2 * l + 1]!.netMass, join.right[2 * r + 1]!.netMass);
				if (high > low) parents[root(next.area)] = root(track.area);
			}
		}
		extend(value, endsOf(intervals));
	}
	close();
	return {
		rings: rings.map(({ area, points }) => ({ area: root(area), points })),
		edges: joinRuns(runs)
	};
}
