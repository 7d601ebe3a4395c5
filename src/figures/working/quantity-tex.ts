import { formatNumber } from '#core/units/format-number.ts';

/** A number with its unit, in TeX, to four significant digits unless told. */
export function quantityTex(value: number, unit = '', digits = 4): string {
	if (value === Infinity) return '\\infty';
	const number = formatNumber(value, { digits }).replace('−', '-').replace('–', '\\text{none}');
	return unit ? `${number}\\,\\mathrm{${unit}}` : number;
}
