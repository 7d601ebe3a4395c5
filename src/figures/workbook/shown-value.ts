import { shown } from '#core/workbook/statics/units.ts';
import type { Unit } from '#core/workbook/statics/types.ts';

/**
 * A value with its unit for the screen: three significant digits, a true minus, angles in degrees,
 * areas in mm², pressures in kPa.
 */
export function shownValue(value: number, unit: Unit, digits = 3): string {
	const text =
		unit === 'm²'
			? `${shown(value * 1e6, '1', digits)} mm²`
			: unit === 'Pa'
				? `${shown(value / 1e3, '1', digits)} kPa`
				: shown(value, unit, digits);
	return text.replace(/e(-?\d+)/, ' × 10^$1').replace(/-/g, '−');
}
