import fc from 'fast-check';
import { describe, test } from 'vitest';
import { degreesToRadians, radiansToDegrees } from '#core/units/angle.ts';
import {
	squareMetresToSquareMillimetres,
	squareMillimetresToSquareMetres
} from '#core/units/area.ts';
import { kilogramsToNewtons, newtonsToKilograms } from '#core/units/force.ts';
import { metresToMillimetres, millimetresToMetres } from '#core/units/length.ts';
import { kilogramsToPounds, poundsToKilograms } from '#core/units/mass.ts';
import { kilopascalsToPascals, pascalsToKilopascals } from '#core/units/pressure.ts';
import { within } from '#test/within.ts';
import { between } from './hangs.ts';

const pairs: [string, (value: number) => number, (value: number) => number][] = [
	['degrees and radians', degreesToRadians, radiansToDegrees],
	['mm² and m²', squareMillimetresToSquareMetres, squareMetresToSquareMillimetres],
	['kilograms and newtons', kilogramsToNewtons, newtonsToKilograms],
	['mm and m', millimetresToMetres, metresToMillimetres],
	['pounds and kilograms', poundsToKilograms, kilogramsToPounds],
	['kPa and Pa', kilopascalsToPascals, pascalsToKilopascals]
];

describe('units there and back again', () => {
	test.each(pairs)('%s', (_name, there, back) => {
		fc.assert(
			fc.property(between(-1e6, 1e6), (value) => {
				within(back(there(value)), value, { absolute: 4e-16 * Math.abs(value) });
				within(there(back(value)), value, { absolute: 4e-16 * Math.abs(value) });
			})
		);
	});
});
