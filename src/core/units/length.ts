/**
 * Turns millimetres into metres.
 * m = mm / 1000
 * @param millimetres length, mm, any number
 * @returns length, m
 * Source: nistSp811, table 5.
 * Example: millimetresToMetres(21) is 0.021.
 */
export function millimetresToMetres(millimetres: number): number {
	return millimetres / 1000;
}

/**
 * Turns metres into millimetres.
 * mm = m · 1000
 * @param metres length, m, any number
 * @returns length, mm
 * Source: nistSp811, table 5.
 * Example: metresToMillimetres(0.021) is 21.
 */
export function metresToMillimetres(metres: number): number {
	return metres * 1000;
}
