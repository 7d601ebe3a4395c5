import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { evaluateHang, holdingWindow, loadAtNetMass } from '#core/index.ts';
import type { Hang, Interval } from '#core/types.ts';
import { within } from '#test/within.ts';
import { anyHang } from './hangs.ts';

/** Set PROPERTY_RUNS for a longer search. */
const runs = Number(process.env.PROPERTY_RUNS ?? 300);
const steps = 300;
const range = { from: 5, to: 200 };

function resultAt(hang: Hang, netMass: number) {
	return evaluateHang(hang, loadAtNetMass(netMass, hang));
}

/**
 * Where a margin jumps instead of passing 1: the normal force vanishes (a sticking law still holds
 * just before, a growing patch on a rounded hold springs up), and with it the friction.
 */
function marginJumps(hang: Hang, netMass: number): boolean {
	return [netMass * (1 - 1e-7), netMass * (1 + 1e-7)].some((mass) => {
		const { normal, frictionLimit, force } = resultAt(hang, mass);
		return normal < 1e-6 * force || frictionLimit < 1e-6 * force;
	});
}

function endsOf({ from, to, lowerLimit, upperLimit }: Interval) {
	return [
		{ at: from, limit: lowerLimit },
		{ at: to, limit: upperLimit }
	];
}

describe('the holding window, for hangs of every law', () => {
	test('a dense scan of single hangs finds the same window', () => {
		fc.assert(
			fc.property(anyHang, fc.integer({ min: 0, max: 1000 }), (hang, shift) => {
				const window = holdingWindow(hang, range);
				const ends = window.flatMap(endsOf);
				const wrong: number[] = [];
				for (let i = 0; i <= steps; i++) {
					const share = Math.min(1, (i + shift / 1001) / steps);
					const netMass = range.from * Math.pow(range.to / range.from, share);
					if (ends.some(({ at }) => Math.abs(at - netMass) < 1e-7 * netMass)) continue;
					const { slipMargin, strengthMargin, holds } = resultAt(hang, netMass);
					if (Math.abs(Math.min(slipMargin, strengthMargin) - 1) < 1e-9) continue;
					const inside = window.some(({ from, to }) => from <= netMass && netMass <= to);
					if (inside !== holds) wrong.push(netMass);
				}
				expect(wrong).toEqual([]);
			}),
			{ numRuns: runs }
		);
	});

	test('at every edge that is not the range’s the margin it names is 1 within 1e-9', () => {
		fc.assert(
			fc.property(anyHang, (hang) => {
				for (const interval of holdingWindow(hang, range)) {
					expect(interval.to).toBeGreaterThan(interval.from);
					for (const { at, limit } of endsOf(interval)) {
						if (limit === 'range') {
							expect([range.from, range.to]).toContain(at);
							continue;
						}
						if (marginJumps(hang, at)) continue;
						const { slipMargin, strengthMargin } = resultAt(hang, at);
						within(limit === 'slip' ? slipMargin : strengthMargin, 1, { absolute: 1e-9 });
						within(Math.min(slipMargin, strengthMargin), 1, { absolute: 1e-9 });
					}
				}
			}),
			{ numRuns: 3 * runs }
		);
	});

	test('intervals are apart and in order', () => {
		fc.assert(
			fc.property(anyHang, (hang) => {
				const ends = holdingWindow(hang, range).flatMap(({ from, to }) => [from, to]);
				for (let i = 1; i < ends.length; i++) expect(ends[i]!).toBeGreaterThan(ends[i - 1]!);
			})
		);
	});
});
