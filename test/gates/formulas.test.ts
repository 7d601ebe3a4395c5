import katex from 'katex';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { workingLines } from '#figures/working/lines.ts';
import { computeResults } from '#state/setup/results.ts';
import { choices, firstSight, type Setup } from '#storage/codecs/setup.ts';

/** Names of all functions that core exports, whatever the file. */
const coreFunctions = new Set(
	readdirSync('src/core', { recursive: true, encoding: 'utf8' })
		.filter((path) => path.endsWith('.ts'))
		.flatMap((path) => [
			...readFileSync(join('src/core', path), 'utf8').matchAll(/export function (\w+)/g)
		])
		.map((match) => match[1]!)
);

const variants: Partial<Setup>[] = [
	...choices.law.map((law) => ({ law })),
	{ patch: 'growing' },
	{ radius: 60 },
	{ radius: 60, patch: 'growing', rope: 10, push: -20 },
	{ change: 0 },
	{ change: 20 },
	{ slope: -10 },
	{ slope: 60, rope: 30, change: -50 },
	{ hands: 1, fingers: 1 },
	{ hold: 60, bestTime: 30 }
];

describe('formulas: each renders with errors on and names its function', () => {
	const lines = variants.flatMap((variant) =>
		workingLines(computeResults({ ...firstSight, ...variant }))
	);

	test('there is something to check', () => {
		expect(coreFunctions.size).toBeGreaterThan(10);
		expect(lines.length).toBeGreaterThan(variants.length * 8);
	});

	test('every line of the working renders, and shows no number that is not one', () => {
		for (const { tex } of lines) {
			expect(
				() => katex.renderToString(tex, { throwOnError: true, strict: 'error' }),
				tex
			).not.toThrow();
			expect(tex).not.toMatch(/NaN|undefined|Infinity/);
		}
	});

	test('every line names a function of the core', () => {
		const strangers = [...new Set(lines.map(({ of }) => of))].filter(
			(of) => !coreFunctions.has(of)
		);
		expect(strangers).toEqual([]);
	});
});
