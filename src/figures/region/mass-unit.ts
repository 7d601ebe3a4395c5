import type { MassUnit } from './types.ts';

/** One pound in kilograms, exact by the international agreement of 1959. */
const kilogramsPerPound = 0.45359237;

/** Net mass as the screen shows it. */
export function massToScreen(kilograms: number, unit: MassUnit): number {
	return unit === 'kg' ? kilograms : kilograms / kilogramsPerPound;
}

/** Net mass from the screen, in kilograms. */
export function massFromScreen(shown: number, unit: MassUnit): number {
	return unit === 'kg' ? shown : shown * kilogramsPerPound;
}
