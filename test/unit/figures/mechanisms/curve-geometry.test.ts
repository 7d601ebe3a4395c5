import { describe, expect, test } from 'vitest';
import { boardAxes, curvePaths, frame, leaves, split } from '#figures/mechanisms/curve-geometry.ts';
import { curveAltText } from '#figures/mechanisms/curve-words.ts';
import { within } from '#test/within.ts';

const range = { from: 30, to: 110 };
const line = [30, 50, 70, 90, 110].map((netMass) => ({ netMass, margin: netMass / 70 }));

describe('axes of the small figures', () => {
	test('stay where they are while the margin is near 1, and move with it beyond', () => {
		const near = [0.85, 1, 1.2].map((margin) => boardAxes(range, margin, 'kg').y.domain);
		for (const [low, high] of near) {
			within(low, Math.SQRT1_2, { absolute: 1e-12 });
			within(high, Math.SQRT2, { absolute: 1e-12 });
		}
		for (const margin of [0.05, 0.4, 2.3, 17]) {
			const [low, high] = boardAxes(range, margin, 'kg').y.domain;
			expect(low).toBeLessThan(margin / 1.2);
			expect(high).toBeGreaterThan(margin * 1.2);
			expect(high / low).toBeLessThan(3);
		}
	});

	test('loads are shown in pounds where pounds are chosen', () => {
		const { x } = boardAxes(range, 1, 'lb');
		within(x.domain[1], 110 / 0.45359237, { relative: 1e-12 });
	});
});

describe('what is dashed', () => {
	test('begins and ends where the doubt does, on the curve', () => {
		const { sure, doubtful } = split(line, [{ from: 60, to: 80 }]);
		expect(sure).toHaveLength(2);
		expect(doubtful).toHaveLength(1);
		expect(doubtful[0]!.map(({ netMass }) => netMass)).toEqual([60, 70, 80]);
		within(doubtful[0]![0]!.margin, 60 / 70, { absolute: 1e-12 });
		expect(sure[0]!.at(-1)).toEqual(doubtful[0]![0]);
	});

	test('nothing without a doubt, everything with one over the whole range', () => {
		const axes = boardAxes(range, 1, 'kg');
		expect(curvePaths(line, [], axes).doubtful).toBe('');
		expect(curvePaths(line, [range], axes).sure).toBe('');
	});

	test('overlapping doubts are one dashed stretch', () => {
		const doubts = [
			{ from: 40, to: 75 },
			{ from: 60, to: 110 }
		];
		expect(split(line, doubts).doubtful).toHaveLength(1);
	});
});

test('margins of 0 and Infinity leave finite paths within the frame, and words for them', () => {
	const wild = [
		{ netMass: 30, margin: 0 },
		{ netMass: 50, margin: 0.9 },
		{ netMass: 70, margin: 1 },
		{ netMass: 110, margin: Infinity }
	];
	const axes = boardAxes(range, 1, 'kg');
	for (const doubts of [[], [{ from: 40, to: 80 }]]) {
		const { sure, doubtful } = curvePaths(wild, doubts, axes);
		const numbers = `${sure}${doubtful}`.match(/-?[\d.]+/g)!.map(Number);
		expect(`${sure}${doubtful}`).not.toMatch(/NaN|Infinity/);
		for (let i = 1; i < numbers.length; i += 2) {
			expect(numbers[i]).toBeGreaterThanOrEqual(frame.top - 0.1);
			expect(numbers[i]).toBeLessThanOrEqual(frame.bottom + 0.1);
		}
	}
	expect(leaves(wild, axes)).toBe('below');
	const words = curveAltText({
		points: wild,
		own: wild[2]!,
		doubts: [{ from: 40, to: 80 }],
		unit: 'kg'
	}).replaceAll('\u00a0', ' ');
	expect(words).toContain('0, the pull leads off at 30 kg');
	expect(words).toContain('no limit at 110 kg');
	expect(words).toContain('dashed from 40 kg to 80 kg');
});
