import { describe, expect, test } from 'vitest';
import { readBench, writeBench } from '#state/workbook/bench-link.ts';
import { readProblem, writeProblem } from '#state/workbook/link.ts';
import { readPractice, readSeed, writePractice } from '#state/workbook/practice-link.ts';

describe('a problem’s link', () => {
	test('carries arrangement, asked quantity and what was typed, and is read back', () => {
		const link = { arrangement: 3, ask: 'muStatic', texts: { rise: '30 cm', boardLength: '1,2' } };
		const query = writeProblem(link);
		expect(query).toMatch(/^v=1&a=3&ask=muStatic&/);
		expect(readProblem(query)).toEqual({ link, notes: [] });
	});
	test('an empty query is no problem, and empty fields are not written', () => {
		expect(readProblem('').link).toBeUndefined();
		expect(writeProblem({ texts: { mass: ' ' } })).toBe('v=1');
	});
	test('says what was not as written', () => {
		expect(readProblem('mass=2').notes[0]).toContain('version');
		expect(readProblem('v=9&mass=2').notes[0]).toContain('newer version');
		const { link, notes } = readProblem(`v=1&a=x&mass=${'1'.repeat(50)}`);
		expect(link).toEqual({ texts: {} });
		expect(notes).toHaveLength(2);
	});
});

describe('practice and bench links', () => {
	test('practice is read back', () => {
		const link = { family: 'ladder', arrangement: 2, seed: 17 };
		expect(readPractice(writePractice(link), ['incline', 'ladder'])).toEqual({ link, notes: [] });
	});
	test('a strange family or seed is replaced and said', () => {
		const { link, notes } = readPractice('v=1&family=moon&seed=-3', ['incline']);
		expect(link).toEqual({ family: 'incline', arrangement: undefined, seed: 1 });
		expect(notes).toHaveLength(2);
		expect(readSeed('0')).toBeUndefined();
		expect(readSeed('12')).toBe(12);
	});
	test('bench data are read back, and too many rows make no link', () => {
		const bench = { kind: 'loaded', unit: 'kg', area: '120', text: '1 20\n2 21' } as const;
		expect(readBench(writeBench(bench)!)).toEqual(bench);
		expect(writeBench({ ...bench, text: 'x'.repeat(3000) })).toBeUndefined();
		expect(readBench('')).toBeUndefined();
	});
});
