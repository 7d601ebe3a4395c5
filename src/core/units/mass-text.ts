import { formatNumber } from './format-number.ts';
import { kilogramsToPounds, poundsToKilograms } from './mass.ts';

/** What masses are shown in. */
export type MassUnit = 'kg' | 'lb';

/** A mass in the unit shown. */
export function massIn(kilograms: number, unit: MassUnit): number {
	return unit === 'kg' ? kilograms : kilogramsToPounds(kilograms);
}

/** A mass in kg from the unit shown. */
export function massFrom(shown: number, unit: MassUnit): number {
	return unit === 'kg' ? shown : poundsToKilograms(shown);
}

/** A mass as text with its unit on the same line, three significant digits. */
export function massText(kilograms: number, unit: MassUnit): string {
	return `${formatNumber(massIn(kilograms, unit))}\u00a0${unit}`;
}

/** The unit as a word. */
export function massWord(unit: MassUnit): string {
	return unit === 'kg' ? 'kilograms' : 'pounds';
}
