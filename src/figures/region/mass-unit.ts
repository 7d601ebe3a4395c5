import { kilogramsToPounds, poundsToKilograms } from '#core/units/mass.ts';
import type { MassUnit } from './types.ts';

/** Net mass as the screen shows it. */
export function massToScreen(kilograms: number, unit: MassUnit): number {
	return unit === 'kg' ? kilograms : kilogramsToPounds(kilograms);
}

/** Net mass from the screen, in kilograms. */
export function massFromScreen(shown: number, unit: MassUnit): number {
	return unit === 'kg' ? shown : poundsToKilograms(shown);
}
