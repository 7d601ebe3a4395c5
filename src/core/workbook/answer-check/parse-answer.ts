import type { Unit } from '../statics/types.ts';
import { measures, meaningsOf } from './answer-units.ts';
import { plainSigns, readNumber } from './read-number.ts';

/** One way to read an answer, in SI: the value, half a unit of its last digit, and its digits. */
export type AnswerReading = {
	value: number;
	half: number;
	digits: number;
	/** Factor from the written unit to SI. */
	factor: number;
	/** True where no unit was written. */
	bare: boolean;
};

/** A parsed answer, or the reason why it could not be read. */
export type ParsedAnswer = { readings: AnswerReading[]; fault?: string };

/** Splits "39,2 kN" into number and unit. */
function split(text: string): { number: string; unit: string } | undefined {
	const plain = plainSigns(text)
		.replace(/^[^=]*=\s*/, '')
		.replace(/^(≈|~|about)\s*/i, '');
	for (let end = plain.length; end > 0; end -= 1) {
		const number = plain.slice(0, end).trim();
		const unit = plain.slice(end).trim();
		if (readNumber(number).length === 0) continue;
		if (unit === '' || meaningsOf(unit).length > 0 || !/^[\d.,/^*]/.test(unit))
			return { number, unit };
	}
	return undefined;
}

/**
 * Reads a student's answer: a number with a unit in any common form.
 * @param text as typed: "39,2 N", "1.2e3", "3/4", "30°", "0.52 rad", "25 lb", "x = 4 kN"
 * @param unit SI unit of the asked quantity
 * @returns every reading in SI (a bare angle is read in degrees and in radians); or a fault
 * Source: derived
 * Example: parseAnswer('0,25 kN', 'N') reads 250 N, half a unit 5 N, two digits.
 */
export function parseAnswer(text: string, unit: Unit): ParsedAnswer {
	if (text.trim() === '') return { readings: [], fault: 'No answer is typed yet.' };
	const parts = split(text);
	if (!parts) return { readings: [], fault: `"${text.trim()}" holds no number that can be read.` };
	const numbers = readNumber(parts.number);
	const bare = parts.unit === '';
	const written = bare
		? unit === 'rad'
			? [
					{ unit, factor: Math.PI / 180 },
					{ unit, factor: 1 }
				]
			: [{ unit, factor: 1 }]
		: meaningsOf(parts.unit);
	if (written.length === 0)
		return { readings: [], fault: `"${parts.unit}" is no unit known here.` };
	const fitting = written.filter((each) => each.unit === unit);
	if (fitting.length === 0) {
		const said = measures[written[0]!.unit];
		const wanted = unit === '1' ? '' : ` in ${unit === 'rad' ? 'degrees or radians' : unit}`;
		return {
			readings: [],
			fault: `"${parts.unit}" measures ${said}; ${measures[unit]}${wanted} is asked.`
		};
	}
	const readings = fitting.flatMap(({ factor }) =>
		numbers.map(({ value, half, digits }) => ({
			...{ value: value * factor, half: half * factor, digits, factor, bare }
		}))
	);
	return { readings };
}
