import katex from 'katex';
import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { describe, expect, test } from 'vitest';
import { workingLines } from '#figures/working/lines.ts';
import type { LessonFormula } from '#lessons/types.ts';
import { computeResults } from '#state/setup/results.ts';
import { formulas as methodFormulas } from '../../src/routes/trials/method/formulas.ts';
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

const formulaFiles = readdirSync('src/lessons', { recursive: true, encoding: 'utf8' })
	.filter((path) => path.endsWith('formulas.ts'))
	.map((path) => join('src/lessons', path));

describe('formulas of the lessons: each renders with errors on and names its function', async () => {
	const found = (
		await Promise.all(
			formulaFiles.map(async (path) => {
				const url = pathToFileURL(resolve(path)).href;
				const { formulas } = (await import(/* @vite-ignore */ url)) as {
					formulas: LessonFormula[];
				};
				return formulas.map((formula) => ({ path, ...formula }));
			})
		)
	).flat();

	test('there is something to check, in every lesson', () => {
		expect(formulaFiles.length).toBeGreaterThanOrEqual(5);
		expect(found.length).toBeGreaterThan(formulaFiles.length);
	});

	test('no formula hides outside those files', () => {
		const elsewhere = readdirSync('src/lessons', { recursive: true, encoding: 'utf8' })
			.filter((path) => /\.(ts|svelte)$/.test(path) && !path.endsWith('formulas.ts'))
			.filter((path) => /\btex:|String\.raw/.test(readFileSync(join('src/lessons', path), 'utf8')));
		expect(elsewhere.filter((path) => path !== 'types.ts')).toEqual([]);
	});

	test.each(found)('$path: $of', ({ tex, of, says }) => {
		expect(() => katex.renderToString(tex, { throwOnError: true, strict: 'error' })).not.toThrow();
		expect(coreFunctions).toContain(of);
		expect(says).not.toBe('');
	});
});

describe('formulas of the method page: each renders with errors on and names its function', () => {
	test('there is something to check, and every name is its own', () => {
		expect(methodFormulas.length).toBeGreaterThan(8);
		expect(new Set(methodFormulas.map(({ id }) => id)).size).toBe(methodFormulas.length);
	});

	test('no formula hides elsewhere among the pages of trials', () => {
		const elsewhere = readdirSync('src/routes/trials', { recursive: true, encoding: 'utf8' })
			.filter((path) => /\.(ts|svelte)$/.test(path) && !path.endsWith('formulas.ts'))
			.filter((path) =>
				/\btex:|String\.raw/.test(readFileSync(join('src/routes/trials', path), 'utf8'))
			);
		expect(elsewhere).toEqual([]);
	});

	test.each([...methodFormulas])('$id: $of', ({ tex, of, words }) => {
		expect(() => katex.renderToString(tex, { throwOnError: true, strict: 'error' })).not.toThrow();
		expect(coreFunctions).toContain(of);
		expect(words).not.toBe('');
	});
});
