import type { LogChanceTable } from '../statistics/log-chance-table.ts';
import { rowSum } from './row-sum.ts';
import type { RowSum } from './slip-density.ts';
import type { SlipRow } from './slip-rows.ts';

const reachInSds = 6.5;
/** Places kept beyond the first window of a line, either way. */
const beyond = 256;
/** Kept values stay within exp(± this) of the largest of the line's first window. */
const farthest = 600;

/**
 * Log likelihood of rows from several sessions, each session's own shift of the margin integrated out.
 *
 * Σ_sessions ln ∫ exp(ℓ_s(a + b)) N(b; 0, sd²) db by the trapezoid rule; along a line a moves in whole multiples of
 * the spacing of b, so each exp(ℓ_s) is computed once a place and kept, and a point costs one dot product a session.
 *
 * @param rows from slipRows
 * @param table of ln P at the lapse in use
 * @param sd of a session's shift, probits, above 0
 * @returns the sum, told line by line
 * Source: derived; trapezoid rule trefethenWeideman2014
 * Example: sessionSum([], logChanceTable(0), 0.7).at(0) → 0
 */
export function sessionSum(rows: readonly SlipRow[], table: LogChanceTable, sd: number): RowSum {
	const sessions = [...new Set(rows.map((row) => row.session))];
	const groups = sessions.map((session) => {
		const members = [...rows.keys()].filter((k) => rows[k]!.session === session);
		const own = members.map((k) => rows[k]!);
		return { members, own: rowSum(own, table, false), base: new Float64Array(own.length) };
	});
	const largest = Math.max(
		...groups.map(({ members }) => members.reduce((sum, k) => sum + rows[k]!.count, 0))
	);
	// A probit trial carries at most 2/π of information about its middle, so ℓ_s is hardly narrower than this; the
	// trapezoid rule on a bell at 0.8 of its width is good to exp(−30).
	const widest = 0.8 * Math.min(sd, 1 / Math.sqrt((2 / Math.PI) * largest));
	let laid = layOut(widest, 1);
	let kept: Kept[] | undefined;
	let line = 0;

	/** Spacing of places; where a moves in smaller steps than b needs, b takes every so many of them. */
	function layOut(spacing: number, stride: number) {
		const reach = Math.ceil((reachInSds * sd) / (spacing * stride));
		const step = spacing * stride;
		const scale = step / (sd * Math.sqrt(2 * Math.PI));
		const bell = Float64Array.from({ length: 2 * reach + 1 }, (_, k) => {
			const shift = ((k - reach) * step) / sd;
			return scale * Math.exp((-shift * shift) / 2);
		});
		return { spacing, stride, reach, bell };
	}
	/** Begins a session's window afresh about a place. */
	function begin(cache: Kept, { own }: Group, centre: number): void {
		const { spacing, stride, reach } = laid;
		cache.line = line;
		cache.from = centre - reach * stride - beyond;
		cache.stamps.fill(0);
		cache.most = -Infinity;
		for (let m = -reach; m <= reach; m += 1) {
			const value = own.at((centre + m * stride) * spacing);
			cache.values[centre + m * stride - cache.from] = value;
			if (value > cache.most) cache.most = value;
		}
		for (let m = -reach; m <= reach; m += 1) {
			const at = centre + m * stride - cache.from;
			cache.values[at] = Math.exp(cache.values[at]! - cache.most);
			cache.stamps[at] = 1;
		}
	}
	function dot(cache: Kept, { own }: Group, centre: number): number {
		const { spacing, stride, reach, bell } = laid;
		const { values, stamps, from, most } = cache;
		let sum = 0;
		for (let m = 0; m <= 2 * reach; m += 1) {
			const place = centre + (m - reach) * stride;
			const at = place - from;
			if (stamps[at] !== 1) {
				const over = own.at(place * spacing) - most;
				if (over > farthest) return Infinity;
				values[at] = Math.exp(over);
				stamps[at] = 1;
			}
			sum += values[at]! * bell[m]!;
		}
		return sum;
	}
	function fromKept(margin: number, all: Kept[]): number {
		const { spacing, stride, reach } = laid;
		const centre = Math.round(margin / spacing);
		let total = 0;
		for (let s = 0; s < groups.length; s += 1) {
			const [cache, group] = [all[s]!, groups[s]!];
			const low = centre - reach * stride - cache.from;
			const inside = low >= 0 && low + 2 * reach * stride < cache.values.length;
			if (cache.line !== line || !inside) begin(cache, group, centre);
			let sum = dot(cache, group, centre);
			if (!(sum > 1e-250 && sum < Infinity)) {
				begin(cache, group, centre);
				sum = dot(cache, group, centre);
			}
			total += cache.most + Math.log(sum);
		}
		return total;
	}
	function afresh(margin: number): number {
		const { spacing, stride, reach, bell } = laid;
		let total = 0;
		for (const { own } of groups) {
			const logs = Array.from(bell, (_, k) => own.at(margin + (k - reach) * stride * spacing));
			const most = Math.max(...logs);
			total += most + Math.log(logs.reduce((sum, l, k) => sum + bell[k]! * Math.exp(l - most), 0));
		}
		return total;
	}
	return {
		enter(values) {
			line += 1;
			for (const { members, own, base } of groups) {
				members.forEach((k, place) => (base[place] = values[k]!));
				own.enter(base);
			}
		},
		spaced(step) {
			const spacing = step / Math.ceil(step / widest);
			laid = layOut(spacing, Math.max(1, Math.floor(widest / spacing)));
			const size = 2 * laid.reach * laid.stride + 1 + 2 * beyond;
			kept = groups.map(() => ({
				...{ line: 0, from: 0, most: 0 },
				values: new Float64Array(size),
				stamps: new Uint8Array(size)
			}));
		},
		at: (margin) => (kept ? fromKept(margin, kept) : afresh(margin))
	};
}

/** One session's rows. */
type Group = { members: number[]; own: RowSum; base: Float64Array };

/** What is kept of one session along one line: exp(ℓ − most) at places counted from `from`. */
type Kept = {
	line: number;
	from: number;
	most: number;
	values: Float64Array;
	stamps: Uint8Array;
};
