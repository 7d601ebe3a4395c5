import { describe, expect, test } from 'vitest';
import { massFrom, massIn } from '#core/units/mass-text.ts';
import { moveByKey } from '#figures/region/move-by-key.ts';
import { regionGeometry, type RegionView } from '#figures/region/region-geometry.ts';
import { pointRadius, regionLabels, shownPoint } from '#figures/region/region-labels.ts';
import { regionWords, windowWords } from '#figures/region/region-words.ts';
import type { Region, RegionOverlay } from '#figures/region/types.ts';
import { boxesOverlap, boxInside, lineEntersBox } from '#plot/box.ts';
import { within } from '#test/within.ts';
import { axis, byHand, held, load, shapes } from './regions.ts';

const view = (region: Region, more: Partial<RegionView> = {}): RegionView => ({
	...{ region, axis, load, massUnit: 'kg', overlays: [], width: 358, height: 246, ...more }
});
const labelsOf = (
	region: Region,
	value: number,
	netMass: number,
	more: Partial<RegionView> = {}
) => {
	const geometry = regionGeometry(view(region, more));
	const massUnit = more.massUnit ?? 'kg';
	return regionLabels({ geometry, point: { value, netMass }, massUnit });
};
const texts = (...args: Parameters<typeof labelsOf>) => labelsOf(...args).map(({ text }) => text);

describe('geometry', () => {
	test('a place on the drawing goes back to its axis value and net mass', () => {
		for (const massUnit of ['kg', 'lb'] as const) {
			const { place, unplace, frame } = regionGeometry(view(shapes.wedge, { massUnit }));
			const back = unplace(place({ value: 3.3, netMass: 71 }));
			within(back.value, 3.3, { absolute: 1e-9 });
			within(back.netMass, 71, { absolute: 1e-9 });
			expect(place({ value: 0, netMass: 20 })).toEqual([frame.left, frame.bottom]);
			expect(place({ value: 10, netMass: 130 })[0]).toBe(frame.right);
		}
	});

	test('one path for each kind of edge, and pieces far fewer than columns', () => {
		const { paths, edges } = regionGeometry(view(shapes.fork, { width: 700, height: 480 }));
		expect(edges).toHaveLength(1);
		expect(edges[0]!.line.length).toBeLessThan(60);
		expect(paths.strength).toBe('');
		expect(paths.hatch).toMatch(/^M/);
		for (const path of Object.values(paths)) expect(path).not.toMatch(/NaN|Infinity/);
	});

	test('an overlay keeps only what differs from the region’s own edges', () => {
		const overlays: RegionOverlay[] = [
			{ label: 'the same', region: shapes.wedge },
			{ label: 'upright', region: shapes.upright },
			{ label: 'nothing', region: shapes.none }
		];
		const drawn = regionGeometry(view(shapes.wedge, { overlays })).overlays;
		expect(drawn[0]).toMatchObject({ lines: [], path: '', holds: 'some' });
		expect(drawn[1]!.lines.map(({ kind }) => kind)).toEqual(['slip']);
		expect(drawn[2]).toMatchObject({ lines: [], holds: 'none', kinds: [] });
	});

	test('a point outside is shown at the border', () => {
		const geometry = regionGeometry(view(shapes.wedge));
		const { frame } = geometry;
		expect(shownPoint(geometry, { value: 12, netMass: 500 })).toEqual([frame.right, frame.top]);
	});
});

