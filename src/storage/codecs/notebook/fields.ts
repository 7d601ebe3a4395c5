import * as v from 'valibot';

/** Half of a surrogate pair cannot be written as UTF-8, so it could never come back from a file. */
const loneSurrogate = /\p{Surrogate}/u;

const wellFormed = v.check<string, string>(
	(text) => !loneSurrogate.test(text),
	'holds half a character'
);

/** Any text, kept as typed. */
export const text = v.pipe(v.string(), v.maxLength(4000, 'is longer than 4,000 signs'), wellFormed);

/** A name people read; never empty. */
export const label = v.pipe(
	v.string(),
	v.minLength(1, 'is empty'),
	v.maxLength(200, 'is longer than 200 signs'),
	wellFormed
);

/** A record’s own mark, given once. */
export const id = v.pipe(
	v.string(),
	v.minLength(1, 'is empty'),
	v.maxLength(100, 'is longer than 100 signs'),
	wellFormed
);

/** A number that exists: not infinite, and 0 rather than −0, so that every file brings it back. */
export const number = v.pipe(
	v.number('is not a number'),
	v.finite('is not a number'),
	v.transform((value) => value + 0)
);

/** A number between two ends, both allowed. */
export const between = (low: number, high: number) =>
	v.pipe(number, v.minValue(low, `is below ${low}`), v.maxValue(high, `is above ${high}`));

/** A number above 0, up to an end that no hang reaches. */
export const above0 = (high: number) =>
	v.pipe(
		number,
		v.check((value) => value > 0, 'is not above 0'),
		v.maxValue(high, `is above ${high}`)
	);

/** A day as written in the notebook, without a clock: 2026-03-09. */
export const day = v.pipe(
	v.string(),
	v.regex(/^\d{4}-\d{2}-\d{2}$/, 'is not a day such as 2026-03-09'),
	v.check((value) => {
		const date = new Date(value + 'T00:00:00Z');
		return !Number.isNaN(date.getTime()) && date.toISOString().startsWith(value);
	}, 'is not a day of the calendar')
);

export const ropeSide = v.picklist(['away', 'toward', 'plumb'], 'is not away, toward or plumb');
