import { expect } from 'vitest';

/** Expects a RangeError whose message has the field, the value and the allowed range. */
export function refuses(work: () => unknown, message: string) {
	expect(work).toThrow(new RangeError(message));
}
