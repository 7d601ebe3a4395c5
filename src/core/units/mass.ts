/** Kilograms in one avoirdupois pound (exact by definition). Source: nistSp811, appendix B. */
export const kilogramsPerPound = 0.45359237;

/**
 * Turns pounds into kilograms.
 * kg = lb · 0.45359237
 * @param pounds mass, lb, any number
 * @returns mass, kg
 * Source: nistSp811, appendix B.
 * Example: poundsToKilograms(100) is 45.359237.
 */
export function poundsToKilograms(pounds: number): number {
	return pounds * kilogramsPerPound;
}

/**
 * Turns kilograms into pounds.
 * lb = kg / 0.45359237
 * @param kilograms mass, kg, any number
 * @returns mass, lb
 * Source: nistSp811, appendix B.
 * Example: kilogramsToPounds(45.359237) is 100.
 */
export function kilogramsToPounds(kilograms: number): number {
	return kilograms / kilogramsPerPound;
}
