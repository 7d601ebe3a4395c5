import { shown } from '#core/workbook/statics/units.ts';
import type { Unit } from '#core/workbook/statics/types.ts';

/** A value with its unit for the screen: three significant digits, a true minus, angles in degrees. */
export function shownValue(value: number, unit: Unit, digits = 3): string {
	return shown(value, unit, digits)
		.replace(/e(-?\d+)/, ' × 10^$1')
		.replace(/-/g, '−');
}
