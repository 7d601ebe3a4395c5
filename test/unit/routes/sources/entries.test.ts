import { readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { areas } from '../../../../src/routes/sources/areas.ts';
import { matches, plainLetters, wordsOf } from '../../../../src/routes/sources/search.ts';
import { quantityText } from '../../../../src/routes/sources/value-text.ts';

type Loose = Record<string, unknown>;

/** Everything in a module that carries a source and a status, however deep. */
function rowsIn(value: unknown): Loose[] {
	if (value === null || typeof value !== 'object') return [];
	const inner = Object.values(value).flatMap(rowsIn);
	return 'status' in value && 'source' in value ? [value as Loose, ...inner] : inner;
}

const entries = areas.flatMap((area) => area.entries);

describe('the page of sources shows what the tables hold', () => {
	test('each row of each table has its entry, cautions apart', async () => {
		const files = readdirSync('src/reference').filter(
			(name) => name.endsWith('.ts') && !['citations.ts', 'types.ts', 'read.ts'].includes(name)
		);
		expect(files.length).toBeGreaterThan(20);
		for (const file of files) {
			const module = (await import(
				/* @vite-ignore */ `../../../../src/reference/${file}`
			)) as Loose;
			const tables = Object.entries(module).filter(([name]) => name !== 'cautions');
			const rows = tables.flatMap(([, table]) => rowsIn(table));
			const shown = areas.find((area) => area.file === file)?.entries ?? [];
			expect(shown.length, file).toBe(rows.length);
		}
	});

	test('each entry can be linked to, says what it is, and shows no raw value', () => {
		expect(entries.length).toBeGreaterThan(300);
		expect(new Set(entries.map(({ id }) => id)).size).toBe(entries.length);
		for (const { what, value, details } of entries) {
			expect(what).toMatch(/\S/);
			expect([what, value, ...details].join(' ')).not.toMatch(/undefined|NaN|\[object|null/);
		}
	});

	test('SI values are shown in the units that readers expect', () => {
		expect(quantityText(110e-6, 'm²')).toBe('110 mm²');
		expect(quantityText([80_000, 230_000], 'Pa')).toBe('80 to 230 kPa');
		expect(quantityText(13e6, 'Pa')).toBe('13 MPa');
		expect(quantityText(1.756, 'm')).toBe('1.76 m');
		expect(quantityText(0.0065, 'm')).toBe('6.5 mm');
		expect(quantityText(Math.PI / 2, 'rad')).toBe('90 °');
		expect(quantityText(0.64, '1')).toBe('0.64');
	});
});

describe('finding', () => {
	test('case, accents and kinds of hyphen do not matter; every word counts', () => {
		const text = plainLetters('Schöffl 2009: force on the A2 pulley – crimp');
		expect(matches(text, wordsOf('schoffl CRIMP'))).toBe(true);
		expect(matches(text, wordsOf('crimp slope'))).toBe(false);
		expect(matches(text, wordsOf('   '))).toBe(true);
	});
});
