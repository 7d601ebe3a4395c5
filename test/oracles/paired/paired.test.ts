import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { splitChance } from '#core/statistics/paired/split-chance.ts';
import { binomialHalf } from '#core/statistics/paired/split-shares.ts';
import { within, type Tolerance } from '#test/within.ts';

type Case = { id: string; quantity: string; more: number; fewer: number; expected: number };
const cases = JSON.parse(readFileSync('test/oracles/paired/cases.json', 'utf8')) as (Case &
	Tolerance)[];

const computed: Record<string, (c: Case) => number> = {
	exact: ({ more, fewer }) => splitChance(more, fewer).exact,
	middle: ({ more, fewer }) => splitChance(more, fewer).middle,
	oneSided: ({ more, fewer }) => splitChance(more, fewer).exact / 2,
	share: ({ more, fewer }) => binomialHalf(more + fewer)[more]!
};

test.each(cases)('$id: $quantity of $more against $fewer as published', (one) => {
	within(computed[one.quantity]!(one), one.expected, one);
});

test('the side does not matter', () => {
	for (const { more, fewer } of cases) {
		expect(splitChance(more, fewer)).toEqual(splitChance(fewer, more));
	}
});
