/**
 * Holds a number within a range; a number that is not one becomes the range's start.
 * `from` must not lie above `to`.
 */
export function clamp(value: number, from: number, to: number): number {
	if (Number.isNaN(value)) return from;
	return Math.min(Math.max(value, from), to);
}