describe('labels', () => {
	const overlays = [{ label: 'constant law', region: shapes.upright }];
	const cases = Object.entries(shapes).flatMap(([name, region]) =>
		[
			{ width: 358, height: 246 },
			{ width: 320, height: 240 },
			{ width: 700, height: 480 }
		].flatMap((size) => [
			{ name: `${name} at ${size.width}`, region, more: size },
			{ name: `${name} with overlay at ${size.width}`, region, more: { ...size, overlays } }
		])
	);

	test.each(cases)('$name: never overlap, wherever the point is', ({ region, more }) => {
		const geometry = regionGeometry(view(region, more));
		for (const value of [-1, 0.2, 3.9, 6, 7, 8.8, 10]) {
			for (const netMass of [10, 20, 33, 58, 67, 111, 150]) {
				const point = { value, netMass };
				const labels = regionLabels({ geometry, point, massUnit: 'kg' });
				expect(labels[0]!.text).toMatch(/^you/);
				const [cx, cy] = shownPoint(geometry, point);
				const size = 2 * pointRadius;
				const mark = { cx, cy, width: size, height: size, angle: 0 };
				const wrong = labels.filter(
					({ id, box }, i) =>
						!boxInside(box, geometry.frame) ||
						boxesOverlap(box, mark) ||
						labels.slice(i + 1).some((other) => boxesOverlap(box, other.box)) ||
						(!['you', 'whole'].includes(id) &&
							geometry.edges.some(({ line }) => lineEntersBox(line, box)))
				);
				expect(wrong).toEqual([]);
			}
		}
	});

	test('with room, everything on the drawing is named', () => {
		const size = { width: 700, height: 480 };
		const all = texts(shapes.wedge, 2, 100, size);
		for (const word of [
			'you are here',
			'slip edge',
			'strength edge',
			'holds',
			'slips',
			'fingers open'
		])
			expect(all).toContain(word);
		expect(all).toContain('limits cross: 67\u00a0kg');
		expect(texts(shapes.two, 2, 100, size).filter((text) => text === 'holds')).toHaveLength(2);
	});

	test('a plot without an edge says so in words', () => {
		expect(texts(shapes.none, 5, 75)).toContain('No load in this range holds');
		expect(texts(shapes.everything, 5, 75)).toContain('Every load in this range holds');
	});

	test('an overlay without a line of its own is named all the same', () => {
		const laid = { overlays: [{ label: 'constant law', region: shapes.none }] };
		expect(texts(shapes.wedge, 5, 75, laid)).toContain('constant law: no load here holds');
		const over = (own: Region, region: Region) =>
			texts(own, 5, 75, { overlays: [{ label: 'it', region }] });
		expect(over(shapes.wedge, shapes.wedge)).toContain('it: the same edges');
		expect(over(shapes.wedge, shapes.everything)).toContain('it: every load here holds');
		const strengthOnly = byHand((v) => [held(20, 'range', 60 + v, 'strength')]);
		const both = byHand((v) => [held(25 + v, 'slip', 60 + v, 'strength')]);
		expect(over(both, strengthOnly)).toContain('it: no slip edge here');
	});

	test('a point off the picture says where it is', () => {
		expect(texts(shapes.wedge, 5, 150)[0]).toBe('you, off this picture: 150\u00a0kg');
		expect(texts(shapes.wedge, 5, 150, { massUnit: 'lb' })[0]).toContain('331\u00a0lb');
	});
});

describe('words', () => {
	const spoken = (region: Region, value: number) => ({
		...{ region, axis, load, massUnit: 'kg' as const, point: { value, netMass: 70 } }
	});

	test('the window at the point’s axis value', () => {
		expect(windowWords(spoken(shapes.two, 2))).toBe(
			'At 1° these net loads hold: from 20\u00a0kg (the range’s end) to 42\u00a0kg (the slip edge), ' +
				'and from 72\u00a0kg (the slip edge) to 130\u00a0kg (the range’s end).'
		);
		expect(windowWords(spoken(shapes.wedge, 9))).toBe('At 22° no net load in this range holds.');
	});

	test('crossing, overlays and the empty region are told', () => {
		const words = regionWords(spoken(shapes.wedge, 2), [
			{ label: 'constant law', region: shapes.none }
		]);
		expect(words).toContain('Slip edge and strength edge cross at 67\u00a0kg and 16°.');
		expect(words).toContain('Laid over, constant law: at 1° no net load in this range holds.');
		expect(regionWords(spoken(shapes.none, 2), [])).toContain('No load in this range holds.');
	});
});

describe('keys', () => {
	const ranges = {
		value: { from: 0, to: 10, step: 0.5, bigStep: 2 },
		netMass: { from: 20, to: 130, step: 1, bigStep: 5 }
	};
	const point = { value: 9.8, netMass: 70 };
	test.each([
		['ArrowUp', 'value', { netMass: 71 }],
		['ArrowDown', 'netMass', { netMass: 69 }],
		['ArrowRight', 'netMass', { value: 10 }],
		['ArrowLeft', 'value', { value: 9.3 }],
		['PageUp', 'netMass', { netMass: 75 }],
		['PageDown', 'value', { value: 7.8 }],
		['Home', 'netMass', { netMass: 20 }],
		['End', 'value', { value: 10 }],
		['a', 'value', undefined]
	] as const)('%s with the focus on %s', (key, focused, to) => {
		const moved = moveByKey(key, focused, point, ranges);
		expect(Object.keys(moved ?? {})).toEqual(Object.keys(to ?? {}));
		for (const [what, value] of Object.entries(to ?? {})) {
			within(moved![what as 'value' | 'netMass']!, value, { absolute: 1e-9 });
		}
	});

	test('kilograms and pounds', () => {
		// The international pound of 1959: 0.45359237 kg exactly.
		within(massIn(45.359237, 'lb'), 100, { relative: 1e-12 });
		within(massFrom(100, 'lb'), 45.359237, { relative: 1e-12 });
		expect(massIn(70, 'kg')).toBe(70);
	});
});
