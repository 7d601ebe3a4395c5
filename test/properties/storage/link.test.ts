import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readLink, writeLink } from '#storage/codecs/link.ts';
import {
	choices,
	choiceKeys,
	firstSight,
	flags,
	isAllowed,
	mended,
	numberKeys,
	numberSpecs,
	type Setup
} from '#storage/codecs/setup.ts';

const anySetup = fc
	.record({
		...Object.fromEntries(
			numberKeys.map((key) => {
				const { min, max, whole } = numberSpecs[key];
				return [
					key,
					whole
						? fc.integer({ min, max })
						: fc
								.double({ min, max, noNaN: true })
								.map((value) => Number(value.toPrecision(12)) || 0)
				];
			})
		),
		...Object.fromEntries(choiceKeys.map((key) => [key, fc.constantFrom<string>(...choices[key])])),
		...Object.fromEntries(flags.map((key) => [key, fc.boolean()]))
	})
	.map((setup) => mended(setup as unknown as Setup));

describe('links', () => {
	test('written and read back, a set-up is the same', () => {
		fc.assert(
			fc.property(anySetup, (setup) => {
				const { setup: read, notes } = readLink(writeLink(setup));
				expect(notes).toEqual([]);
				expect(read).toEqual(setup);
			})
		);
	});

	test('any text at all gives a set-up whose every field is allowed', () => {
		const part = fc.tuple(
			fc.oneof(fc.constantFrom(...Object.keys(firstSight), 'v'), fc.string()),
			fc.oneof(fc.string(), fc.double().map(String), fc.constant('1e400'))
		);
		fc.assert(
			fc.property(
				fc.oneof(
					fc.string(),
					fc.array(part).map((parts) => new URLSearchParams(parts).toString())
				),
				(query) => {
					const { setup } = readLink(query);
					for (const key of numberKeys) expect(isAllowed(key, setup[key]), key).toBe(true);
					for (const key of choiceKeys) {
						expect((choices[key] as readonly string[]).includes(setup[key])).toBe(true);
					}
					expect(setup.body + setup.change).toBeGreaterThanOrEqual(5 - 1e-9);
				}
			)
		);
	});
});
