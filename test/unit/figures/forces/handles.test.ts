import { describe, expect, test } from 'vitest';
import {
	afterKey,
	assistRange,
	draggedRope,
	ropeRange,
	slopeRange,
	slopeToward
} from '#figures/forces/handles.ts';
import { within } from '#test/within.ts';
import { degree } from './scene.ts';

const exact = { absolute: 1e-12 };

describe('handles by keyboard', () => {
	test('arrows go a step, page keys a leap, home and end to the ends', () => {
		within(afterKey('ArrowUp', 32 * degree, slopeRange)!, 33 * degree, exact);
		within(afterKey('ArrowLeft', 32 * degree, slopeRange)!, 31 * degree, exact);
		within(afterKey('PageUp', 32 * degree, slopeRange)!, 37 * degree, exact);
		within(afterKey('PageDown', 32 * degree, slopeRange)!, 27 * degree, exact);
		within(afterKey('Home', 32 * degree, slopeRange)!, -15 * degree, exact);
		within(afterKey('End', 0, ropeRange)!, 30 * degree, exact);
		expect(afterKey('a', 0, ropeRange)).toBeUndefined();
	});

	test('a value between two steps goes to the next whole one; the ends hold', () => {
		within(afterKey('ArrowRight', 10.4 * degree, slopeRange)!, 11 * degree, exact);
		within(afterKey('ArrowDown', 10.4 * degree, slopeRange)!, 10 * degree, exact);
		within(afterKey('ArrowUp', 60 * degree, slopeRange)!, 60 * degree, exact);
		within(afterKey('ArrowDown', -20 * degree, ropeRange)!, -20 * degree, exact);
	});

	test('assist goes up to 95 % of the weight, in steps of the unit shown', () => {
		expect(assistRange(700, 'N')).toEqual({ least: 0, most: 665, step: 10, leap: 50 });
		within(afterKey('ArrowUp', 0, assistRange(700, 'kgf'))!, 9.80665, exact);
	});
});

describe('handles by pointer', () => {
	test('the slope is read from its line', () => {
		within(slopeToward({ x: 100, y: 100 }, { x: 50, y: 50 }), 45 * degree, exact);
		within(slopeToward({ x: 100, y: 100 }, { x: 50, y: 100 }), 0, exact);
		expect(slopeToward({ x: 100, y: 100 }, { x: 50, y: 110 })).toBeLessThan(0);
	});

	test('a rope’s tip dragged up and out', () => {
		// 50 px at 0.5 px/N are 100 N upward, on top of a plumb 100 N, and 200 tan 20° N outward.
		const out = 200 * Math.tan(20 * degree) * 0.5;
		const next = draggedRope({ assistForce: 100, ropeAngle: 0 }, { x: out, y: -50 }, 0.5, 686);
		within(next.ropeAngle, 20 * degree, exact);
		within(next.assistForce, 200 / Math.cos(20 * degree), { absolute: 1e-9 });
	});

	test('past its range the rope stays at the end, and below the body it helps nothing', () => {
		const far = draggedRope({ assistForce: 100, ropeAngle: 0 }, { x: 900, y: -900 }, 0.5, 686);
		within(far.ropeAngle, 30 * degree, exact);
		within(far.assistForce, 0.95 * 686, { absolute: 1e-9 });
		const down = draggedRope({ assistForce: 100, ropeAngle: 0.2 }, { x: 0, y: 400 }, 0.5, 686);
		expect(down).toEqual({ assistForce: 0, ropeAngle: 0.2 });
	});
});
