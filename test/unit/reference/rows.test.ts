import { readdirSync, statSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { describe, expect, test } from 'vitest';
import type { FrictionLaw } from '#core/types.ts';
import { frictionRatio } from '#core/friction/friction-ratio.ts';
import { citations } from '#reference/citations.ts';
import { coefficients } from '#reference/coefficients.ts';
import { laws } from '#reference/laws.ts';
import { mechanisms } from '#reference/mechanisms.ts';
import { citationOf, isCitationKey, rowOf } from '#reference/read.ts';
import { surfacePresets } from '#reference/surface-presets.ts';
import { separatingTests, testedFamilies } from '#reference/tests-against-mechanisms.ts';
import type { Citation } from '#reference/types.ts';
import { effects, grades, loadSigns, readings, statuses } from '#reference/types.ts';

type Loose = Record<string, unknown>;

function filesUnder(folder: string): string[] {
	return readdirSync(folder).flatMap((name) => {
		const path = join(folder, name);
		return statSync(path).isDirectory() ? filesUnder(path) : [path];
	});
}

/** Everything in a module that carries a source and a status. */
function rowsIn(value: unknown, seen = new Set<unknown>()): Loose[] {
	if (value === null || typeof value !== 'object' || seen.has(value)) return [];
	seen.add(value);
	const inner = Object.values(value).flatMap((part) => rowsIn(part, seen));
	return 'status' in value && 'source' in value ? [value as Loose, ...inner] : inner;
}

/** Tables: arrays of rows with keys, one per exported array. */
const modules = await Promise.all(
	filesUnder('src/reference')
		.filter((path) => !path.includes('/citations') && !path.endsWith('types.ts'))
		.map(async (path) => ({
			path,
			exports: (await import(/* @vite-ignore */ pathToFileURL(resolve(path)).href)) as Loose
		}))
);
const rows = modules.flatMap(({ path, exports }) =>
	rowsIn({ ...exports }).map((row) => ({ path, row }))
);
const isPair = (value: unknown): value is [number, number] =>
	Array.isArray(value) && value.length === 2 && value.every((end) => typeof end === 'number');

describe('reference rows', () => {
	test('there are many', () => {
		expect(rows.length).toBeGreaterThan(300);
	});

	test('each has an allowed status and sources that resolve', () => {
		const wrong = rows.filter(
			({ row }) =>
				!(statuses as readonly unknown[]).includes(row.status) ||
				!Array.isArray(row.source) ||
				!row.source.every((key) => isCitationKey(String(key)))
		);
		expect(wrong).toEqual([]);
	});

	test('what is said to be seen names what was seen, unless it says that nothing was found', () => {
		const bare = rows.filter(
			({ row }) => row.status === 'seen' && (row.source as unknown[]).length === 0
		);
		expect(bare.map(({ row }) => row.key)).toEqual(['hang']);
		expect(bare[0]!.row.finding).toContain('No published experiment');
	});

	test('nothing said to be seen rests on memory alone', () => {
		const wrong = rows.filter(
			({ row }) =>
				row.status === 'seen' &&
				(row.source as string[]).length > 0 &&
				(row.source as string[]).every((key) => citationOf(key).how === 'memory')
		);
		expect(wrong.map(({ path, row }) => `${path}: ${String(row.key ?? row.field)}`)).toEqual([]);
	});

	test('ranges run upward, values and starts lie in them, spreads are not negative', () => {
		const wrong = rows.filter(({ row }) => {
			const ranges = Object.entries(row).filter(
				([field, value]) => /range$/i.test(field) && isPair(value)
			) as [string, [number, number]][];
			if (ranges.some(([, [low, high]]) => !(low <= high))) return true;
			if (typeof row.spread === 'number' && !(row.spread >= 0)) return true;
			const range = row.range;
			const value = row.value ?? row.start;
			return isPair(range) && typeof value === 'number' && (value < range[0] || value > range[1]);
		});
		expect(wrong).toEqual([]);
	});

	test('every number is a number and every value has its unit', () => {
		const wrong = rows.filter(
			({ row }) =>
				Object.values(row).some((value) => typeof value === 'number' && Number.isNaN(value)) ||
				('value' in row && 'conditions' in row && !row.unit)
		);
		expect(wrong).toEqual([]);
	});

	test('keys are unique in their table', () => {
		const wrong = modules.flatMap(({ path, exports }) =>
			Object.entries(exports).flatMap(([name, table]) => {
				if (!Array.isArray(table)) return [];
				const keys = table.flatMap((row) =>
					row && typeof row === 'object' && 'key' in row ? [String((row as Loose).key)] : []
				);
				return new Set(keys).size === keys.length ? [] : [`${path}: ${name}`];
			})
		);
		expect(wrong).toEqual([]);
	});

	test('a row is found by its key, and a missing key says which there are', () => {
		expect(rowOf(coefficients, 'limestone-bare').value).toBe(0.64);
		expect(() => rowOf(laws, 'magic')).toThrow(
			/no row "magic", expected one of constant, adhesion/
		);
		expect(() => citationOf('nobody1900')).toThrow(RangeError);
	});

	test('surfaces without a published value say so', () => {
		for (const key of ['resin', 'painted-wood']) {
			const row = rowOf(coefficients, key);
			expect(row.value).toBeNull();
			expect(row.note).toMatch(/^No value found/);
		}
	});
});

describe('citations', () => {
	test('each says how it was read, and where it can be found', () => {
		const wrong = Object.entries<Citation>(citations).filter(
			([, work]) =>
				!(readings as readonly string[]).includes(work.how) ||
				work.authors === '' ||
				work.title === '' ||
				work.where === '' ||
				(work.year !== null && (work.year < 1850 || work.year > 2026))
		);
		expect(wrong).toEqual([]);
	});

	test('a key that carries a year carries the work’s year', () => {
		const wrong = Object.entries<Citation>(citations).filter(([key, work]) => {
			const year = /(19|20)\d\d(?!\d)/.exec(key)?.[0];
			return year !== undefined && work.year !== null && Number(year) !== work.year;
		});
		expect(wrong.map(([key]) => key)).toEqual([]);
	});
});

describe('surface presets and laws', () => {
	test('each preset is a law of the core and gives a sane ratio at hang pressures', () => {
		for (const preset of surfacePresets) {
			const law: FrictionLaw = preset.law;
			for (const pressure of [50e3, 150e3, 300e3, 600e3]) {
				const ratio = frictionRatio(law, pressure);
				expect(ratio, preset.key).toBeGreaterThan(0.2);
				expect(ratio, preset.key).toBeLessThan(1.5);
			}
		}
	});

	test('a preset’s load effect is the sign its law has between 30 and 100 N on 350 mm²', () => {
		for (const preset of surfacePresets) {
			const light = frictionRatio(preset.law, 30 / 350e-6);
			const heavy = frictionRatio(preset.law, 100 / 350e-6);
			if (preset.loadEffect === 'no change') expect(heavy, preset.key).toBe(light);
			if (preset.loadEffect === 'lighter is easier') expect(heavy, preset.key).toBeLessThan(light);
			if (preset.loadEffect === 'heavier is easier')
				expect(heavy, preset.key).toBeGreaterThan(light);
		}
	});

	test('every law of the core has its row, with a range for each of its numbers', () => {
		const samples: FrictionLaw[] = surfacePresets.map((preset) => preset.law);
		expect(new Set(laws.map((law) => law.key))).toEqual(new Set(samples.map((law) => law.kind)));
		for (const law of laws) {
			const sample = samples.find((candidate) => candidate.kind === law.key)!;
			const fields = Object.keys(sample).filter((field) => field !== 'kind');
			expect(new Set(law.parameters.map((parameter) => parameter.field))).toEqual(new Set(fields));
		}
	});

	test('the film preset and law say that no experiment shows them', () => {
		expect(rowOf(surfacePresets, 'dusty-film').note).toContain('not shown by experiments');
		expect(rowOf(laws, 'film').standing).toContain('not shown by experiments');
	});
});

describe('mechanisms and separating tests', () => {
	test('every line of the table of signs is there', () => {
		const lines = new Set(mechanisms.map((row) => row.line));
		expect([...lines].sort((a, b) => a - b)).toEqual(Array.from({ length: 17 }, (_, i) => i + 1));
	});

	test('signs and grades are from their lists', () => {
		for (const row of mechanisms) {
			for (const effect of [row.constantArea, row.constantPressure, row.biggerPatch]) {
				expect(effects).toContain(effect);
			}
			expect(loadSigns).toContain(row.loadEffect);
			expect(grades).toContain(row.grade);
			expect(row.test.length).toBeGreaterThan(5);
		}
	});

	test('a mechanism without a curve says why', () => {
		for (const row of mechanisms.filter((row) => row.boardKey === null)) {
			expect(row.note, row.key).toMatch(/no (curve|formula)/i);
		}
	});

	test('every family that can be tested is told apart from each other by some test', () => {
		for (const one of testedFamilies) {
			for (const other of testedFamilies) {
				if (one === other) continue;
				const apart = separatingTests.some((row) => row.outcome[one] !== row.outcome[other]);
				expect(apart, `${one} and ${other}`).toBe(true);
			}
		}
	});
});
