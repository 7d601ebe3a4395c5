import { logChance, lookUp, type LogChanceTable } from '../statistics/log-chance-table.ts';
import { mergeRows } from './merged-rows.ts';
import type { RowSum } from './slip-density.ts';

/** Nodes of one sign, so turned that the predictor rises from node to node. */
type Part = {
	sign: number;
	/** Predictor of the first node at margin 0. */
	origin: number;
	spacing: number;
	weights: Float64Array;
	/** Weight of all nodes before each, and of all at last. */
	before: Float64Array;
};

function partOf(sign: number, base: Float64Array, counts: Float64Array): Part | undefined {
	const merged = mergeRows(base, counts, base.length);
	if (!merged) return undefined;
	const { from, spacing } = merged;
	const weights = sign > 0 ? merged.weights : merged.weights.reverse();
	const before = new Float64Array(weights.length + 1);
	for (let k = 0; k < weights.length; k += 1) before[k + 1] = before[k]! + weights[k]!;
	const origin = sign > 0 ? from : -(from + (weights.length - 1) * spacing);
	return { sign, origin, spacing, weights, before };
}

const between = (low: number, value: number, high: number): number =>
	Math.max(low, Math.min(value, high));

/**
 * Log likelihood of many rows that share one session, merged into nodes at each line.
 *
 * Nodes lie a whole number of the table's cells apart, so one place within a cell serves all; beyond the table the
 * chance is as good as certain, or a matter of accidents alone, and whole stretches are one product.
 *
 * @param sign 1 for a row that stuck, −1 for one that slipped
 * @param count one a row
 * @param table of ln P at the lapse in use
 * @param alone the same sum row by row, for lines whose rows lie too far apart
 * @returns the sum, told line by line
 * Source: derived
 * Example: mergedSum(sign, count, table, alone).at(0) equals alone.at(0) to 1e-9 a row
 */
export function mergedSum(
	sign: Float64Array,
	count: Float64Array,
	table: LogChanceTable,
	alone: RowSum
): RowSum {
	const { coefficients: c, reach, cellsPerUnit, lapse } = table;
	const cells = c.length / 4;
	const [surely, never] = [logChance(4 * reach, lapse), logChance(-4 * reach, lapse)];
	const ofSign = [1, -1].map((wanted) => ({
		wanted,
		counts: count.map((n, k) => (sign[k] === wanted ? n : 0))
	}));
	let parts: Part[] | undefined;

	function sumOf({ sign, origin, spacing, weights, before }: Part, margin: number): number {
		const first = origin + sign * margin;
		const place = (first + reach) * cellsPerUnit;
		const cell = Math.floor(place);
		const d = place - cell;
		const apart = spacing * cellsPerUnit;
		const low = between(0, Math.ceil(-cell / apart), weights.length);
		const high = between(low, Math.ceil((cells - cell) / apart), weights.length);
		let total = surely * (before[weights.length]! - before[high]!);
		if (lapse > 0) total += never * before[low]!;
		else for (let k = 0; k < low; k += 1) total += weights[k]! * lookUp(table, first + k * spacing);
		for (let k = low, at = 4 * (cell + low * apart); k < high; k += 1, at += 4 * apart)
			total += weights[k]! * (((c[at + 3]! * d + c[at + 2]!) * d + c[at + 1]!) * d + c[at]!);
		return total;
	}

	return {
		enter(base) {
			const [stuck, slipped] = ofSign.map(({ wanted, counts }) => partOf(wanted, base, counts));
			parts = stuck && slipped ? [stuck, slipped] : undefined;
			if (!parts) alone.enter(base);
		},
		at: (margin) =>
			parts ? parts.reduce((sum, part) => sum + sumOf(part, margin), 0) : alone.at(margin)
	};
}
