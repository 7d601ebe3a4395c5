import type { Interval, Limit } from '#core/types.ts';

/** One end of a holding window: net mass, kg, and what ends it there. */
export type End = { netMass: number; kind: Limit | 'range' };

/** The ends of a column's intervals, from the lightest up: lower, upper, lower, upper, … */
export function endsOf(intervals: readonly Interval[]): End[] {
	return intervals.flatMap((interval): End[] => [
		{ netMass: interval.from, kind: interval.lowerLimit },
		{ netMass: interval.to, kind: interval.upperLimit }
	]);
}
