import { formatNumber } from './format-number.ts';

/** What masses are shown in. */
export type MassUnit = 'kg' | 'lb';

/** One international avoirdupois pound, kg (exact). */
const poundInKilograms = 0.45359237;

/** A mass in the unit shown. Source: nistSp811 */
export function massIn(kilograms: number, unit: MassUnit): number {
	return unit === 'kg' ? kilograms : kilograms / poundInKilograms;
}

/** A mass in kg from the unit shown. Source: nistSp811 */
export function massFrom(shown: number, unit: MassUnit): number {
	return unit === 'kg' ? shown : shown * poundInKilograms;
}

/** A mass as text with its unit, three significant digits. */
export function massText(kilograms: number, unit: MassUnit): string {
	return `${formatNumber(massIn(kilograms, unit))} ${unit}`;
}

/** The unit as a word. */
export function massWord(unit: MassUnit): string {
	return unit === 'kg' ? 'kilograms' : 'pounds';
}
