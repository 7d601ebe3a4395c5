/**
 * Writes a number for the screen with at most three significant digits.
 *
 * Integers of more digits keep them all (1204 N is written 1204), trailing zeros are dropped
 * unless `fixed` decimals are asked for, and the minus is a true minus sign.
 *
 * @param value - the number in the unit that is shown beside it
 * @param options - `digits`: significant digits, 3 unless told; `fixed`: decimals to show always
 * @returns the text; an en dash where there is no finite number to show
 *
 * Source: derived
 * Example: formatNumber(0.624869) === '0.625'
 */
export function formatNumber(
	value: number,
	options: { digits?: number; fixed?: number } = {}
): string {
	if (!Number.isFinite(value)) return '–';
	const size = Math.abs(value);
	const digits = options.digits ?? 3;
	const decimals =
		options.fixed ??
		(size === 0
			? 0
			: Math.min(6, Math.max(0, digits - 1 - Math.floor(Math.log10(size * (1 + 1e-12))))));
	const text = size.toFixed(decimals);
	const trimmed =
		options.fixed === undefined && text.includes('.') ? text.replace(/\.?0+$/, '') : text;
	return value < 0 && Number(trimmed) !== 0 ? `−${trimmed}` : trimmed;
}
