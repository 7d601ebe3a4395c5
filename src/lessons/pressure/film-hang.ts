import type { Hang } from '#core/types.ts';
import { kilopascalsToPascals } from '#core/units/pressure.ts';
import { lessonGivens } from '#seeds/lessons.ts';

const given = lessonGivens.pressure;

/** The film law of the lesson on the same hold. */
export function filmHang(hang: Hang): Hang {
	const { film, through, sharpness } = given.film;
	const breakthroughPressure = kilopascalsToPascals(through);
	const coefficient = 2 * film;
	return {
		...hang,
		friction: { kind: 'film', filmCoefficient: film, coefficient, breakthroughPressure, sharpness }
	};
}
