import { formatNumber } from '#core/units/format-number.ts';

/** A margin in three digits; one that falls short of 1 is never rounded up to it. */
export function marginText(margin: number): string {
	if (margin === Infinity) return 'no limit';
	const shown = formatNumber(margin);
	return margin < 1 && Number(shown) >= 1 ? formatNumber(0.999) : shown;
}
