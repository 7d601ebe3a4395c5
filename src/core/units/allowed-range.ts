/** Which numbers a field may hold. A missing bound is no bound; the number must always be finite. */
export type AllowedRange = {
	/** Smallest value that is allowed. */
	min?: number;
	/** The value must be larger than this. */
	above?: number;
	/** Largest value that is allowed. */
	max?: number;
	/** The value must be smaller than this. */
	below?: number;
	/** Only whole numbers. */
	whole?: boolean;
	/** Unit for the message; empty for a plain number. */
	unit?: string;
};

/**
 * Says whether a number lies in an allowed range.
 * @param value the number, in the range's unit
 * @param range the bounds
 * @returns true when the number is finite and inside the bounds
 * Source: derived.
 * Example: isAllowed(0, { above: 0 }) is false.
 */
export function isAllowed(value: number, range: AllowedRange): boolean {
	return (
		Number.isFinite(value) &&
		!(range.min !== undefined && value < range.min) &&
		!(range.above !== undefined && value <= range.above) &&
		!(range.max !== undefined && value > range.max) &&
		!(range.below !== undefined && value >= range.below) &&
		!(range.whole === true && !Number.isInteger(value))
	);
}

/**
 * Lets an allowed number pass and stops any other, naming field, value and allowed range.
 * @param field the field's name as the caller wrote it
 * @param value the number to check
 * @param range the bounds
 * @returns the same number
 * @throws RangeError when the value is not a finite number within the bounds
 * Source: derived.
 * Example: requireAllowed('bodyMass', -1, { above: 0, unit: 'kg' }) throws
 * "bodyMass must be a number above 0 kg, but is -1".
 */
export function requireAllowed(field: string, value: number, range: AllowedRange): number {
	if (typeof value === 'number' && isAllowed(value, range)) return value;
	throw new RangeError(`${field} must be ${rangeInWords(range)}, but is ${String(value)}`);
}

function rangeInWords(range: AllowedRange): string {
	const bounds = [
		range.min === undefined ? '' : `at least ${rounded(range.min)}`,
		range.above === undefined ? '' : `above ${rounded(range.above)}`,
		range.max === undefined ? '' : `at most ${rounded(range.max)}`,
		range.below === undefined ? '' : `below ${rounded(range.below)}`
	].filter((words) => words !== '');
	const noun = range.whole === true ? 'a whole number' : 'a number';
	if (bounds.length === 0) return noun === 'a number' ? 'a finite number' : noun;
	return `${noun} ${bounds.join(' and ')}${range.unit ? ` ${range.unit}` : ''}`;
}

function rounded(bound: number): number {
	return Number(bound.toPrecision(6));
}
