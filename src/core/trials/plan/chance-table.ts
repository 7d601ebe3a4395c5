/** Sizes of an effect: the share by which friction rises for each doubling of the load. */
export type EffectSize = 'small' | 'medium' | 'large';

const numbers = [6, 10, 16, 24, 40, 60, 100] as const;

/**
 * Chance that "grips better when heavier" ends above 90 %, from 4,000 simulated sets a cell: half
 * of the trials at each end of the range, slipping near 1 in 2 in the middle. Our own simulation.
 * Small, medium and large: friction +7, +15, +32 % a doubling at 10 % scatter from go to go.
 */
const chances: { range: number; chance: Record<EffectSize, readonly number[]> }[] = [
	{
		range: 1.5,
		chance: {
			small: [0, 0.04, 0.05, 0.07, 0.08, 0.11, 0.19],
			medium: [0, 0.09, 0.14, 0.23, 0.35, 0.51, 0.75],
			large: [0, 0.35, 0.56, 0.77, 0.94, 0.99, 1]
		}
	},
	{
		range: 2,
		chance: {
			small: [0.06, 0.07, 0.13, 0.16, 0.24, 0.37, 0.51],
			medium: [0.19, 0.26, 0.43, 0.63, 0.84, 0.96, 1],
			large: [0.58, 0.8, 0.96, 1, 1, 1, 1]
		}
	},
	{
		range: 3,
		chance: {
			small: [0.12, 0.26, 0.29, 0.37, 0.54, 0.72, 0.94],
			medium: [0.41, 0.71, 0.85, 0.94, 1, 1, 1],
			large: [0.92, 0.99, 1, 1, 1, 1, 1]
		}
	}
];

/**
 * Gives the best-case chance of a clear answer to "does it grip better when heavier?".
 *
 * Reads the nearest cell that does not flatter: the next smaller range and number of trials in
 * the table; 0 below the table.
 *
 * @param trials analysed trials with one grip, 0 or more
 * @param range heaviest load over lightest, 1 or more
 * @param effect size of the true effect
 * @returns chance, 0 to 1
 * Valid for: half of the trials at each end; evenly spread loads need about twice as many
 * Source: derived
 * Example: 24 trials, range 2, medium → 0.63
 */
export function chanceOfClearAnswer(trials: number, range: number, effect: EffectSize): number {
	const row = chances.findLast((candidate) => range >= candidate.range * (1 - 1e-9));
	const column = numbers.findLastIndex((number) => trials >= number);
	return row && column >= 0 ? row.chance[effect][column]! : 0;
}
