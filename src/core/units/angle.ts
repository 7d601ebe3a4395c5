/**
 * Turns degrees into radians.
 * rad = deg · π/180
 * @param degrees angle, degrees, any number
 * @returns angle, rad
 * Source: nistSp811, appendix B.
 * Example: degreesToRadians(180) is π.
 */
export function degreesToRadians(degrees: number): number {
	return (degrees * Math.PI) / 180;
}

/**
 * Turns radians into degrees.
 * deg = rad · 180/π
 * @param radians angle, rad, any number
 * @returns angle, degrees
 * Source: nistSp811, appendix B.
 * Example: radiansToDegrees(Math.PI) is 180.
 */
export function radiansToDegrees(radians: number): number {
	return (radians * 180) / Math.PI;
}
