import type { Row } from './blocks.ts';
import type { Condition } from './types.ts';

/**
 * Puts the same hang at the start, in the middle and at the end, so that a drift shows itself.
 *
 * The middle one stands after half of the tests (rounded down), even inside a block.
 *
 * @param tests the tests in order
 * @param check the hang to repeat, or null for none
 * @returns tests and checks in order
 * Source: derived
 * Example: four tests → check, test, test, check, test, test, check
 */
export function withChecks(tests: readonly Row[], check: Condition | null): Row[] {
	if (!check) return [...tests];
	const row: Row = { kind: 'check', block: null, ...check };
	const middle = Math.floor(tests.length / 2);
	return [row, ...tests.slice(0, middle), row, ...tests.slice(middle), row].map((r) => ({ ...r }));
}
