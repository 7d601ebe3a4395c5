import { csvParse } from 'd3';
import { describe, expect, test } from 'vitest';
import { holdingRegion } from '#core/region/holding-region.ts';
import { computeResults } from '#state/setup/results.ts';
import { firstSight } from '#storage/codecs/setup.ts';
import { writeCurves } from '#storage/codecs/csv-curves.ts';
import { within } from '#test/within.ts';
import { marginCsv, regionCsv } from '../../../../src/routes/explore/curves-csv.ts';

describe('CSV of curves (RFC 4180)', () => {
	test('header with units, CR LF after each row, quotes where they are needed', () => {
		const text = writeCurves([
			{ name: 'case', cells: ['plain', 'a, b', 'say "so"', 'two\nlines'] },
			{ name: 'net load', unit: 'kg', cells: [1, 2.5, -3, 1e-7] }
		]);
		expect(text).toBe(
			'case,net load (kg)\r\nplain,1\r\n"a, b",2.5\r\n"say ""so""",-3\r\n"two\nlines",0.0000001\r\n'
		);
	});

	test('what is not finite, and what is missing, is an empty cell', () => {
		expect(writeCurves([{ name: 'x', cells: [NaN, Infinity, undefined, 0] }])).toBe(
			'x\r\n\r\n\r\n\r\n0\r\n'
		);
	});

	test('columns of different lengths are refused', () => {
		const columns = [
			{ name: 'a', cells: [1, 2] },
			{ name: 'b', cells: [1] }
		];
		expect(() => writeCurves(columns)).toThrow(/b must have 2 cells/);
	});
});

describe('the curves of Explore, read back by another reader', () => {
	const results = computeResults({ ...firstSight, overConstant: true, overRope: true });

	test('the region’s edges are those of the core, for each case', () => {
		const rows = csvParse(regionCsv(results, 'kg'));
		expect(rows.columns).toEqual([
			'case',
			'contact area (mm2)',
			'lightest load that holds (kg)',
			'heaviest load that holds (kg)',
			'limit below',
			'limit above'
		]);
		expect(new Set(rows.map((row) => row.case)).size).toBe(3);
		const own = rows.filter((row) => row.case === 'this set-up');
		const { hang, across, range, netMass } = results;
		const load = { ...range, present: netMass };
		const region = holdingRegion(hang, { ...across, columns: 240, load });
		const kept = region.columns.flatMap(({ value, intervals }) =>
			(intervals.length ? intervals : [undefined]).map((interval) => ({ value, interval }))
		);
		expect(own.length).toBe(kept.length);
		own.forEach((row, i) => {
			const { value, interval } = kept[i]!;
			within(Number(row['contact area (mm2)']), value * 1e6, { relative: 1e-9 });
			if (!interval) expect(row['lightest load that holds (kg)']).toBe('');
			else within(Number(row['lightest load that holds (kg)']), interval.from, { relative: 1e-9 });
		});
	});

	test('the margins are those of the core, in pounds where pounds are chosen', () => {
		const rows = csvParse(marginCsv(results, 'lb'));
		expect(rows.columns.slice(0, 3)).toEqual([
			'net load (lb)',
			'slip margin (ratio)',
			'strength margin (ratio)'
		]);
		expect(rows.columns.length).toBe(5);
		expect(rows.length).toBeGreaterThan(99);
		// 5 kg, the lightest load, in pounds: 5 / 0.45359237 (exact by definition).
		within(Number(rows[0]!['net load (lb)']), 11.0231131092, { absolute: 1e-9 });
		for (const row of rows) expect(Number(row['slip margin (ratio)'])).toBeGreaterThan(0);
	});
});
