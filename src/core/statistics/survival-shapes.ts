import { normalLogCdf } from './normal.ts';

export type SurvivalName = 'exponential' | 'weibull' | 'log-normal' | 'log-logistic';

/** The standard shape of ln time: its logarithms and their slopes at w = (ln t − xβ)/σ. */
export type SurvivalShape = {
	logDensity(w: number): number;
	logDensitySlope(w: number): number;
	logDensityBend(w: number): number;
	logSurvival(w: number): number;
	logCumulative(w: number): number;
};

const softplus = (x: number): number =>
	x > 0 ? x + Math.log1p(Math.exp(-x)) : Math.log1p(Math.exp(x));

const extremeValue: SurvivalShape = {
	logDensity: (w) => w - Math.exp(w),
	logDensitySlope: (w) => 1 - Math.exp(w),
	logDensityBend: (w) => -Math.exp(w),
	logSurvival: (w) => -Math.exp(w),
	logCumulative: (w) => {
		const rate = Math.exp(w);
		return rate < 0.5 ? Math.log(-Math.expm1(-rate)) : Math.log1p(-Math.exp(-rate));
	}
};

const normal: SurvivalShape = {
	logDensity: (w) => (-w * w) / 2 - 0.5 * Math.log(2 * Math.PI),
	logDensitySlope: (w) => -w,
	logDensityBend: () => -1,
	logSurvival: (w) => normalLogCdf(-w),
	logCumulative: normalLogCdf
};

const logistic: SurvivalShape = {
	logDensity: (w) => -softplus(w) - softplus(-w),
	logDensitySlope: (w) => -Math.tanh(w / 2),
	logDensityBend: (w) => -2 * Math.exp(-softplus(w) - softplus(-w)),
	logSurvival: (w) => -softplus(w),
	logCumulative: (w) => -softplus(-w)
};

/**
 * The standard shape of ln time that a distribution of times has.
 *
 * Weibull and exponential: smallest extreme value, S = exp(−e^w); log-normal: S = 1 − Φ(w); log-logistic:
 * S = 1/(1 + e^w).
 *
 * @param distribution of times
 * @returns logarithms of density, survival and cumulative chance, and the slope and bend of the first
 * Source: kalbfleischPrentice2002, section 2.2
 * Example: survivalShape('weibull').logSurvival(0) → -1
 */
export function survivalShape(distribution: SurvivalName): SurvivalShape {
	if (distribution === 'log-normal') return normal;
	if (distribution === 'log-logistic') return logistic;
	return extremeValue;
}

/**
 * Logarithm of the chance that w lies between two values, and its slopes at both.
 *
 * ln(S(low) − S(high)) from whichever tails are the smaller, so that digits survive.
 *
 * @param shape standard shape
 * @param low lower end, −Infinity when there is none
 * @param high upper end, above low
 * @returns logarithm and its slopes with respect to low (≤ 0) and high (≥ 0)
 * Source: derived
 * Example: logBetween(survivalShape('log-logistic'), -Infinity, 0).log → -0.6931471805599453
 */
export function logBetween(
	shape: SurvivalShape,
	low: number,
	high: number
): { log: number; lowSlope: number; highSlope: number } {
	let log: number;
	if (low === -Infinity) log = shape.logCumulative(high);
	else if (shape.logSurvival(low) < shape.logCumulative(high)) {
		const [big, small] = [shape.logSurvival(low), shape.logSurvival(high)];
		log = big + Math.log(-Math.expm1(small - big));
	} else {
		const [big, small] = [shape.logCumulative(high), shape.logCumulative(low)];
		log = big + Math.log(-Math.expm1(small - big));
	}
	return {
		log,
		lowSlope: low === -Infinity ? 0 : -Math.exp(shape.logDensity(low) - log),
		highSlope: Math.exp(shape.logDensity(high) - log)
	};
}
