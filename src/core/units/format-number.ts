/**
 * Writes a number for the screen with at most three significant digits.
 *
 * Trailing zeros are dropped unless `fixed` decimals are asked for, and the minus is a true one.
 *
 * @param value - the number in the unit that is shown beside it
 * @param options - `digits`: significant digits, 3 unless told; `fixed`: decimals to show always
 * @returns the text; an en dash where there is no finite number to show
 *
 * Source: derived
 * Example: formatNumber(0.624869) is '0.625' and formatNumber(1204.4) is '1200'.
 */
export function formatNumber(
	value: number,
	options: { digits?: number; fixed?: number } = {}
): string {
	const rounded = Number(value.toPrecision(options.digits ?? 3));
	// The largest numbers of all round up past what a number can hold.
	if (!Number.isFinite(rounded)) return '–';
	const text =
		options.fixed === undefined ? plain(Math.abs(rounded)) : Math.abs(value).toFixed(options.fixed);
	return value < 0 && Number(text) !== 0 ? `−${text}` : text;
}

/** Without an exponent down to a millionth; below that nothing on screen means anything. */
function plain(size: number): string {
	if (size >= 1e21) return size.toExponential();
	return size < 1e-6 ? '0' : String(size).includes('e') ? size.toFixed(6) : String(size);
}
