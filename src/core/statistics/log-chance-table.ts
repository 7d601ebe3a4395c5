import { normalDensity, normalLogCdf } from './normal.ts';

/** Cubic pieces of ln(lapse + (1 − 2 lapse) Φ(z)): four coefficients a cell, cells from −reach to reach. */
export type LogChanceTable = {
	lapse: number;
	reach: number;
	cellsPerUnit: number;
	coefficients: Float64Array;
};

const reach = 12;
const cellsPerUnit = 64;
const tables = new Map<number, LogChanceTable>();

/**
 * Logarithm of the chance of "yes" when a share of trials is answered by accident.
 *
 * ln(λ + (1 − 2λ) Φ(z)).
 *
 * @param z predictor, no unit
 * @param lapse λ, share of accidents either way, 0 ≤ λ < 0.5
 * @returns natural logarithm of the chance, ≤ 0
 * Source: wichmannHill2001, equation 1 with equal lapse and guess rate
 * Example: logChance(0, 0.02) → -0.6931471805599453
 */
export function logChance(z: number, lapse: number): number {
	if (lapse === 0) return normalLogCdf(z);
	if (z > 0) return Math.log1p(-lapse - (1 - 2 * lapse) * Math.exp(normalLogCdf(-z)));
	return Math.log(lapse + (1 - 2 * lapse) * Math.exp(normalLogCdf(z)));
}

/**
 * A table of the logarithm of the chance, for loops that need millions of them.
 *
 * Cubic Hermite pieces from −12 to 12 in steps of 1/64: value and slope exact at each knot, largest error 3e-11.
 *
 * @param lapse λ, 0 ≤ λ < 0.5
 * @returns the table; one per lapse is kept, since each answer is the same
 * Source: derived
 * Example: lookUp(logChanceTable(0), 0) → -0.6931471805599453
 */
export function logChanceTable(lapse: number): LogChanceTable {
	const kept = tables.get(lapse);
	if (kept) return kept;
	const cells = 2 * reach * cellsPerUnit;
	const coefficients = new Float64Array(4 * cells);
	const knots = Array.from({ length: cells + 1 }, (_, k) => {
		const z = k / cellsPerUnit - reach;
		const value = logChance(z, lapse);
		// φ/Φ from logarithms, so that the far tail does not divide nothing by nothing.
		const slope =
			lapse === 0
				? Math.exp((-z * z) / 2 - 0.9189385332046728 - value)
				: ((1 - 2 * lapse) * normalDensity(z)) / Math.exp(value);
		return { value, slope: slope / cellsPerUnit };
	});
	for (let k = 0; k < cells; k += 1) {
		const { value: v0, slope: s0 } = knots[k]!;
		const { value: v1, slope: s1 } = knots[k + 1]!;
		coefficients.set([v0, s0, 3 * (v1 - v0) - 2 * s0 - s1, 2 * (v0 - v1) + s0 + s1], 4 * k);
	}
	const table = { lapse, reach, cellsPerUnit, coefficients };
	if (tables.size > 50) tables.clear();
	tables.set(lapse, table);
	return table;
}

/**
 * Reads a table of logarithms of chances; outside its range it computes exactly.
 *
 * @param table from logChanceTable
 * @param z predictor, no unit
 * @returns ln(λ + (1 − 2λ) Φ(z)), absolute error below 1e-10
 * Source: derived
 * Example: lookUp(logChanceTable(0), -1) → -1.8410216450092636
 */
export function lookUp(table: LogChanceTable, z: number): number {
	const place = (z + table.reach) * table.cellsPerUnit;
	const cell = Math.floor(place);
	const c = table.coefficients;
	// Above the table Φ is 1 to 33 digits.
	if (4 * cell >= c.length) return Math.log1p(-table.lapse);
	if (!(cell >= 0)) return logChance(z, table.lapse);
	const d = place - cell;
	const k = 4 * cell;
	return ((c[k + 3]! * d + c[k + 2]!) * d + c[k + 1]!) * d + c[k]!;
}
