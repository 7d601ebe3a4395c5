/**
 * A number as a student would write it: four significant digits, no needless zeros.
 * @param value any number
 * @param digits significant digits, 1 to 15
 * @returns text; powers of ten as `1.2e-7` only outside 0.0001 to 9 999 999
 * Source: derived
 * Example: numberText(343.23275) is '343.2'.
 */
export function numberText(value: number, digits = 4): string {
	if (!Number.isFinite(value)) return value > 0 ? 'infinite' : value < 0 ? '-infinite' : 'none';
	if (Math.abs(value) < 1e-13) return '0';
	const size = Math.abs(value);
	if (size < 1e-4 || size >= 1e7) return String(Number(value.toPrecision(digits)).toExponential());
	return String(Number(value.toPrecision(digits)));
}

/** The same number in TeX. Example: numberTex(1.2e-7) is '1.2\\times 10^{-7}'. */
export function numberTex(value: number, digits = 4): string {
	if (!Number.isFinite(value))
		return value > 0 ? '\\infty' : value < 0 ? '-\\infty' : '\\text{none}';
	const [mantissa, exponent] = numberText(value, digits).split('e');
	return exponent === undefined ? mantissa! : `${mantissa}\\times 10^{${Number(exponent)}}`;
}
