import { millsRatio, normalCdf, normalDensity, normalLogCdf } from './normal.ts';

export type LinkName = 'logit' | 'probit' | 'cloglog';

/** What a binary regression needs to know about its link at a predictor η. */
export type LinkPoint = {
	/** ln of the chance of success. */
	logYes: number;
	/** ln of the chance of failure. */
	logNo: number;
	/** d ln P/dη of success. */
	slopeYes: number;
	/** d ln(1 − P)/dη, below 0. */
	slopeNo: number;
	/** Expected information of one trial about η, (dP/dη)²/(P (1 − P)). */
	information: number;
	/** d ln(information)/dη. */
	informationSlope: number;
};

const softplus = (x: number): number =>
	x > 0 ? x + Math.log1p(Math.exp(-x)) : Math.log1p(Math.exp(x));

function logit(eta: number): LinkPoint {
	const logYes = -softplus(-eta);
	const logNo = -softplus(eta);
	const yes = Math.exp(logYes);
	const no = Math.exp(logNo);
	return {
		logYes,
		logNo,
		slopeYes: no,
		slopeNo: -yes,
		information: yes * no,
		informationSlope: no - yes
	};
}

function probit(eta: number): LinkPoint {
	const logYes = normalLogCdf(eta);
	const logNo = normalLogCdf(-eta);
	// φ/Φ and φ/(1 − φ) as inverse Mills' ratios, which do not fail in the tails.
	const up = eta < 0 ? 1 / millsRatio(-eta) : normalDensity(eta) / normalCdf(eta);
	const down = eta > 0 ? 1 / millsRatio(eta) : normalDensity(eta) / normalCdf(-eta);
	return {
		logYes,
		logNo,
		slopeYes: up,
		slopeNo: -down,
		information: up * down,
		informationSlope: -2 * eta - up + down
	};
}

function cloglog(eta: number): LinkPoint {
	const rate = Math.exp(eta);
	const logNo = -rate;
	const logYes = rate < 0.5 ? Math.log(-Math.expm1(-rate)) : Math.log1p(-Math.exp(-rate));
	const odds = rate > 700 ? 0 : rate / Math.expm1(rate);
	// d ln(e^η/(exp(e^η) − 1))/dη = 1 − e^η/(1 − exp(−e^η))
	const bend = rate < 1e-8 ? rate / 2 : rate / -Math.expm1(-rate) - 1;
	return {
		logYes,
		logNo,
		slopeYes: odds,
		slopeNo: -rate,
		information: rate * odds,
		informationSlope: 1 - bend
	};
}

/**
 * A link's chance, slopes and information at a predictor, safe in the tails.
 *
 * logit P = 1/(1 + e^−η); probit P = Φ(η); cloglog P = 1 − exp(−e^η).
 *
 * @param link which of the three
 * @param eta predictor η, no unit
 * @returns logarithms of chances, slopes, expected information of one trial
 * Source: mcCullaghNelder1989, sections 4.3 and 4.4
 * Example: linkPoint('logit', 0).information → 0.25
 */
export function linkPoint(link: LinkName, eta: number): LinkPoint {
	return { logit, probit, cloglog }[link](eta);
}
