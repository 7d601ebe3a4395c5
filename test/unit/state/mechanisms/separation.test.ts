import { describe, expect, test } from 'vitest';
import { mechanisms } from '#reference/mechanisms.ts';
import { separatingTests } from '#reference/tests-against-mechanisms.ts';
import { expected, separate, testable } from '#state/mechanisms/separation.ts';

const only = (...keys: string[]) => mechanisms.filter(({ key }) => keys.includes(key));
const best = (...keys: string[]) =>
	separate(separatingTests, only(...keys)).best.map(({ key }) => key);

describe('the test that separates best', () => {
	test('a leaning rope against an order drift: what touches the one and not the other', () => {
		expect(best('rope-lean', 'order-drift')).toEqual([
			'lean-rope',
			'same-net-load',
			'brush-and-wipe',
			'up-and-down'
		]);
	});

	test('a powder film against interlock: only what brushing or coming back down shows', () => {
		expect(best('powder-film', 'interlock')).toEqual(['brush-and-wipe', 'up-and-down']);
	});

	test('sticking skin against a film: one is worse with load or a smaller patch, the other better', () => {
		const tests = best('adhesion', 'powder-film');
		expect(tests).toContain('more-load');
		expect(tests).toContain('smaller-patch');
		// “either” excludes nothing.
		expect(tests).not.toContain('wait');
		expect(tests).not.toContain('smooth-and-coarse');
	});

	test('mechanisms of one family cannot be separated by the table', () => {
		expect(best('adhesion', 'saturation')).toEqual([]);
		expect(best('adhesion')).toEqual([]);
		expect(best()).toEqual([]);
	});

	test('counts are those of all pairs, counted again one by one', () => {
		const rows = testable(mechanisms);
		const { separations, pairs } = separate(separatingTests, mechanisms);
		expect(pairs).toBe((rows.length * (rows.length - 1)) / 2);
		for (const { test: one, apart } of separations) {
			const groups = new Map<string, number>();
			for (const { family } of rows) {
				const outcome = expected(one, family)!;
				const felt = outcome === 'little' ? 'no change' : outcome;
				groups.set(felt, (groups.get(felt) ?? 0) + 1);
			}
			const sure = [...groups].filter(([outcome]) => outcome !== 'either').map(([, n]) => n);
			const all = sure.reduce((sum, n) => sum + n, 0);
			const same = sure.reduce((sum, n) => sum + (n * (n - 1)) / 2, 0);
			expect(apart, one.key).toBe((all * (all - 1)) / 2 - same);
		}
	});

	test('fingers that open are no line of the table', () => {
		expect(testable(only('other-failure'))).toEqual([]);
	});
});
