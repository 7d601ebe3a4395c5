import { type BinaryData, binaryPoint } from './binary-model.ts';
import { checkBinary } from './check-regression.ts';
import { climb } from './climb.ts';
import { linkPoint, type LinkName } from './links.ts';
import { logChoose } from './log-factorial.ts';
import { isSeparated } from './separation.ts';
import { cholesky, inverseWith } from './symmetric.ts';

/** A fitted binary regression. */
export type BinaryFit = {
	coefficients: number[];
	/** Inverse of the expected information at the estimate. */
	covariance: number[][];
	/** Unpenalised, with ln C(n, k). */
	logLikelihood: number;
	/** 2 (saturated − fitted) of the rows as given. */
	deviance: number;
	converged: boolean;
	/** Plain maximum likelihood has no finite answer for these data. */
	separated: boolean;
};

/**
 * Fits how the chance of success depends on one or more measures.
 *
 * Maximises l = Σ ln C(n, k) + k ln P + (n − k) ln(1 − P), or l + ½ ln det I with penalty 'jeffreys': the mode under
 * Jeffreys' prior for every link (Firth's adjusted score is the same for logit alone).
 *
 * @param o successes and trials, counts a row; design with its own column of ones; link; penalty
 * @returns coefficients, their covariance, log likelihood (natural), deviance; without penalty on separated data
 * converged is false and the coefficients are merely where the climb was stopped
 * @throws RangeError naming field, value and range, or when the columns of the design are not independent
 * Source: firth1993; kosmidisFirth2021 (other links); mcCullaghNelder1989, chapter 4
 * Example: fitBinary({ successes: [5], trials: [6], design: [[1]], link: 'logit', penalty: 'jeffreys' }).coefficients → [1.29928298413026]
 */
export function fitBinary(o: {
	successes: readonly number[];
	trials: readonly number[];
	design: readonly (readonly number[])[];
	link: LinkName;
	penalty: 'none' | 'jeffreys';
}): BinaryFit {
	checkBinary(o);
	const separated = isSeparated(o);
	const { point, converged } = climb(
		hillOf(o, o.penalty),
		startOf(o),
		separated && o.penalty === 'none' ? 20 : 300
	);
	const at = binaryPoint(o, point);
	const root = cholesky(at.information);
	let choices = 0;
	let saturated = 0;
	o.trials.forEach((n, i) => {
		const k = o.successes[i]!;
		choices += logChoose(n, k);
		if (k > 0 && k < n) saturated += k * Math.log(k / n) + (n - k) * Math.log1p(-k / n);
	});
	return {
		coefficients: point,
		covariance: root ? inverseWith(root) : point.map(() => point.map(() => NaN)),
		logLikelihood: at.logLikelihood + choices,
		deviance: 2 * (saturated - at.logLikelihood),
		converged: converged && !(separated && o.penalty === 'none'),
		separated
	};
}

/** The function that a penalty asks to climb. */
export function hillOf(data: BinaryData, penalty: 'none' | 'jeffreys') {
	return (point: number[]) => {
		const at = binaryPoint(data, point);
		if (penalty === 'none')
			return { value: at.logLikelihood, slope: at.score, bend: at.information };
		return {
			value: at.logLikelihood + at.penalty,
			slope: at.score.map((s, k) => s + at.penaltySlope[k]!),
			bend: at.information
		};
	};
}

/** One weighted least-squares fit to the shrunk observed chances, on the scale of the link. */
function startOf({ successes, trials, design, link }: BinaryData): number[] {
	const size = design[0]!.length;
	const matrix = Array.from({ length: size }, () => new Array<number>(size).fill(0));
	const right = new Array<number>(size).fill(0);
	design.forEach((row, i) => {
		if (trials[i] === 0) return;
		const p = (successes[i]! + 0.5) / (trials[i]! + 1);
		const eta = inverseLink(link, p);
		const weight = trials[i]! * linkPoint(link, eta).information;
		for (let a = 0; a < size; a += 1) {
			right[a]! += weight * row[a]! * eta;
			for (let b = 0; b < size; b += 1) matrix[a]![b]! += weight * row[a]! * row[b]!;
		}
	});
	const root = cholesky(matrix);
	return root
		? inverseWith(root).map((row) => row.reduce((s, v, j) => s + v * right[j]!, 0))
		: right.map(() => 0);
}

function inverseLink(link: LinkName, p: number): number {
	if (link === 'cloglog') return Math.log(-Math.log1p(-p));
	const logit = Math.log(p / (1 - p));
	return link === 'logit' ? logit : logit * 0.6;
}
