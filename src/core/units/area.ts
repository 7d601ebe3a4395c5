/**
 * Turns square millimetres into square metres.
 * m² = mm² / 10⁶
 * @param squareMillimetres area, mm², any number
 * @returns area, m²
 * Source: nistSp811, table 5.
 * Example: squareMillimetresToSquareMetres(250) is 0.00025.
 */
export function squareMillimetresToSquareMetres(squareMillimetres: number): number {
	return squareMillimetres / 1e6;
}

/**
 * Turns square metres into square millimetres.
 * mm² = m² · 10⁶
 * @param squareMetres area, m², any number
 * @returns area, mm²
 * Source: nistSp811, table 5.
 * Example: squareMetresToSquareMillimetres(0.00025) is 250.
 */
export function squareMetresToSquareMillimetres(squareMetres: number): number {
	return squareMetres * 1e6;
}
