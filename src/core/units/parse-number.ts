/**
 * Reads a number as people type it: decimal point or decimal comma, spaces, true minus sign.
 *
 * @param text - what stands in the field
 * @returns the number, or undefined where the text is not one plain number
 *
 * Source: derived
 * Example: parseNumber('72,5') === 72.5
 */
export function parseNumber(text: string): number | undefined {
	const plain = text
		.trim()
		.replace(/[\s\u00a0\u202f]/g, '')
		.replace(/^[−–]/, '-')
		.replace(/^\+/, '')
		.replace(',', '.');
	if (!/^-?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i.test(plain)) return undefined;
	const value = Number(plain);
	return Number.isFinite(value) ? value : undefined;
}
