import { parseAnswer } from '#core/workbook/answer-check/parse-answer.ts';
import type { Quantity, Unit } from '#core/workbook/statics/types.ts';

/** One field as it was read: a value in SI, or why it cannot be used, or a word on how it was read. */
export type TypedReading = { value?: number; fault?: string; note?: string };

const degree = Math.PI / 180;

/** Units of fields that are not the SI ones, and what one of them is worth. */
const fieldUnits: Partial<Record<Unit, [text: string, factor: number]>> = {
	rad: ['°', degree],
	'1': ['', 1],
	'm²': ['mm²', 1e-6],
	Pa: ['kPa', 1e3]
};

/** The unit that stands beside a field; a bare number is read in it. */
export function fieldUnit(unit: Unit): string {
	return fieldUnits[unit]?.[0] ?? unit;
}

const factorOf = (unit: Unit) => fieldUnits[unit]?.[1] ?? 1;

/** A value in SI as a field shows it, in the field's own unit. */
export function textOf(value: number, unit: Unit): string {
	return String(Number((value / factorOf(unit)).toPrecision(10)));
}

/**
 * Reads what was typed into a field; an empty one is not given.
 *
 * @param text - a number in any common form, with or without a unit
 * @param of - the quantity
 */
export function readTyped(text: string, of: Pick<Quantity, 'unit' | 'name'>): TypedReading {
	if (text.trim() === '') return {};
	const parsed = parseAnswer(text, of.unit);
	const { fault } = parsed;
	// A bare angle is read in degrees first; other bare numbers come in SI.
	const own = of.unit === 'rad' ? 1 : factorOf(of.unit);
	const readings = parsed.readings.map((each) =>
		each.bare ? { ...each, value: each.value * own } : each
	);
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
