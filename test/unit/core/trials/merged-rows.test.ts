import { describe, expect, test } from 'vitest';
import { logChanceTable } from '#core/statistics/log-chance-table.ts';
import { seededRandom } from '#core/statistics/random.ts';
import { mergeRows } from '#core/trials/merged-rows.ts';
import { rowSum } from '#core/trials/row-sum.ts';
import type { SlipRow } from '#core/trials/slip-rows.ts';
import { within } from '#test/within.ts';

function rows(count: number, seed: number): { rows: SlipRow[]; base: Float64Array } {
	const random = seededRandom(seed);
	const rows = Array.from({ length: count }, (_, k) => ({
		...{ lnLoad: 0, ropeTerm: 0, order: k, session: 1 },
		stuck: random.uniform() > 0.4,
		count: 1 + Math.floor(3 * random.uniform())
	}));
	return { rows, base: Float64Array.from(rows, () => 4 * random.uniform() - 2) };
}

describe('many rows merged into few nodes', () => {
	test.each([
		{ lapse: 0, count: 300 },
		{ lapse: 0.02, count: 300 },
		{ lapse: 0, count: 5000 },
		{ lapse: 0.02, count: 5000 },
		{ lapse: 0.05, count: 5000 }
	])('$count rows at lapse $lapse sum as each on its own', ({ lapse, count }) => {
		const { rows: many, base } = rows(count, 7);
		const table = logChanceTable(lapse);
		const merged = rowSum(many, table, false);
		const alone = rowSum(many, table, true);
		merged.enter(base);
		alone.enter(base);
		for (const margin of [-6, -2.3, -0.4, 0, 0.123, 1.7, 6])
			within(merged.at(margin), alone.at(margin), { absolute: 1e-9 * count });
	});

	test('nodes carry a polynomial of degree 7 exactly', () => {
		const places = Float64Array.from([-0.31, 0.02, 0.4]);
		const counts = Float64Array.from([2, 1, 5]);
		const { from, spacing, weights } = mergeRows(places, counts, 100)!;
		for (const power of [0, 1, 4, 7]) {
			const direct = places.reduce((sum, x, k) => sum + counts[k]! * x ** power, 0);
			const nodes = weights.reduce((sum, w, k) => sum + w * (from + k * spacing) ** power, 0);
			within(nodes, direct, { absolute: 1e-12 });
		}
	});

	test('places too far apart are left as they are', () => {
		const [places, counts] = [Float64Array.from([0, 1e6]), Float64Array.from([1, 1])];
		expect(mergeRows(places, counts, 1000)).toBeUndefined();
		const many = rows(300, 3);
		many.base[0] = 1e5;
		const [table, base] = [logChanceTable(0.02), many.base];
		const [plain, alone] = [rowSum(many.rows, table, false), rowSum(many.rows, table, true)];
		plain.enter(base);
		alone.enter(base);
		within(plain.at(0.3), alone.at(0.3), { absolute: 1e-6 });
	});

	test('no row at all weighs nothing', () => {
		expect(mergeRows(Float64Array.of(3), Float64Array.of(0), 9)!.weights.length).toBe(0);
	});
});
