import fc from 'fast-check';
import { expect } from 'vitest';

// The same cases on every machine; PROPERTY_SEED looks at others.
fc.configureGlobal({ seed: Number(process.env.PROPERTY_SEED ?? 20261125) });

/** How far a value may lie from the expected one: absolutely, or as a share of the expected value. */
export type Tolerance = { absolute: number } | { relative: number };

/**
 * Says whether a value lies within a stated tolerance of an expected one.
 * Infinite expectations must match exactly; NaN expectations match NaN only.
 */
export function isWithin(value: number, expected: number, tolerance: Tolerance): boolean {
	if (!Number.isFinite(expected)) return Object.is(value, expected);
	const allowed =
		'absolute' in tolerance ? tolerance.absolute : tolerance.relative * Math.abs(expected);
	return Math.abs(value - expected) <= allowed;
}

expect.extend({
	toBeWithin(received: number, expected: number, tolerance: Tolerance) {
		return {
			pass: isWithin(received, expected, tolerance),
			message: () => `${received} is not within ${JSON.stringify(tolerance)} of ${expected}`
		};
	}
});

declare module 'vitest' {
	interface Matchers {
		/** Passes when the value lies within the stated absolute or relative tolerance. */
		toBeWithin(expected: number, tolerance: Tolerance): void;
	}
}

/** Asserts that a value lies within a stated tolerance of an expected one. */
export function within(value: number, expected: number, tolerance: Tolerance): void {
	(expect(value) as unknown as { toBeWithin(e: number, t: Tolerance): void }).toBeWithin(
		expected,
		tolerance
	);
}
