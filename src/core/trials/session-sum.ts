import { lookUp, type LogChanceTable } from '../statistics/log-chance-table.ts';
import type { RowSum } from './slip-density.ts';
import type { SlipRow } from './slip-rows.ts';

const reachInSds = 6.5;

/**
 * Log likelihood of rows from several sessions, each session's own shift of the margin integrated out.
 *
 * Σ_sessions ln ∫ exp(ℓ_s(a + b)) N(b; 0, sd²) db by the trapezoid rule; along a line a moves in whole multiples of
 * the spacing of b, so each ℓ_s is computed once a place and kept.
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
	const groups = sessions.map((session) =>
		[...rows.keys()].filter((k) => rows[k]!.session === session)
	);
	const largest = Math.max(
		...groups.map((group) => group.reduce((sum, k) => sum + rows[k]!.count, 0))
	);
	// A probit trial carries at most 2/π of information, so ℓ_s is no narrower than this.
	const widest = 0.6 * Math.min(sd, 1 / Math.sqrt((2 / Math.PI) * largest));
	let spacing = widest;
	// Where a moves in smaller steps than b needs, b takes every so many of them.
	let stride = 1;
	let kept: Map<number, number>[] | undefined;
	const base = new Float64Array(rows.length);
	const logLikelihood = (group: number[], margin: number): number => {
		let total = 0;
		for (const k of group) {
			const z = base[k]! + margin;
			total += rows[k]!.count * lookUp(table, rows[k]!.stuck ? z : -z);
		}
		return total;
	};
	return {
		enter(values) {
			base.set(values);
			if (kept) kept = groups.map(() => new Map());
		},
		spaced(step) {
			spacing = step / Math.ceil(step / widest);
			stride = Math.max(1, Math.floor(widest / spacing));
			kept = groups.map(() => new Map());
		},
		at(margin) {
			const reach = Math.ceil((reachInSds * sd) / (spacing * stride));
			const centre = Math.round(margin / spacing);
			let total = 0;
			groups.forEach((group, s) => {
				const logs: number[] = [];
				let most = -Infinity;
				for (let m = -reach; m <= reach; m += 1) {
					const place = centre + m * stride;
					let value = kept?.[s]!.get(place);
					if (value === undefined) {
						value = logLikelihood(group, kept ? place * spacing : margin + m * spacing * stride);
						kept?.[s]!.set(place, value);
					}
					const shift = (m * spacing * stride) / sd;
					const log = value - (shift * shift) / 2;
					if (log > most) most = log;
					logs.push(log);
				}
				let sum = 0;
				for (const log of logs) sum += Math.exp(log - most);
				total += most + Math.log((sum * spacing * stride) / (sd * Math.sqrt(2 * Math.PI)));
			});
			return total;
		}
	};
}
