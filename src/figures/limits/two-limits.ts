import { massIn, type MassUnit } from '#core/units/mass-text.ts';
import { linearScale, type Scale } from '#plot/scales.ts';
import { linearTicks } from '#plot/ticks.ts';
import type { Reach } from './limit-words.ts';

/** One limit of one grip. Without a reach there is nothing to draw, only `words`. */
export type LimitRow = {
	id: string;
	kind: 'slip' | 'opening';
	label: string;
	reach: Reach | undefined;
	/** Stands where nothing can be drawn. */
	words?: string;
	/** Drawn pale: no clear link with load. */
	faint?: boolean;
};
export type GripRows = { id: string; grip: string; rows: LimitRow[] };

export const gripHeight = 22;
export const rowHeight = 34;

export type DrawnLimits = {
	x: Scale;
	ticks: number[];
	left: number;
	right: number;
	grips: { id: string; grip: string; y: number; rows: DrawnRow[] }[];
	axis: number;
	height: number;
};
export type DrawnRow = {
	row: LimitRow;
	y: number;
	tried: { from: number; to: number } | undefined;
	/** Ends of the bar, px, and whether it runs off what was tried there. */
	bar: { from: number; to: number; openLeft: boolean; openRight: boolean } | undefined;
	dot: number | undefined;
};

/** Both limits of each grip on one axis, in px. */
export function twoLimits(
	grips: readonly GripRows[],
	{ massUnit, width }: { massUnit: MassUnit; width: number }
): DrawnLimits {
	const shown = (load: number) => massIn(load, massUnit);
	const reaches = grips.flatMap(({ rows }) => rows.flatMap(({ reach }) => reach ?? []));
	const from = Math.min(...reaches.map((r) => shown(r.from)));
	const to = Math.max(...reaches.map((r) => shown(r.to)));
	const room = 0.06 * (to - from);
	const [left, right] = [12, Math.max(120, width - 12)];
	const domain: [number, number] = reaches.length > 0 ? [from - room, to + room] : [0, 100];
	const x = linearScale(domain, [left, right]);
	let y = 0;
	const drawn = grips.map(({ id, grip, rows }) => {
		const top = y;
		y += gripHeight;
		return {
			...{ id, grip, y: top + gripHeight / 2 },
			rows: rows.map((row): DrawnRow => {
				y += rowHeight;
				return drawnRow(row, y - 10, (load) => x(shown(load)));
			})
		};
	});
	return {
		...{ x, left, right, axis: y + 8, height: y + 52, grips: drawn },
		ticks: linearTicks(domain[0], domain[1], (right - left) / 60)
	};
}

function drawnRow(row: LimitRow, y: number, place: (load: number) => number): DrawnRow {
	const { reach } = row;
	if (!reach) return { row, y, tried: undefined, bar: undefined, dot: undefined };
	const { from, to, q05, q50, q95, beyond } = reach;
	const low = q05 ?? (q50 === null && beyond === 'above' && q95 === null ? to : from);
	const high = q95 ?? (q50 === null && beyond === 'below' && q05 === null ? from : to);
	return {
		...{ row, y },
		tried: { from: place(from), to: place(to) },
		bar: {
			...{ from: place(low), to: place(high) },
			openLeft: q05 === null && !(low === to),
			openRight: q95 === null && !(high === from)
		},
		dot: q50 === null ? undefined : place(q50)
	};
}
