/** A limit and spread read off an up-and-down series. */
export type UpAndDown = {
	mean: number;
	sd: number;
	/** Was the less frequent outcome the failure? */
	countedFailures: boolean;
	/** False when the tallies are too bunched for the formula: sd is then 0.53 steps. */
	formulaValid: boolean;
};

/**
 * Limit and spread from an up-and-down series by the tally method, for pencil and paper; teach it, then fit properly.
 *
 * With the less frequent outcome's counts n_i at i steps above its lowest level x₀: N = Σ n, A = Σ i n, B = Σ i² n,
 * mean = x₀ + d (A/N ∓ ½), minus when failures are counted; M = (N B − A²)/N²; sd = 1.620 d (M + 0.029) where M > 0.3,
 * otherwise 0.53 d.
 *
 * @param levels level of each trial, one step d apart, any unit
 * @param failed whether it failed
 * @param step d, same unit, above 0
 * @returns mean and sd in the levels' unit
 * @throws RangeError when one outcome never happens
 * Source: dixonMood1948 (constants from memory; the mean formula as in gorla2017's tables)
 * Example: dixonMood([1, 2, 1], [false, true, false], 1).mean → 1.5
 */
export function dixonMood(
	levels: readonly number[],
	failed: readonly boolean[],
	step: number
): UpAndDown {
	const failures = failed.filter(Boolean).length;
	const countedFailures = failures < failed.length - failures;
	const tallied = levels.filter((_, k) => failed[k] === countedFailures);
	if (tallied.length === 0)
		throw new RangeError(`failed: ${failures} of ${failed.length}; both outcomes must happen`);
	const lowest = Math.min(...tallied);
	const steps = tallied.map((level) => Math.round((level - lowest) / step));
	const n = tallied.length;
	const a = steps.reduce((sum, i) => sum + i, 0);
	const b = steps.reduce((sum, i) => sum + i * i, 0);
	const m = (n * b - a * a) / (n * n);
	return {
		mean: lowest + step * (a / n + (countedFailures ? -0.5 : 0.5)),
		sd: m > 0.3 ? 1.62 * step * (m + 0.029) : 0.53 * step,
		countedFailures,
		formulaValid: m > 0.3
	};
}
