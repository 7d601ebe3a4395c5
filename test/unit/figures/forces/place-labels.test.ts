import { describe, expect, test } from 'vitest';
import { boxToSegment, overlaps } from '#figures/forces/geometry.ts';
import { placeLabels } from '#figures/forces/place-labels.ts';

const frame = { x: 0, y: 0, width: 200, height: 200 };
const up = { from: { x: 100, y: 150 }, to: { x: 100, y: 60 } };
const size = { width: 50, height: 20 };

describe('placing labels', () => {
	test('a lone label stands close to its arrow, without a leader', () => {
		const { places, clear } = placeLabels([{ id: 'a', own: up, ...size }], {
			...{ frame, blocked: [], lines: [] },
			arrows: [{ id: 'a', segment: up }]
		});
		expect(clear).toBe(true);
		expect(places[0]!.leader).toBeUndefined();
		const distance = boxToSegment(places[0]!.box, up);
		expect(distance).toBeGreaterThan(0);
		expect(distance).toBeLessThan(14);
	});

	test('where all near places are taken a leader leads to the arrow', () => {
		const wall = { x: 30, y: 20, width: 140, height: 170 };
		const { places, clear } = placeLabels([{ id: 'a', own: up, width: 25, height: 16 }], {
			...{ frame, blocked: [wall], lines: [] },
			arrows: [{ id: 'a', segment: up }]
		});
		expect(clear).toBe(true);
		expect(overlaps(places[0]!.box, wall)).toBe(false);
		expect(places[0]!.leader).toBeDefined();
	});

	test('two labels of one and the same arrow stay apart', () => {
		const requests = ['a', 'b', 'c', 'd'].map((id) => ({ id, own: up, ...size }));
		const { places, clear } = placeLabels(requests, {
			...{ frame, blocked: [], lines: [], arrows: [] }
		});
		expect(clear).toBe(true);
		for (const [i, one] of places.entries()) {
			for (const other of places.slice(i + 1)) expect(overlaps(one.box, other.box)).toBe(false);
		}
	});

	test('says so when there is no room', () => {
		const { places, clear } = placeLabels([{ id: 'a', own: up, width: 190, height: 150 }], {
			...{ frame, blocked: [{ x: 90, y: 90, width: 20, height: 20 }], lines: [], arrows: [] }
		});
		expect(clear).toBe(false);
		expect(places).toHaveLength(1);
	});
});
