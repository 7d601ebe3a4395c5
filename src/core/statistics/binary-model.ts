import { linkPoint, type LinkName } from './links.ts';
import { cholesky, inverseWith, logDeterminantWith } from './symmetric.ts';

/** Counts of successes among trials, with the row of the design each belongs to. */
export type BinaryData = {
	successes: readonly number[];
	trials: readonly number[];
	design: readonly (readonly number[])[];
	link: LinkName;
};

/** A binary regression at given coefficients. */
export type BinaryPoint = {
	/** Without ln C(n, k). */
	logLikelihood: number;
	score: number[];
	information: number[][];
	/** ½ ln det of the information, −Infinity where it is singular. */
	penalty: number;
	penaltySlope: number[];
};

/**
 * Log likelihood, score, expected information and Jeffreys' penalty of a binary regression.
 *
 * l = Σ k ln P + (n − k) ln(1 − P); I = Σ n w x xᵀ; penalty ½ ln det I with slope ½ Σ n w (xᵀ I⁻¹ x) (ln w)′ x.
 *
 * @param data successes, trials, design, link; rows with no trials add nothing
 * @param coefficients one a column of the design
 * @returns the point
 * Source: firth1993, section 3 (penalty); mcCullaghNelder1989, section 4.4
 * Example: binaryPoint({ successes: [1], trials: [2], design: [[1]], link: 'logit' }, [0]).score → [0]
 */
export function binaryPoint(data: BinaryData, coefficients: readonly number[]): BinaryPoint {
	const size = coefficients.length;
	let logLikelihood = 0;
	const score = new Array<number>(size).fill(0);
	const information = Array.from({ length: size }, () => new Array<number>(size).fill(0));
	const bends: { row: readonly number[]; weight: number; slope: number }[] = [];
	data.design.forEach((row, i) => {
		const n = data.trials[i]!;
		if (n === 0) return;
		const k = data.successes[i]!;
		const eta = row.reduce((sum, x, j) => sum + x * coefficients[j]!, 0);
		const at = linkPoint(data.link, eta);
		logLikelihood += (k ? k * at.logYes : 0) + (n - k ? (n - k) * at.logNo : 0);
		const slope = (k ? k * at.slopeYes : 0) + (n - k ? (n - k) * at.slopeNo : 0);
		const weight = n * at.information;
		for (let a = 0; a < size; a += 1) {
			score[a]! += slope * row[a]!;
			for (let b = 0; b < size; b += 1) information[a]![b]! += weight * row[a]! * row[b]!;
		}
		bends.push({ row, weight, slope: at.informationSlope });
	});
	const penaltySlope = new Array<number>(size).fill(0);
	const root = cholesky(information);
	if (!root) return { logLikelihood, score, information, penalty: -Infinity, penaltySlope };
	const inverse = inverseWith(root);
	for (const { row, weight, slope } of bends) {
		let leverage = 0;
		for (let a = 0; a < size; a += 1)
			for (let b = 0; b < size; b += 1) leverage += row[a]! * inverse[a]![b]! * row[b]!;
		for (let a = 0; a < size; a += 1) penaltySlope[a]! += 0.5 * weight * leverage * slope * row[a]!;
	}
	return { logLikelihood, score, information, penalty: logDeterminantWith(root) / 2, penaltySlope };
}
