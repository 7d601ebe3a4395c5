import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { evaluateHang, holdingRegion, holdingWindow, loadAtNetMass } from '#core/index.ts';
import { hangOnAxis } from '#core/region/hang-on-axis.ts';
import type { Hang, Interval, RegionAxis } from '#core/types.ts';
import { within } from '#test/within.ts';
import { anyHang } from './hangs.ts';

const degree = Math.PI / 180;
const load = { from: 10, to: 150 };
const columns = 41;
const runs = Number(process.env.PROPERTY_RUNS ?? 150);

const spans: Record<RegionAxis, [number, number]> = {
	slope: [-15 * degree, 60 * degree],
	coefficient: [0.1, 1.5],
	padArea: [80e-6, 330e-6],
	ropeAngle: [-20 * degree, 30 * degree],
	holdTime: [3, 60]
};

const anySweep = fc.record({
	hang: anyHang,
	axis: fc.constantFrom(...(Object.keys(spans) as RegionAxis[]))
});

function sweep(hang: Hang, axis: RegionAxis) {
	const [from, to] = spans[axis];
	return holdingRegion(hang, { axis, from, to, columns, load });
}

function hangAt(hang: Hang, axis: RegionAxis, value: number): Hang {
	return hangOnAxis(hang, axis, value, hang.hangingMass)!;
}

function windowAt(hang: Hang, axis: RegionAxis, value: number): Interval[] {
	return holdingWindow(hangAt(hang, axis, value), load);
}

function shape(intervals: Interval[]): string {
	return intervals.map(({ lowerLimit, upperLimit }) => `${lowerLimit}-${upperLimit}`).join(' ');
}

describe('the holding region, for hangs of every law and every axis', () => {
	test('each column is the window of that hang', () => {
		fc.assert(
			fc.property(anySweep, ({ hang, axis }) => {
				for (const { value, intervals } of sweep(hang, axis).columns)
					expect(intervals).toEqual(windowAt(hang, axis, value));
			}),
			{ numRuns: runs }
		);
	});

	test('the window has another shape on the two sides of a break, and one shape between breaks', () => {
		fc.assert(
			fc.property(anySweep, ({ hang, axis }) => {
				const region = sweep(hang, axis);
				const [from, to] = spans[axis];
				const step = 1e-12 * (to - from);
				const { breaks } = region;
				breaks.forEach((value, i) => {
					if (breaks.some((other, j) => j !== i && Math.abs(other - value) < 3 * step)) return;
					const [before, after] = [value - step, value + step].map((at) =>
						shape(windowAt(hang, axis, at))
					);
					expect(before).not.toBe(after);
				});
				region.columns.slice(1).forEach((column, i) => {
					const last = region.columns[i]!;
					const broken = breaks.some((at) => last.value <= at && at <= column.value);
					expect(shape(last.intervals) !== shape(column.intervals)).toBe(broken);
				});
			}),
			{ numRuns: runs }
		);
	});

	test('at a crossing both margins are 1, and the window beside it ends there', () => {
		fc.assert(
			fc.property(anySweep, ({ hang, axis }) => {
				const region = sweep(hang, axis);
				const [from, to] = spans[axis];
				for (const { value, netMass } of region.crossings) {
					const there = hangAt(hang, axis, value);
					const result = evaluateHang(there, loadAtNetMass(netMass, there));
					within(result.slipMargin, 1, { absolute: 1e-6 });
					within(result.strengthMargin, 1, { absolute: 1e-6 });
					expect(region.breaks).toContain(value);
					const beside = [value - 1e-12 * (to - from), value + 1e-12 * (to - from)];
					const nearest = Math.min(
						...beside
							.flatMap((at) => windowAt(hang, axis, at))
							.flatMap((interval) => [interval.from, interval.to])
							.map((edge) => Math.abs(edge - netMass))
					);
					expect(nearest).toBeLessThan(1e-4);
				}
			}),
			{ numRuns: runs }
		);
	});

	test('an edge that changes from slip to strength across a break does so at a crossing', () => {
		fc.assert(
			fc.property(anySweep, ({ hang, axis }) => {
				const region = sweep(hang, axis);
				region.columns.slice(1).forEach((column, i) => {
					const last = region.columns[i]!;
					const inCell = (value: number) => last.value <= value && value <= column.value;
					if (region.breaks.filter(inCell).length !== 1) return;
					const [before, after] = [last, column].map(({ intervals }) =>
						intervals.flatMap(({ lowerLimit, upperLimit }) => [lowerLimit, upperLimit])
					);
					if (before!.length !== after!.length) return;
					const swaps = before!.some(
						(limit, j) => limit !== after![j] && limit !== 'range' && after![j] !== 'range'
					);
					if (swaps) expect(region.crossings.some(({ value }) => inCell(value))).toBe(true);
				});
			}),
			{ numRuns: 4 * runs }
		);
	});

	test('constant ratio, plumb rope, fixed patch: the slip edge stands upright where tan slope = ratio', () => {
		fc.assert(
			fc.property(fc.double({ min: 0.2, max: 1.5, noNaN: true }), anyHang, (coefficient, hang) => {
				const plain: Hang = {
					...hang,
					ropeAngle: 0,
					push: 0,
					friction: { kind: 'constant', coefficient },
					grip: { ...hang.grip, contact: { kind: 'fixed', padArea: 200e-6 } }
				};
				delete plain.radius;
				const region = sweep(plain, 'slope');
				const upright = Math.atan(coefficient);
				const column = region.columns.findLast(({ value }) => value < upright)!;
				if (column.intervals.length > 0) {
					const edge = region.breaks.find((value) => Math.abs(value - upright) < 1e-9);
					within(edge!, upright, { absolute: 1e-12 });
				}
				expect(windowAt(plain, 'slope', upright + 1e-6)).toEqual([]);
			}),
			{ numRuns: runs }
		);
	});

	test('a growing patch has the area of the axis at the present load', () => {
		const growing = anyHang.filter(({ grip }) => grip.contact.kind === 'growing');
		const area = fc.double({ min: 80e-6, max: 330e-6, noNaN: true });
		const netMasses = fc.double({ min: 20, max: 130, noNaN: true });
		fc.assert(
			fc.property(growing, area, netMasses, (hang, value, netMass) => {
				const present = loadAtNetMass(netMass, hang);
				const turned = hang.radius === undefined ? 0 : value / hang.grip.padWidth / hang.radius / 2;
				// A patch that would turn the pull off the hold cannot be had.
				if (hang.slope + turned + present.tilt > 1.5) return;
				const there = hangOnAxis(hang, 'padArea', value, netMass)!;
				within(evaluateHang(there, present).padArea, value, { relative: 1e-9 });
			}),
			{ numRuns: 4 * runs }
		);
	});

	test('values that no hang allows give empty columns, not errors', () => {
		fc.assert(
			fc.property(anyHang, (hang) => {
				const wild: Record<RegionAxis, [number, number]> = {
					slope: [1, 3],
					coefficient: [-1, 1],
					padArea: [-1e-4, 1e-3],
					ropeAngle: [1, 2],
					holdTime: [-10, 500]
				};
				for (const [axis, [from, to]] of Object.entries(wild)) {
					const options = { axis: axis as RegionAxis, from, to, columns: 12, load };
					for (const { value, intervals } of holdingRegion(hang, options).columns)
						if (!hangOnAxis(hang, options.axis, value, 70)) expect(intervals).toEqual([]);
				}
			}),
			{ numRuns: 50 }
		);
	});
});
