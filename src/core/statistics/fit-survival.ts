import { checkSurvival } from './check-regression.ts';
import { climb } from './climb.ts';
import { survivalHill, type Times } from './survival-hill.ts';
import { type SurvivalName, survivalShape } from './survival-shapes.ts';
import { cholesky, inverseWith, solveWith } from './symmetric.ts';

/** A fitted regression of times. */
export type SurvivalFit = {
	/** On ln time. */
	coefficients: number[];
	/** σ; 1 for the exponential. */
	scale: number;
	/** Inverse observed information of the coefficients, then of ln scale (exponential: coefficients only). */
	covariance: number[][];
	/** On the scale of time. */
	logLikelihood: number;
	converged: boolean;
};

/** Variance on ln time beyond which an answer is none. */
const flat = 1e6;

/**
 * Fits how times to an event depend on one or more measures, some times known only as "at least" or "between".
 *
 * ln T = xβ + σ W, W of the distribution's standard shape. Exact times add ln f(t), others ln(S(lower) − S(upper)).
 *
 * @param o lower and upper, same unit of time: equal is exact, upper Infinity right-censored, lower 0 left-censored;
 * weights multiply rows (1 when left out); design with its own column of ones; distribution
 * @returns coefficients on ln time, scale, covariance, log likelihood (natural, on the time scale); converged false
 * when the data leave no finite best fit, the numbers then being where the climb was stopped
 * @throws RangeError naming field, value and range, or when the columns of the design are not independent
 * Source: kalbfleischPrentice2002, sections 2.3 and 3.2
 * Example: fitSurvival({ lower: [2, 4], upper: [2, 4], design: [[1], [1]], distribution: 'exponential' }).coefficients → [Math.log(3)]
 */
export function fitSurvival(o: Times & { distribution: SurvivalName }): SurvivalFit {
	checkSurvival(o);
	const shape = survivalShape(o.distribution);
	const fixed = o.distribution === 'exponential';
	const hillAt = (point: number[]) => survivalHill(o, shape, point, fixed);
	const { point, hill, converged } = climb(hillAt, startOf(o, fixed), 300);
	const coefficients = fixed ? point : point.slice(0, -1);
	const observed = cholesky(hill.curvature!);
	const covariance = observed ? inverseWith(observed) : point.map(() => point.map(() => NaN));
	// Where the likelihood climbs for ever the climb ends on a plain so flat that nothing is known there.
	const known = covariance.every((row, k) => row[k]! < flat);
	return {
		coefficients,
		scale: fixed ? 1 : Math.exp(point[point.length - 1]!),
		covariance,
		logLikelihood: hill.value,
		converged: converged && known
	};
}

/** Least squares on ln of the times as they stand, censored ones taken at their known end or middle. */
function startOf({ lower, upper, weights, design }: Times, fixed: boolean): number[] {
	const size = design[0]!.length;
	const matrix = Array.from({ length: size }, () => new Array<number>(size).fill(0));
	const right = new Array<number>(size).fill(0);
	const logs = lower.map((low, i) => {
		const high = upper[i]!;
		if (high === Infinity) return Math.log(low || 1);
		return Math.log(low === 0 ? high / 2 : (low + high) / 2);
	});
	design.forEach((row, i) => {
		const weight = weights?.[i] ?? 1;
		row.forEach((x, a) => {
			right[a]! += weight * x * logs[i]!;
			row.forEach((y, b) => (matrix[a]![b]! += weight * x * y));
		});
	});
	const start = solveWith(cholesky(matrix)!, right);
	if (fixed) return start;
	let spread = 0;
	let total = 0;
	design.forEach((row, i) => {
		const weight = weights?.[i] ?? 1;
		spread += weight * (logs[i]! - row.reduce((sum, x, j) => sum + x * start[j]!, 0)) ** 2;
		total += weight;
	});
	return [...start, 0.5 * Math.log(spread / total + 0.01)];
}
