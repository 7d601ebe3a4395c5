import { describe, expect, test } from 'vitest';
import { parseAnswer } from '#core/workbook/answer-check/parse-answer.ts';
import type { Unit } from '#core/workbook/statics/types.ts';
import { within } from '#test/within.ts';

const degree = Math.PI / 180;
/** Exact by definition: 0.45359237 kg times 9.80665 m/s². */
const pound = 4.4482216152605;

const readable: [string, Unit, number][] = [
	['137.2 N', 'N', 137.2],
	['137,2N', 'N', 137.2],
	['0,25 kN', 'N', 250],
	['1.2e3', 'N', 1200],
	['1.2 x 10^3 N', 'N', 1200],
	['2,4 × 10³ N', 'N', 2400],
	['3.1·10^-2', '1', 0.031],
	['5 × 10⁻² N', 'N', 0.05],
	['-0.23 m/s²', 'm/s²', -0.23],
	['−0.23 m/s^2', 'm/s²', -0.23],
	['0.23 m s^-2', 'm/s²', 0.23],
	['25 lb', 'N', 25 * pound],
	['25 lbf', 'N', 25 * pound],
	['25 lb', 'kg', 25 * 0.45359237],
	['3.5 kg', 'kg', 3.5],
	['350 g', 'kg', 0.35],
	['2 kgf', 'N', 2 * 9.80665],
	['30°', 'rad', 30 * degree],
	['30 deg', 'rad', 30 * degree],
	['30 degrees', 'rad', 30 * degree],
	['0.52 rad', 'rad', 0.52],
	['π/6 rad', 'rad', Math.PI / 6],
	['2pi/3 rad', 'rad', (2 * Math.PI) / 3],
	['3/4', '1', 0.75],
	['1 1/2', '1', 1.5],
	['½', '1', 0.5],
	['2 ½ m', 'm', 2.5],
	['√3/2', '1', Math.sqrt(3) / 2],
	['45 %', '1', 0.45],
	['12 345,6 N', 'N', 12345.6],
	["12'345.6 N", 'N', 12345.6],
	['12,345.6 N', 'N', 12345.6],
	['12.345,6 N', 'N', 12345.6],
	['1,234,567', 'N', 1234567],
	['mu = 0.35', '1', 0.35],
	['P = 4 kN', 'N', 4000],
	['23.5 cm', 'm', 0.235],
	['5.75 in', 'm', 5.75 * 0.0254],
	['100 km/h', 'm/s', 100 / 3.6],
	['2.77 kW', 'W', 2770],
	['43 N m', 'N·m', 43],
	['43 N·m', 'N·m', 43],
	['120 rpm', 'rad/s', 4 * Math.PI]
];

describe('answers in any common form', () => {
	test.each(readable)('%s as %s', (text, unit, value) => {
		const { readings, fault } = parseAnswer(text, unit);
		expect(fault).toBeUndefined();
		within(readings[0]!.value, value, { relative: 1e-9 });
	});

	test('a bare angle is read both ways, degrees first', () => {
		const values = parseAnswer('30', 'rad').readings.map((each) => each.value);
		within(values[0]!, 30 * degree, { relative: 1e-12 });
		expect(values[1]).toBe(30);
	});

	test('1,200 may be one point two or twelve hundred', () => {
		expect(parseAnswer('1,200 N', 'N').readings.map((each) => each.value)).toEqual([1.2, 1200]);
		expect(parseAnswer('0,200 N', 'N').readings.map((each) => each.value)).toEqual([0.2]);
	});

	test.each([
		['137', 0.5, 3],
		['137.2', 0.05, 4],
		['137.20', 0.005, 5],
		['1200', 5, 3],
		['1234', 0.5, 4],
		['100', 0.5, 3],
		['20', 0.5, 2],
		['0.043', 0.0005, 2],
		['1.20e3', 5, 3]
	])('%s is meant to within %d, %i digits', (text, half, digits) => {
		const [reading] = parseAnswer(text, 'N').readings;
		within(reading!.half, half, { relative: 1e-9 });
		expect(reading!.digits).toBe(digits);
	});

	test.each([
		['', 'N', /No answer is typed/],
		['about heavy', 'N', /no number/],
		['12 smoots', 'm', /"smoots" is no unit known/],
		['12 kg', 'N', /"kg" measures a mass; a force in N is asked/],
		['12 N', 'rad', /an angle in degrees or radians is asked/],
		['12 N', '1', /a plain number is asked/]
	] as [string, Unit, RegExp][])('"%s" for %s is refused with a reason', (text, unit, reason) => {
		const { readings, fault } = parseAnswer(text, unit);
		expect(readings).toEqual([]);
		expect(fault).toMatch(reason);
	});
});
