import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { bodyMeasures } from '#reference/anthropometry.ts';
import { bodyScaling, sizeFacts } from '#reference/body-scaling.ts';
import { fingerLengths, photographedLengths } from '#reference/finger-lengths.ts';
import { rowOf } from '#reference/read.ts';
import { within } from '#test/within.ts';

type Case = { id: string; unit: string; expected: number[]; absolute?: number };
const cases = JSON.parse(readFileSync('test/oracles/anthropometry/cases.json', 'utf8')) as Case[];
const sexes = ['men', 'women'] as const;

describe('body sizes against the survey', () => {
	for (const { id, unit, expected, absolute = 1e-9 } of cases) {
		test(id, () => {
			if (unit === 'mm') {
				const row = rowOf(bodyMeasures, id);
				[row.p5, row.p50, row.p95].forEach((value, at) =>
					within(value * 1000, expected[at]!, { absolute })
				);
			} else {
				const row = rowOf(bodyScaling, id);
				within(row.men, expected[0]!, { absolute });
				within(row.women, expected[1]!, { absolute });
			}
		});
	}

	test('percentiles rise, and lie where a bell of that mean and spread puts them', () => {
		for (const row of bodyMeasures) {
			expect(row.p5, row.key).toBeLessThan(row.p50);
			expect(row.p50, row.key).toBeLessThan(row.p95);
			// 1.645 spreads either side; body mass is skewed, so a quarter of a spread is allowed.
			within(row.p5, row.mean - 1.645 * row.spread, { absolute: 0.25 * row.spread });
			within(row.p50, row.mean, { absolute: 0.15 * row.spread });
			within(row.p95, row.mean + 1.645 * row.spread, { absolute: 0.25 * row.spread });
		}
	});

	test('hand area over mass from short to tall goes as the two exponents say', () => {
		const [area, mass] = ['area-on-stature', 'mass-on-stature'].map((key) =>
			rowOf(bodyScaling, key)
		) as [(typeof bodyScaling)[number], (typeof bodyScaling)[number]];
		const short = rowOf(bodyScaling, 'area-per-mass-shortest');
		const tall = rowOf(bodyScaling, 'area-per-mass-tallest');
		for (const sex of sexes) {
			const stature = rowOf(bodyMeasures, `stature-${sex}`);
			// Means of the outer fifths of a bell lie 1.40 spreads out.
			const taller = (stature.mean + 1.4 * stature.spread) / (stature.mean - 1.4 * stature.spread);
			const expected = Math.pow(taller, area[sex] - mass[sex]);
			within(tall[sex] / short[sex], expected, { absolute: 0.015 });
			expect(tall[sex]).toBeLessThan(short[sex]);
		}
	});

	test('same shape would make hand area grow as mass to two thirds; it grows less', () => {
		for (const key of ['area-on-mass', 'area-on-mass-lean']) {
			for (const sex of sexes) expect(rowOf(bodyScaling, key)[sex]).toBeLessThan(2 / 3);
		}
	});

	test('from 60 to 90 kg strength over weight falls by 13.6 % with the common exponent', () => {
		const exponent = rowOf(sizeFacts, 'grip-on-mass').value!;
		within(1 - Math.pow(1.5, exponent - 1), 0.136, { absolute: 0.0005 });
	});

	test('bones from knuckle to tip are longer than fingers from crease to tip, in every finger', () => {
		for (const bones of fingerLengths) {
			const chain = bones.proximal + bones.middle + bones.distal + bones.softTip;
			const crease = rowOf(photographedLengths, bones.key).value!;
			expect(chain, bones.key).toBeGreaterThan(crease);
			expect(chain / crease, bones.key).toBeLessThan(1.4);
		}
	});
});
