import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { compareLaws, lawFromFit } from '#core/workbook/bench-data/compare-laws.ts';
import { fitLine } from '#core/workbook/bench-data/fit-line.ts';
import { fitPower } from '#core/workbook/bench-data/fit-power.ts';
import { fitThroughOrigin } from '#core/workbook/bench-data/fit-through-origin.ts';
import type { Pair } from '#core/workbook/bench-data/pairs.ts';
import { studentFactor } from '#core/workbook/bench-data/student-factor.ts';
import { within } from '#test/within.ts';

const read = (name: string) => JSON.parse(readFileSync(new URL(name, import.meta.url), 'utf8'));
type Certified = { pairs: Pair[] } & Record<string, number>;
const nist = read('./cases.json') as Record<string, Certified>;
const reference = read('./reference.json') as {
	sets: { name: string; pairs: Pair[]; origin: number[]; line: number[]; power: number[] }[];
	student: Record<string, number>;
};
const tight = { relative: 1e-10 };

describe('NIST StRD certified fits', () => {
	test('Norris: line with intercept, 36 pairs', () => {
		const { pairs, ...wanted } = nist.Norris!;
		const fit = fitLine(pairs);
		expect(pairs).toHaveLength(36);
		within(fit.coefficient, wanted.slope!, tight);
		within(fit.coefficientError, wanted.slopeError!, tight);
		within(fit.intercept, wanted.intercept!, tight);
		within(fit.interceptError, wanted.interceptError!, tight);
		within(fit.spread, wanted.spread!, tight);
		within(fit.rest, wanted.rest!, tight);
	});

	test.each(['NoInt1', 'NoInt2'])('%s: line through the origin', (name) => {
		const { pairs, ...wanted } = nist[name]!;
		const fit = fitThroughOrigin(pairs);
		within(fit.coefficient, wanted.slope!, tight);
		within(fit.coefficientError, wanted.slopeError!, tight);
		within(fit.spread, wanted.spread!, tight);
		within(fit.rest, wanted.rest!, tight);
	});

	test('DanWood: power law, nonlinear', () => {
		const { pairs, ...wanted } = nist.DanWood!;
		const fit = fitPower(pairs);
		for (const field of [
			'factor',
			'exponent',
			'factorError',
			'exponentError',
			'spread',
			'rest'
		] as const)
			within(fit[field], wanted[field]!, { relative: 1e-8 });
	});
});

describe('a general library (numpy, scipy)', () => {
	test.each(reference.sets.map((each) => [each.name, each] as const))('%s pairs', (_, each) => {
		const { pairs, origin, line, power } = each;
		const [zero, straight, bent] = [fitThroughOrigin(pairs), fitLine(pairs), fitPower(pairs)];
		const tell = { relative: 1e-6 };
		within(zero.coefficient, origin[0]!, tell);
		within(zero.coefficientError, origin[1]!, tell);
		within(straight.coefficient, line[0]!, tell);
		within(straight.coefficientError, line[1]!, tell);
		within(straight.intercept, line[2]!, tell);
		within(straight.interceptError, line[3]!, tell);
		within(bent.factor, power[0]!, tell);
		within(bent.factorError, power[1]!, { relative: 1e-5 });
		within(bent.exponent, power[2]!, tell);
		within(bent.exponentError, power[3]!, { relative: 1e-5 });
	});

	test.each(Object.entries(reference.student))('Student factor for %s', (freedom, wanted) => {
		within(studentFactor(Number(freedom)), wanted, { relative: 1e-9 });
	});
});

describe('what the pairs support', () => {
	const of = (name: string) => reference.sets.find((each) => each.name === name)!.pairs;
	test.each([
		['proportional', 'proportional'],
		['adhesion', 'line'],
		['power', 'power'],
		['rising power', 'power']
	])('%s pairs: %s', (name, wanted) => {
		const { supported, sentence } = compareLaws(of(name));
		expect(supported, sentence).toBe(wanted);
	});
	test('loads close together tell nothing', () => {
		const near = [30, 32, 35, 38, 40].map((normal, i) => ({
			normal,
			friction: 0.5 * normal + (i % 2)
		}));
		expect(compareLaws(near).supported).toBe('unclear');
	});
	test('the law handed on to Explore has the fitted friction at the same loads', () => {
		const comparison = compareLaws(of('power'));
		const law = lawFromFit(comparison, 'power', 4e-4);
		if (law.kind !== 'power') throw new Error(law.kind);
		const ratio = law.coefficient * (20 / 4e-4 / law.referencePressure) ** (law.exponent - 1);
		const { factor, exponent } = comparison.power;
		within(ratio * 20, factor * 20 ** exponent, { relative: 1e-12 });
		const adhesion = lawFromFit(comparison, 'line', 4e-4);
		expect(adhesion).toMatchObject({ kind: 'adhesion' });
	});
	test('bad pairs are named', () => {
		expect(() =>
			fitLine([
				{ normal: 1, friction: 1 },
				{ normal: -2, friction: 1 },
				{ normal: 3, friction: 1 }
			])
		).toThrow(/pair 2: normal = -2/);
		expect(() => fitThroughOrigin([{ normal: 1, friction: 1 }])).toThrow(RangeError);
		expect(() => fitPower([1, 2, 3].map(() => ({ normal: 5, friction: 1 })))).toThrow(
			/vary the load/
		);
	});
});
