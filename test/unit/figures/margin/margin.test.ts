import { describe, expect, test } from 'vitest';
import { marginSamples, samplesOf } from '#figures/margin/helpers.ts';
import { marginGeometry, type MarginView } from '#figures/margin/margin-geometry.ts';
import { marginLabels, unseenText } from '#figures/margin/margin-labels.ts';
import { marginAltText } from '#figures/margin/margin-words.ts';
import type { MarginSeries } from '#figures/margin/types.ts';
import type { Hang } from '#core/types.ts';
import { boxesOverlap, boxInside } from '#plot/box.ts';
import { within } from '#test/within.ts';

const load = { from: 20, to: 130 };
const falling = (m: number) => ({ slipMargin: 1.2 - m / 500, strengthMargin: 64 / m });
const view = (at: typeof falling, netMass = 70, more: Partial<MarginView> = {}): MarginView => ({
	series: samplesOf(at, load, 60),
	...{ load, massUnit: 'kg', point: { netMass, ...at(netMass) }, width: 358, height: 240 },
	window: [{ from: 20, to: 64, lowerLimit: 'range', upperLimit: 'strength' }],
	...more
});

describe('samples', () => {
	test('run from end to end and bend at the given corners', () => {
		const [slip, strength] = samplesOf(falling, load, 12, [64, 500]);
		expect(slip.points).toHaveLength(13);
		expect([slip.points[0]!.netMass, slip.points.at(-1)!.netMass]).toEqual([20, 130]);
		within(strength.points.find(({ netMass }) => netMass === 64)!.margin, 1, { absolute: 1e-12 });
		const loads = slip.points.map(({ netMass }) => netMass);
		expect(loads).toEqual([...loads].sort((a, b) => a - b));
	});
});

describe('samples of a hang', () => {
	const hang: Hang = {
		...{ hangingMass: 70, ropeAngle: Math.PI / 18, hands: 2, slope: (31 * Math.PI) / 180 },
		friction: { kind: 'constant', coefficient: 0.64 },
		grip: {
			...{ fingers: 4, padWidth: 0.016, padLength: 0.021, padDepth: 0.005 },
			contact: { kind: 'fixed', padArea: 250e-6 }
		},
		strength: { referenceForce: 40 * 9.80665, referenceEdgeDepth: 0.02, holdTime: 5 }
	};

	test('follow the core, with a sample where the rope goes slack', () => {
		const [slip, strength] = marginSamples(hang, load, 12);
		expect(slip.points).toHaveLength(13);
		const at = slip.points.findIndex(({ netMass }) => netMass === 70);
		// Own second implementation of the mechanics, not an outside source.
		within(slip.points[at]!.margin, 1.065139, { relative: 1e-6 });
		within(strength.points[at]!.margin, 0.905782, { relative: 1e-6 });
	});
});

describe('geometry', () => {
	test('heavier lies to the right, larger margins higher, and 1 is the edge', () => {
		const { x, y, edge, markers, windows } = marginGeometry(view(falling));
		expect(x(100)).toBeGreaterThan(x(50));
		expect(y(2)).toBeLessThan(y(1));
		within(edge, y(1), { absolute: 1e-9 });
		within(windows[0]!.to, x(64), { absolute: 1e-9 });
		expect(markers.map(({ kind }) => kind)).toEqual(['slip', 'strength']);
		within(markers[1]!.place[1], y(64 / 70), { absolute: 1e-9 });
	});

	test('infinite and vanishing margins leave no broken path', () => {
		const at = (m: number) => ({
			slipMargin: m < 60 ? 0 : m < 90 ? 1.1 : Infinity,
			strengthMargin: m < 40 ? NaN : 5000 / m ** 2
		});
		const geometry = marginGeometry(view(at, 100));
		for (const { path } of geometry.curves) {
			expect(path).toMatch(/^M/);
			expect(path).not.toMatch(/NaN|Infinity/);
		}
		expect(geometry.markers.map(({ kind }) => kind)).toEqual(['strength']);
	});
});

describe('labels', () => {
	const others: MarginSeries[] = ['constant law', 'leaning rope'].map((label, i) => ({
		...{ label, kind: 'other' },
		points: [20, 60, 130].map((netMass) => ({ netMass, margin: 0.9 + i * 0.05 + netMass / 1000 }))
	}));
	const kinds: [string, typeof falling][] = [
		['falling', falling],
		['no slip limit', (m) => ({ slipMargin: Infinity, strengthMargin: 72 / m })],
		['far above', () => ({ slipMargin: 9, strengthMargin: 8 })],
		['far below', () => ({ slipMargin: 0, strengthMargin: 0.01 })],
		['together', (m) => ({ slipMargin: 70 / m, strengthMargin: 70.5 / m })]
	];

	test.each(kinds)('%s: never overlap, and the point’s always stands', (_, at) => {
		for (const width of [320, 358, 700]) {
			for (const netMass of [10, 20, 40, 63, 64, 70, 100, 128, 130, 140]) {
				for (const window of [[], view(at).window]) {
					const series = [...samplesOf(at, load, 60), ...others];
					const whole = view(at, netMass, { series, width, window });
					const geometry = marginGeometry(whole);
					const labels = marginLabels(geometry, whole.point, 'kg');
					expect(labels[0]!.text).toMatch(/^you/);
					const wrong = labels.filter(
						(label, i) =>
							!boxInside(label.box, { ...geometry.frame, top: 0 }) ||
							labels.slice(i + 1).some((other) => boxesOverlap(label.box, other.box))
					);
					expect(wrong).toEqual([]);
				}
			}
		}
	});

	test('curves, values and the window are named', () => {
		const whole = view(falling, 70, { width: 700, height: 350 });
		const all = marginLabels(marginGeometry(whole), whole.point, 'kg').map(({ text }) => text);
		for (const text of ['slip margin', 'strength margin', '1.06', '0.914', 'holds 20–64\u00a0kg'])
			expect(all).toContain(text);
	});

	test('a curve that the axis does not reach is told in words', () => {
		const series = (margin: number, kind: MarginSeries['kind'] = 'slip'): MarginSeries => ({
			...{ label: 'slip margin', kind, points: [{ netMass: 50, margin }] }
		});
		expect(unseenText(series(Infinity), [0.5, 2])).toBe('no slip limit ↑');
		expect(unseenText(series(9), [0.5, 2])).toBe('slip margin above 2 ↑');
		expect(unseenText(series(0), [0.5, 2])).toBe('slip margin below 0.5 ↓');
		expect(unseenText(series(NaN), [0.5, 2])).toBe('slip margin: not known here');
		expect(unseenText(series(Infinity, 'other'), [0.5, 2])).toBe('slip margin: no limit ↑');
	});
});

test('the text alternative gives both margins, the window and what is laid over', () => {
	const words = marginAltText({ ...view(falling), series: samplesOf(falling, load, 5) });
	expect(words).toContain(
		'At 70\u00a0kg the slip margin is 1.06 and the strength margin is 0.914.'
	);
	expect(words).toContain('for 20–64\u00a0kg.');
	const at = () => ({ slipMargin: Infinity, strengthMargin: 0.5 });
	const none = marginAltText(view(at, 70, { window: [] }));
	expect(none).toContain('there is no slip limit');
	expect(none).toContain('No load in this range holds.');
});
