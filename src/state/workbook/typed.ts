import { parseAnswer } from '#core/workbook/answer-check/parse-answer.ts';
import type { Quantity, Unit } from '#core/workbook/statics/types.ts';

/** One field as it was read: a value in SI, or why it cannot be used, or a word on how it was read. */
export type TypedReading = { value?: number; fault?: string; note?: string };

const degree = Math.PI / 180;

/** The unit that stands beside a field; a bare number is read in it. */
export function fieldUnit(unit: Unit): string {
	if (unit === 'rad') return '°';
	return unit === '1' ? '' : unit;
}

/** A value in SI as a field shows it, in the field's own unit. */
export function textOf(value: number, unit: Unit): string {
	return String(Number((unit === 'rad' ? value / degree : value).toPrecision(10)));
}

/**
 * Reads what was typed into a field; an empty one is not given.
 *
 * @param text - a number in any common form, with or without a unit
 * @param of - the quantity
 */
export function readTyped(text: string, of: Pick<Quantity, 'unit' | 'name'>): TypedReading {
	if (text.trim() === '') return {};
	const { readings, fault } = parseAnswer(text, of.unit);
	const [first] = readings;
	if (fault || !first) return { fault: fault ?? `“${text}” cannot be read.` };
	const sameUnit = readings.filter((each) => each.factor === first.factor);
	const other = sameUnit.find((each) => each.value !== first.value);
	// A comma before three digits may part thousands.
	if (other)
		return {
			value: first.value,
			note: `Read as ${textOf(first.value, of.unit)}; write ${textOf(other.value, of.unit)} if that is meant.`
		};
	const slight =
		of.unit === 'rad' && first.bare && first.value !== 0 && Math.abs(first.value) < 1.6 * degree;
	if (slight)
		return { value: first.value, note: 'Read in degrees; write “rad” behind it for radians.' };
	return { value: first.value };
}
