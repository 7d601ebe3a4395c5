import fc from 'fast-check';
import type { Setup } from '#core/workbook/statics/types.ts';
import { workbook } from '#core/workbook/workbook.ts';

/** Every arrangement of every family, by name, for test.each. */
export const everySetup = workbook.flatMap((family) =>
	family.setups.map((setup) => [`${family.id} / ${setup.id}`, family, setup] as const)
);

/** Sensible givens of an arrangement: any mixture of its practice values. */
export function givensOf(setup: Setup): fc.Arbitrary<Record<string, number>> {
	const fields = Object.entries(setup.practice.given).map(
		([id, [low, high, step]]) =>
			[
				id,
				fc.integer({ min: 0, max: Math.round((high - low) / step) }).map((n) => low + n * step)
			] as const
	);
	return fc.record(Object.fromEntries(fields));
}
