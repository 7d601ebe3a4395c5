import { expect, test } from 'vitest';
import { mechanisms } from '#reference/mechanisms.ts';
import { arrange, type Pick, type Standing } from '../../../../src/routes/mechanisms/arrange.ts';

const standings: Standing[] = mechanisms.map((row, index) => ({
	row,
	sign: row.loadEffect,
	size: ((index * 7) % 22) / 100
}));
const pick = (patch: Partial<Pick>): Pick => ({
	...{ order: 'explained', sign: 'any', grade: 'any', least: 0 },
	...patch
});
const rowsOf = (patch: Partial<Pick>) =>
	arrange(standings, pick(patch)).map((key) => standings.find(({ row }) => row.key === key)!);

test('as explained, geometry comes first and all is shown', () => {
	const rows = rowsOf({});
	expect(rows).toHaveLength(mechanisms.length);
	expect(rows.slice(0, 7).every(({ row }) => row.family === 'geometry')).toBe(true);
});

test('sorting by size goes from the largest down, by evidence from exact down', () => {
	const sizes = rowsOf({ order: 'size' }).map(({ size }) => size);
	expect(sizes).toEqual([...sizes].sort((a, b) => b - a));
	const grades = rowsOf({ order: 'evidence' }).map(({ row }) => row.grade);
	expect(grades[0]).toBe('exact');
	expect(grades.lastIndexOf('strong')).toBeLessThan(grades.indexOf('fair'));
	expect(grades.lastIndexOf('fair')).toBeLessThan(grades.indexOf('weak'));
});

test('picking by sign, evidence and size keeps only those', () => {
	expect(rowsOf({ sign: 'heavier is easier' }).length).toBeGreaterThan(3);
	for (const { sign } of rowsOf({ sign: 'heavier is easier' })) {
		expect(sign).toBe('heavier is easier');
	}
	for (const { row } of rowsOf({ grade: 'weak' })) expect(row.grade).toBe('weak');
	for (const { size } of rowsOf({ least: 0.1 })) expect(size).toBeGreaterThanOrEqual(0.1);
});
