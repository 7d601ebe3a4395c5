import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { balancedOrders } from '#core/statistics/paired/balanced-orders.ts';
import { pairedTable } from '#core/statistics/paired/paired-table.ts';
import { fewestOneSided, splitChance } from '#core/statistics/paired/split-chance.ts';
import { binomialHalf } from '#core/statistics/paired/split-shares.ts';
import { within } from '#test/within.ts';

describe('the chance of a split', () => {
	test('by counting every outcome of ten coins, one by one', () => {
		for (const [more, fewer] of [
			[10, 0],
			[8, 2],
			[7, 3],
			[6, 4],
			[5, 5]
		] as const) {
			let lopsided = 0;
			for (let outcome = 0; outcome < 2 ** 10; outcome++) {
				const heads = [...outcome.toString(2)].filter((bit) => bit === '1').length;
				if (Math.abs(heads - 5) >= Math.abs(more - 5)) lopsided += 1;
			}
			within(splitChance(more, fewer).exact, lopsided / 2 ** 10, { absolute: 1e-12 });
		}
	});

	test('shares sum to one, and mirror', () => {
		fc.assert(
			fc.property(fc.integer({ min: 0, max: 400 }), (pairs) => {
				const shares = binomialHalf(pairs);
				expect(shares).toHaveLength(pairs + 1);
				within(
					shares.reduce((sum, share) => sum + share, 0),
					1,
					{ absolute: 1e-9 }
				);
				within(shares[0]!, shares[pairs]!, { absolute: 1e-15 });
			})
		);
	});

	test('a more lopsided split of as many is never more common', () => {
		fc.assert(
			fc.property(fc.integer({ min: 2, max: 60 }), fc.nat(), (pairs, seed) => {
				const fewer = seed % (Math.floor(pairs / 2) + 1);
				if (fewer === 0) return;
				const milder = splitChance(pairs - fewer, fewer);
				const starker = splitChance(pairs - fewer + 1, fewer - 1);
				expect(starker.exact).toBeLessThanOrEqual(milder.exact);
				expect(milder.middle).toBeLessThanOrEqual(milder.exact);
			})
		);
	});

	test('nobody who differs, and bad counts', () => {
		expect(splitChance(0, 0).exact).toBe(1);
		for (const bad of [-1, 0.5, NaN, 501, Infinity]) {
			expect(() => splitChance(bad, 1)).toThrow(/more must be a whole number/);
		}
	});

	test('six all one way are the fewest under one in twenty', () => {
		expect(fewestOneSided(0.05)).toBe(6);
		expect(splitChance(6, 0).exact).toBeLessThan(0.05);
		expect(splitChance(5, 0).exact).toBeGreaterThanOrEqual(0.05);
		expect(() => fewestOneSided(0)).toThrow(/chance must be/);
	});
});

test('pairs are counted where they fall', () => {
	expect(
		pairedTable([
			[true, true],
			[true, false],
			[false, true],
			[false, true],
			[false, false]
		])
	).toEqual({ both: 1, onlyFirst: 1, onlySecond: 2, neither: 1 });
});

describe('orders', () => {
	test('over full rounds each order, and each load in each place, comes equally often', () => {
		fc.assert(
			fc.property(fc.nat({ max: 10_000 }), fc.integer({ min: 1, max: 5 }), (seed, rounds) => {
				const orders = balancedOrders(6 * rounds, 3, seed);
				const counts = new Map<string, number>();
				for (const order of orders) {
					expect([...order].sort()).toEqual([0, 1, 2]);
					counts.set(order.join(), (counts.get(order.join()) ?? 0) + 1);
				}
				expect(counts.size).toBe(6);
				expect([...counts.values()].every((count) => count === rounds)).toBe(true);
			})
		);
	});

	test('the seed fixes them, more people only add to them, another seed changes them', () => {
		expect(balancedOrders(12, 3, 4)).toEqual(balancedOrders(12, 3, 4));
		expect(balancedOrders(20, 3, 4).slice(0, 12)).toEqual(balancedOrders(12, 3, 4));
		expect(balancedOrders(12, 3, 5)).not.toEqual(balancedOrders(12, 3, 4));
		expect(() => balancedOrders(0, 3, 1)).toThrow(/people must be/);
	});
});
