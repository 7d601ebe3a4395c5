/**
 * Turns kilopascals into pascals.
 * Pa = kPa · 1000
 * @param kilopascals pressure, kPa, any number
 * @returns pressure, Pa
 * Source: nistSp811, table 5.
 * Example: kilopascalsToPascals(42) is 42000.
 */
export function kilopascalsToPascals(kilopascals: number): number {
	return kilopascals * 1000;
}

/**
 * Turns pascals into kilopascals.
 * kPa = Pa / 1000
 * @param pascals pressure, Pa, any number
 * @returns pressure, kPa
 * Source: nistSp811, table 5.
 * Example: pascalsToKilopascals(42000) is 42.
 */
export function pascalsToKilopascals(pascals: number): number {
	return pascals / 1000;
}
