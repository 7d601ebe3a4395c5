import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { namesIn } from '#core/workbook/algebra/tree.ts';
import { assumedFor } from '#core/workbook/statics/defaults.ts';
import { completed } from '#core/workbook/statics/run.ts';
import type { Setup } from '#core/workbook/statics/types.ts';
import { everySetup, givensOf } from './samples.ts';

/** Known quantities that a derived one depends on, directly or through others. */
function rootsOf(setup: Setup, id: string, known: Record<string, number>): string[] {
	if (known[id] !== undefined) return [id];
	const relation = setup.relations.find((each) => each.gives === id)!;
	return [...new Set(namesIn(relation.formula).flatMap((name) => rootsOf(setup, name, known)))];
}

describe('solve for X, put X in, solve for Y, get the given back', () => {
	test.each(everySetup)('%s', (_, family, setup) => {
		let compared = 0;
		const check = (given: Record<string, number>) => {
			const start = { ...given, ...assumedFor(setup, given) };
			const values = completed(setup, start);
			const forward = (others: Record<string, number>, id: string) =>
				family.solve({ ...others, arrangement: setup.number }, id).solutions.map((s) => s.value);
			for (const { gives } of setup.relations) {
				if (start[gives] !== undefined) continue;
				const [result] = forward(start, gives);
				if (result === undefined) continue;
				expect(result).toBe(values[gives]);
				for (const input of rootsOf(setup, gives, start)) {
					const original = start[input]!;
					const others = Object.fromEntries(Object.entries(start).filter(([id]) => id !== input));
					const back = { ...others, [gives]: result, arrangement: setup.number };
					const found = family.solve(back, input);
					const fail = (word: string) =>
						new Error(
							`${gives} = ${result}: ${input} was ${original}, ${word}: ${JSON.stringify(found.solutions)} (${found.because}) with ${JSON.stringify(back)}`
						);
					for (const { value, upTo } of found.solutions)
						for (const each of upTo === undefined ? [value] : [value, (value + upTo) / 2, upTo]) {
							const again = completed(setup, { ...others, [input]: each })[gives]!;
							if (Math.abs(again - result) > 1e-8 * Math.abs(result) + 1e-8)
								throw fail(`${each} gives ${again}`);
							compared += 1;
						}
					const hit = found.solutions.some(({ value, upTo = value }) => {
						const slack = 2e-6 * Math.abs(original) + 1e-9;
						return value - slack <= original && original <= upTo + slack;
					});
					// Where the input hardly moves the result, many inputs give it back as well.
					const moved = completed(setup, { ...others, [input]: original * 1.0001 + 1e-6 })[gives]!;
					const tells = Math.abs(moved - result) > 1e-8 * Math.abs(result) + 1e-8;
					if (!hit && tells) throw fail('not found');
				}
			}
		};
		fc.assert(fc.property(givensOf(setup), check), { numRuns: 12, seed: 6 });
		expect(compared).toBeGreaterThan(20);
	});
});
