import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { meanAndSpread } from '#core/measure/measured.ts';
import { areaFromSquares } from '#core/measure/pad-area.ts';
import { pulleyEfficiency } from '#core/measure/pulley-efficiency.ts';
import { leanFromPlumbLine } from '#core/measure/rope-lean.ts';
import { netMassFromScale } from '#core/measure/scale-ledger.ts';
import { levelZero, slopeFromSamples, tiltFromOrientation } from '#core/measure/slope.ts';
import { ratioFromTilts } from '#core/measure/tilt-to-slip.ts';
import { within } from '#test/within.ts';

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const angle = number(-1.5, 1.5);

describe('measuring aids', () => {
	test('mean and spread do not depend on order, and move with shift and scale', () => {
		fc.assert(
			fc.property(
				fc.array(number(-10, 10), { minLength: 2, maxLength: 20 }),
				number(-5, 5),
				number(0.1, 5),
				(repeats, shift, scale) => {
					const plain = meanAndSpread('x', repeats);
					const turned = meanAndSpread('x', repeats.toReversed());
					within(turned.value, plain.value, { absolute: 1e-9 });
					within(turned.spread, plain.spread, { absolute: 1e-9 });
					const moved = meanAndSpread(
						'x',
						repeats.map((repeat) => shift + scale * repeat)
					);
					within(moved.value, shift + scale * plain.value, { absolute: 1e-9 });
					within(moved.spread, scale * plain.spread, { absolute: 1e-9 });
				}
			)
		);
	});

	test('a phone’s tilt is never less than its pitch', () => {
		fc.assert(
			fc.property(number(-Math.PI, Math.PI), number(-1.57, 1.57), (beta, gamma) => {
				const { along, total } = tiltFromOrientation({ beta, gamma });
				expect(Math.min(total, Math.PI - total) + 1e-7).toBeGreaterThanOrEqual(Math.abs(along));
			})
		);
	});

	test('a zero that is measured half a turn apart takes the phone’s own error off', () => {
		fc.assert(
			fc.property(
				number(-0.2, 0.2),
				number(-0.5, 0.5),
				number(-0.8, 0.8),
				(error, table, slope) => {
					const zero = levelZero(
						{ value: table + error, spread: 0 },
						{ value: -table + error, spread: 0 }
					);
					within(zero.value, error, { absolute: 1e-12 });
					within(zero.tilt, table, { absolute: 1e-12 });
					const samples = [0, 0.5, 1].map((time) => ({ time, angle: slope + error }));
					within(slopeFromSamples(samples, { zero }).value, slope, { absolute: 1e-12 });
				}
			)
		);
	});

	test('readings older than the window change nothing', () => {
		fc.assert(
			fc.property(
				fc.array(angle, { minLength: 3, maxLength: 30 }),
				fc.array(angle, { maxLength: 30 }),
				(recent, old) => {
					const late = recent.map((value, at) => ({ time: 100 + at / 30, angle: value }));
					const early = old.map((value, at) => ({ time: at, angle: value }));
					expect(slopeFromSamples([...early, ...late])).toEqual(slopeFromSamples(late));
				}
			)
		);
	});

	test('tilts and ratios undo each other', () => {
		fc.assert(
			fc.property(number(0.01, 5), fc.integer({ min: 2, max: 12 }), (ratio, goes) => {
				const result = ratioFromTilts(Array.from({ length: goes }, () => Math.atan(ratio)));
				within(result.value, ratio, { relative: 1e-12 });
				within(result.spread, 0, { absolute: 1e-9 });
			})
		);
	});

	test('counted squares come about as near the true area of a print as they say', () => {
		const prints = fc.sample(
			fc.noBias(
				fc.record({
					a: number(6, 12),
					b: number(6, 12),
					x: number(0, 1),
					y: number(0, 1),
					turn: number(0, Math.PI)
				})
			),
			{ numRuns: 300, seed: 7 }
		);
		const counts = prints.map(({ a, b, x, y, turn }) => {
			const pad = areaFromSquares({ ...countEllipse(a, b, x, y, turn), side: 0.001 });
			return { error: pad.value - Math.PI * a * b * 1e-6, spread: pad.spread };
		});
		// A rounded print laid down anyhow is overcounted by one square on average (area of its sum
		// with a square, and of its erosion by one: A ± perimeter part + 1).
		const overcount = meanAndSpread(
			'errors',
			counts.map(({ error }) => error * 1e6)
		).value;
		within(overcount, 1, { absolute: 0.2 });
		const { spread } = meanAndSpread(
			'errors',
			counts.map((count) => count.error / count.spread)
		);
		// Neighbouring squares are cut alike, so counts scatter a quarter more than the spread says.
		expect(spread).toBeLessThan(1.4);
		expect(spread).toBeGreaterThan(0.3);
	});

	test('lean along rope and along plumb line agree, and are odd in the offset', () => {
		fc.assert(
			fc.property(number(-1.2, 1.2), number(0.2, 5), (lean, length) => {
				const offset = length * Math.sin(lean);
				const byRope = leanFromPlumbLine({ offset, length, along: 'rope' });
				const byPlumb = leanFromPlumbLine({ offset, length: length * Math.cos(lean) });
				within(byRope.value, lean, { absolute: 1e-12 });
				within(byPlumb.value, lean, { absolute: 1e-12 });
				const other = leanFromPlumbLine({ offset: -offset, length, along: 'rope' });
				within(other.value, -lean, { absolute: 1e-12 });
				expect(other.spread).toBe(byRope.spread);
			})
		);
	});

	test('the lean’s spread is what small errors of the tape do to it', () => {
		fc.assert(
			fc.property(
				number(-0.8, 0.8),
				number(0.5, 3),
				fc.constantFrom<'plumb' | 'rope'>('plumb', 'rope'),
				(lean, length, along) => {
					const offset = length * (along === 'rope' ? Math.sin(lean) : Math.tan(lean));
					const at = (o: number, l: number) =>
						leanFromPlumbLine({ offset: o, length: l, along }).value;
					const tiny = 1e-6;
					const byOffset = (at(offset + tiny, length) - at(offset - tiny, length)) / (2 * tiny);
					const byLength = (at(offset, length + tiny) - at(offset, length - tiny)) / (2 * tiny);
					within(
						leanFromPlumbLine({ offset, length, along }).spread,
						(0.001 / Math.sqrt(12)) * Math.hypot(byOffset, byLength),
						{ relative: 1e-5 }
					);
				}
			)
		);
	});

	test('efficiency does not depend on the weight or the unit, and lies in its band', () => {
		fc.assert(
			fc.property(number(0.2, 1), number(1, 500), number(0, 0.5), (efficiency, weight, step) => {
				const result = pulleyEfficiency({
					raise: weight / efficiency,
					lower: Math.min(weight * efficiency, weight / efficiency),
					step
				});
				within(result.value, efficiency, { relative: 1e-9 });
				expect(result.low).toBeLessThanOrEqual(1);
				expect(result.high).toBeGreaterThanOrEqual(1);
				expect(result.spread).toBeGreaterThanOrEqual(0);
			})
		);
	});

	test('the ledger gives back the load, and a coarser scale a wider spread', () => {
		fc.assert(
			fc.property(number(40, 120), number(0.05, 0.95), number(0.01, 1), (whole, part, step) => {
				const o = { before: whole, after: whole, during: whole * part };
				const fine = netMassFromScale({ ...o, step });
				within(fine.value, whole * (1 - part), { relative: 1e-9 });
				expect(netMassFromScale({ ...o, step: 2 * step }).spread).toBeGreaterThan(fine.spread);
			})
		);
	});
});

/** Counts unit squares wholly and partly inside an ellipse, by a fine grid of points in each square. */
function countEllipse(a: number, b: number, x: number, y: number, turn: number) {
	const inside = (px: number, py: number) => {
		const [dx, dy] = [px - x, py - y];
		const u = (dx * Math.cos(turn) + dy * Math.sin(turn)) / a;
		const v = (dy * Math.cos(turn) - dx * Math.sin(turn)) / b;
		return u * u + v * v <= 1;
	};
	let full = 0;
	let cut = 0;
	for (let row = -14; row < 15; row++) {
		for (let column = -14; column < 15; column++) {
			let hits = 0;
			for (let i = 0; i <= 8; i++) {
				for (let j = 0; j <= 8; j++) if (inside(column + i / 8, row + j / 8)) hits++;
			}
			if (hits === 81) full++;
			else if (hits > 0) cut++;
		}
	}
	return { full, cut };
}
