import { describe, expect, test } from 'vitest';
import { linkPoint } from '#core/statistics/links.ts';
import { logFactorial } from '#core/statistics/log-factorial.ts';
import { millsRatio, normalCdf, normalCentralArea, normalLogCdf } from '#core/statistics/normal.ts';
import { normalQuantile } from '#core/statistics/normal-quantile.ts';
import { survivalShape } from '#core/statistics/survival-shapes.ts';
import { within } from '#test/within.ts';
import cases from './cases.json' with { type: 'json' };

// mpmath at 60 digits; see README.md.
const table = cases.special_functions;

/** Relative, but a value that mpmath rounds to 0 must be 0 to 1e-300. */
function close(value: number, expected: number, relative: number): void {
	within(value, expected, expected === 0 ? { absolute: 1e-300 } : { relative });
}

const root2 = Math.SQRT2;
const checks: [string, number[][], (x: number) => number, number][] = [
	['Φ', table.normal_cdf, normalCdf, 1e-13],
	['ln Φ', table.normal_logcdf, normalLogCdf, 1e-13],
	['quantile', table.normal_quantile, normalQuantile, 1e-12],
	['erf from the central area', table.erf, (x) => 2 * normalCentralArea(x * root2), 1e-13],
	// Rounding x√2 alone moves the far tail by x² × 2e-16.
	['erfc from Φ', table.erfc, (x) => 2 * normalCdf(-x * root2), 5e-13],
	[
		'scaled erfc from Mills',
		table.erfcx,
		(x) => Math.sqrt(2 / Math.PI) * millsRatio(x * root2),
		1e-13
	],
	[
		'ln(1 − e^−x) from the Weibull shape',
		table.log1mexp,
		(x) => survivalShape('weibull').logCumulative(Math.log(x)),
		1e-12
	],
	['ln of the logistic', table.logit_log_sigmoid, (x) => linkPoint('logit', x).logYes, 1e-13]
];

describe('special functions against mpmath', () => {
	test.each(checks)('%s', (_, rows, f, tolerance) => {
		expect(rows.length).toBeGreaterThan(8);
		for (const [x, expected] of rows) close(f(x!), expected!, tolerance);
	});

	test('ln n! at whole numbers', () => {
		const whole = table.lgamma.filter(([x]) => Number.isInteger(x) && x! >= 2);
		expect(whole.length).toBeGreaterThan(4);
		for (const [x, expected] of whole) close(logFactorial(x! - 1), expected!, 1e-13);
	});

	test('upper tail of χ² with one degree of freedom from Φ', () => {
		const one = table.chi2_sf.filter(([, freedom]) => freedom === 1);
		expect(one.length).toBe(2);
		for (const [x, , expected] of one) close(2 * normalCdf(-Math.sqrt(x!)), expected!, 1e-12);
	});
});
