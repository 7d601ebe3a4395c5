import { describe, expect, test } from 'vitest';
import { read, rootsOf, type Curve } from '#core/region/roots.ts';
import { within } from '#test/within.ts';

function curveOf(value: (x: number) => number, rate: (x: number) => number): Curve {
	return {
		value: 0,
		rate: 0,
		moveTo(at) {
			this.value = value(at);
			this.rate = rate(at);
		}
	};
}

function roots(curve: Curve, from: number, to: number): number[] {
	return rootsOf(curve, read(curve, from), read(curve, to));
}

describe('roots of a curve that bends one way', () => {
	const square = (offset: number) =>
		curveOf(
			(x) => x * x + offset,
			(x) => 2 * x
		);

	test('one, where the sign changes', () => {
		const found = roots(square(-2), 0, 2);
		expect(found).toHaveLength(1);
		within(found[0]!, Math.SQRT2, { relative: 1e-14 });
	});

	test('two, where it dips through zero and out again, from above and from below', () => {
		const found = roots(square(-2), -3, 5);
		expect(found).toHaveLength(2);
		within(found[0]!, -Math.SQRT2, { relative: 1e-14 });
		within(found[1]!, Math.SQRT2, { relative: 1e-14 });
		const hill = curveOf(
			(x) => 2 - x * x,
			(x) => -2 * x
		);
		expect(roots(hill, -3, 5)).toHaveLength(2);
	});

	test('two that are almost one', () => {
		const found = roots(square(-1e-14), -1, 2);
		expect(found).toHaveLength(2);
		within(found[1]!, 1e-7, { relative: 1e-6 });
	});

	test('none where it does not reach zero, or only touches it', () => {
		expect(roots(square(1e-14), -1, 2)).toEqual([]);
		expect(roots(square(0), -1, 2)).toEqual([]);
		expect(roots(square(1), 1, 2)).toEqual([]);
	});

	test('a root at the very start of an endless slope is found', () => {
		const steep = curveOf(
			(x) => Math.sqrt(x) - 1e-3,
			(x) => 0.5 / Math.sqrt(x)
		);
		within(roots(steep, 1e-14, 1)[0]!, 1e-6, { relative: 1e-12 });
	});
});
