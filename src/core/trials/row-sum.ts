import { logChance, lookUp, type LogChanceTable } from '../statistics/log-chance-table.ts';
import { mergedSum } from './merged-sum.ts';
import type { RowSum } from './slip-density.ts';
import type { SlipRow } from './slip-rows.ts';

/** With more rows than these they are merged: for fewer it does not pay, and their sums stay exact. */
const manyRows = 256;

/**
 * Log likelihood of rows that share one session.
 *
 * Σ n ln P(± (a + base)); the loop reads the table in place, because it is where all the time goes. Above 256 rows they
 * are merged first, which changes the sum by less than 1e-9 a row.
 *
 * @param rows from slipRows
 * @param table of ln P at the lapse in use
 * @param exact true to compute every ln P anew
 * @returns the sum, told line by line
 * Source: derived
 * Example: rowSum([], logChanceTable(0), false).at(0) → 0
 */
export function rowSum(rows: readonly SlipRow[], table: LogChanceTable, exact: boolean): RowSum {
	const sign = Float64Array.from(rows, (row) => (row.stuck ? 1 : -1));
	const count = Float64Array.from(rows, (row) => row.count);
	const signed = new Float64Array(rows.length);
	if (exact) {
		return {
			enter(base) {
				for (let k = 0; k < signed.length; k += 1) signed[k] = sign[k]! * base[k]!;
			},
			at(margin) {
				let total = 0;
				for (let k = 0; k < signed.length; k += 1)
					total += count[k]! * logChance(signed[k]! + sign[k]! * margin, table.lapse);
				return total;
			}
		};
	}
	const { coefficients: c, reach, cellsPerUnit } = table;
	const cells = c.length / 4;
	const alone: RowSum = {
		// Predictors are kept in the table's own cells.
		enter(base) {
			for (let k = 0; k < signed.length; k += 1)
				signed[k] = (sign[k]! * base[k]! + reach) * cellsPerUnit;
		},
		at(margin) {
			const moved = margin * cellsPerUnit;
			let total = 0;
			for (let k = 0; k < signed.length; k += 1) {
				const place = signed[k]! + sign[k]! * moved;
				if (place >= 0 && place < cells) {
					const cell = place | 0;
					const d = place - cell;
					const at = cell << 2;
					total += count[k]! * (((c[at + 3]! * d + c[at + 2]!) * d + c[at + 1]!) * d + c[at]!);
				} else total += count[k]! * lookUp(table, place / cellsPerUnit - reach);
			}
			return total;
		}
	};
	return rows.length > manyRows ? mergedSum(sign, count, table, alone) : alone;
}
