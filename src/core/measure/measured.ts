import { requireAllowed } from '../units/allowed-range.ts';

/** A measured value and its spread (one standard deviation), in the same SI unit. */
export type Measured = { value: number; spread: number };

/** A value from repeats: with how many there were and how well their mean is known. */
export type Repeated = Measured & { standardError: number; count: number };

/**
 * Finds mean and spread of repeats.
 * mean = Σx/n, spread = √(Σ(x − mean)²/(n − 1)), standard error = spread/√n
 * @param field what the repeats are called in an error
 * @param repeats two or more finite numbers
 * @returns mean, spread of one reading, standard error of the mean, and n
 * Valid for: repeats that are made afresh each time; readings that follow each other closely have a
 * standard error that is too small.
 * @throws RangeError for fewer than two repeats, or one that is not finite
 * Source: jcgm100
 * Example: 1, 2, 3: mean 2, spread 1.
 */
export function meanAndSpread(field: string, repeats: readonly number[]): Repeated {
	requireAllowed(`${field}.length`, repeats.length, { min: 2, whole: true });
	repeats.forEach((repeat, at) => requireAllowed(`${field}[${at}]`, repeat, {}));
	const count = repeats.length;
	const value = repeats.reduce((sum, repeat) => sum + repeat, 0) / count;
	const squares = repeats.reduce((sum, repeat) => sum + (repeat - value) ** 2, 0);
	const spread = Math.sqrt(squares / (count - 1));
	return { value, spread, standardError: spread / Math.sqrt(count), count };
}

/**
 * Finds the spread of a reading that is rounded to a step.
 * step/√12
 * @param step resolution, 0 or more, in the reading's unit
 * @returns one standard deviation, same unit
 * Valid for: readings anywhere within the step with equal chance.
 * @throws RangeError for a step below 0
 * Source: jcgm100
 * Example: a scale that shows 0.1 kg: 0.029 kg.
 */
export function roundingSpread(step: number): number {
	return requireAllowed('step', step, { min: 0 }) / Math.sqrt(12);
}
