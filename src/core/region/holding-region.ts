import { checkHang } from '../strength/check-hang.ts';
import { prepareHang } from '../strength/prepare-hang.ts';
import type { Hang, Interval, RegionAxis } from '../types.ts';
import { requireAllowed } from '../units/allowed-range.ts';
import { crossingsAt, type Crossing } from './crossings.ts';
import { hangOnAxis } from './hang-on-axis.ts';
import { checkMassRange } from './holding-window.ts';
import { findBreaks, type Column } from './breaks.ts';
import { windowOf } from './window-of.ts';

const axes: RegionAxis[] = ['slope', 'coefficient', 'padArea', 'ropeAngle', 'holdTime'];

/** The holding window at many values of one axis; see holdingRegion. */
export type HoldingRegion = {
	/** One window for each axis value, evenly spaced from `from` to `to`. */
	columns: { value: number; intervals: Interval[] }[];
	/** Axis values where intervals are born, die, split, join or change what ends them, in order. */
	breaks: number[];
	/** Where a slip edge meets a strength edge: axis value and net mass, kg. */
	crossings: Crossing[];
};

/**
 * Sweeps the holding window along one other quantity: the holding region.
 * @param hang the hang, all but its load
 * @param o.axis what moves: slope (rad, the tip's on a rounded hold), coefficient (of the law),
 * padArea (m² per finger at the present load), ropeAngle (rad) or holdTime (s)
 * @param o.from first value of the axis
 * @param o.to last value, above from
 * @param o.columns number of columns, 2 to 10000
 * @param o.load.from lightest net mass, kg, above 0
 * @param o.load.to heaviest, kg, above from
 * @param o.load.present the present net mass, kg, used only to label a growing patch by its area
 * (default: the hanging mass)
 * @returns columns, breaks and crossings; values the hang does not allow have no intervals
 * Valid for: as holdingWindow. Two breaks between neighbouring columns that undo each other are
 * not seen; take more columns to look closer.
 * @throws RangeError for a field outside its range; never for a column
 * Source: derived.
 * Example: a constant ratio 0.64 and a plumb rope over slope: a break at atan 0.64 = 0.569313 rad,
 * and a crossing where the strength edge arrives there.
 */
export function holdingRegion(
	hang: Hang,
	o: {
		axis: RegionAxis;
		from: number;
		to: number;
		columns: number;
		load: { from: number; to: number; present?: number };
	}
): HoldingRegion {
	checkHang(hang);
	const { axis, from, to, load } = o;
	if (!axes.includes(axis))
		throw new RangeError(`axis must be one of ${axes.join(', ')}, but is ${String(axis)}`);
	requireAllowed('from', from, {});
	requireAllowed('to', to, { above: from });
	requireAllowed('columns', o.columns, { min: 2, max: 10000, whole: true });
	checkMassRange('load.', load);
	const present = load.present ?? hang.hangingMass;
	requireAllowed('load.present', present, { above: 0, unit: 'kg' });

	const columnAt = (value: number): Column => {
		const there = hangOnAxis(hang, axis, value, present);
		const intervals = there ? windowOf(prepareHang(there), load.from, load.to) : [];
		return { value, intervals };
	};
	const columns = Array.from({ length: o.columns }, (_, i) =>
		columnAt(i === o.columns - 1 ? to : from + ((to - from) * i) / (o.columns - 1))
	);
	const pairs = findBreaks(columns, columnAt);
	const breaks = pairs.map(([left, right]) => (left.value + right.value) / 2);
	const crossings = pairs.flatMap((pair) =>
		crossingsAt(pair, (value) => hangOnAxis(hang, axis, value, present))
	);
	return { columns, breaks, crossings };
}
