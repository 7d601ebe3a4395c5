import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compile } from '#core/workbook/algebra/evaluate.ts';
import { parse } from '#core/workbook/algebra/expression.ts';
import { isolate } from '#core/workbook/algebra/isolate.ts';
import { numberTex, numberText } from '#core/workbook/algebra/number-text.ts';
import { roots } from '#core/workbook/algebra/roots.ts';
import { changedOnce, isBranched, namesIn } from '#core/workbook/algebra/tree.ts';
import { typeset } from '#core/workbook/algebra/typeset.ts';
import { within } from '#test/within.ts';

const value = (text: string, values: Record<string, number> = {}) => compile(parse(text))(values);
const tex = (text: string) => typeset(parse(text), (id) => id);

describe('formulas as text', () => {
	test.each([
		['1 + 2*3', 7],
		['(1 + 2)*3', 9],
		['8/2/2', 2],
		['5 - 2 - 1', 2],
		['-2^2', -4],
		['2^3^2', 512],
		['2^-1', 0.5],
		['-(1 - 4)', 3],
		['hypot(3, 4)', 5],
		['when(1 <= 2, 10, 20)', 10],
		['when(3 <= 2, 10, 20)', 20],
		['min(2, 1) + max(2, 1)', 3],
		['sgn(-3)*abs(-2)', -2],
		['ln(exp(2))', 2],
		['2*pi', 2 * Math.PI],
		['1.5e3', 1500]
	])('%s = %d', (text, wanted) => within(value(text), wanted, { relative: 1e-12 }));

	test.each(['1 +', '2 3', 'sin(1, 2)', '(1', 'a $ b', 'when(1, 2, 3)', 'foo(1)'])(
		'%s is refused',
		(text) => {
			expect(() => parse(text)).toThrow(RangeError);
		}
	);

	test('a missing value gives no number, and only the branch taken is needed', () => {
		expect(value('a + 1')).toBeNaN();
		expect(value('when(a <= 2, a, b)', { a: 1 })).toBe(1);
		expect(namesIn(parse('a*sin(b) + pi*a'))).toEqual(['a', 'b']);
		expect(isBranched(parse('1 + max(a, 0)'))).toBe(true);
	});

	test('typeset keeps the meaning of brackets', () => {
		expect(tex('a*(b + c)')).toBe('a\\,\\left(b+c\\right)');
		expect(tex('a - (b - c)')).toBe('a-\\left(b-c\\right)');
		expect(tex('(a + b)^2')).toBe('\\left(a+b\\right)^{2}');
		expect(tex('a/(b*c)')).toBe('\\frac{a}{b\\,c}');
		expect(tex('sin(a)')).toBe('\\sin a');
		expect(tex('tan(a/2)')).toBe('\\tan\\left(\\frac{a}{2}\\right)');
	});

	test('numbers as a student writes them', () => {
		expect([numberText(343.23275), numberText(0), numberText(1e-9)]).toEqual([
			'343.2',
			'0',
			'1e-9'
		]);
		expect(numberTex(1.2e-7)).toBe('1.2\\times 10^{-7}');
	});

	test('one change at a time', () => {
		const changed = changedOnce(parse('a*sin(x) + b*sin(y)'), (node) =>
			node.kind === 'call' ? [{ ...node, name: 'cos' }] : []
		);
		expect(changed.map((each) => typeset(each, (id) => id))).toEqual([
			'a\\,\\cos x+b\\,\\sin y',
			'a\\,\\sin x+b\\,\\cos y'
		]);
	});
});

describe('turning a formula round', () => {
	const formulas = [
		'a*x + b',
		'a - x/b',
		'a*sin(x)',
		'a/cos(x)',
		'tan(x)*b',
		'a*exp(-b*x)',
		'sqrt(a*x)',
		'x^2/(2*b)',
		'atan(x/a)',
		'b/x',
		'ln(x/a)'
	];
	test.each(formulas)('%s', (text) => {
		fc.assert(
			fc.property(
				fc.integer({ min: 1, max: 9 }),
				fc.integer({ min: 1, max: 9 }),
				fc.integer({ min: 1, max: 14 }),
				(a, b, tenths) => {
					const values = { a, b, x: tenths / 10 };
					const y = value(text, values);
					const found = isolate(parse(text), 'y', 'x')!.map((formula) =>
						compile(formula)({ a, b, y })
					);
					expect(found.some((x) => Math.abs(x - values.x) < 1e-9)).toBe(true);
				}
			),
			{ seed: 6, numRuns: 50 }
		);
	});
	test('an unknown that stands twice cannot be taken out', () => {
		expect(isolate(parse('sin(x) + a*cos(x)'), 'y', 'x')).toBeUndefined();
	});
});

describe('zeros', () => {
	const grid = Array.from({ length: 41 }, (_, i) => -2 + i / 10 + 0.013);
	test('crossed, touched, along a stretch; a jump is none', () => {
		const square = roots((x) => x * x - 1, grid, 1e-12).at;
		expect(square).toHaveLength(2);
		within(square[1]!, 1, { absolute: 1e-12 });
		const touched = roots((x) => (x - 0.5) ** 2, grid, 1e-12).at;
		within(touched[0]!, 0.5, { absolute: 1e-5 });
		const { along } = roots((x) => Math.max(0, Math.abs(x) - 1), grid, 1e-12);
		within(along[0]![0], -1, { absolute: 1e-9 });
		within(along[0]![1], 1, { absolute: 1e-9 });
		expect(roots((x) => (x < 0 ? -1 : 1), grid, 1e-12)).toEqual({ at: [], along: [] });
	});
});
