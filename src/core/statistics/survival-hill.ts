import type { Hill } from './climb.ts';
import { logBetween, type SurvivalShape } from './survival-shapes.ts';

/** Times known exactly or between two ends, with the measures they may depend on. */
export type Times = {
	lower: readonly number[];
	upper: readonly number[];
	weights?: readonly number[];
	design: readonly (readonly number[])[];
};

/** One end of a row's stretch of time: standardised place, and the slope and bend of the log likelihood there. */
type End = { w: number; slope: number; bend: number };

function endsOf(
	shape: SurvivalShape,
	a: number,
	b: number
): { log: number; ends: End[]; mixed: number } {
	if (a === b) {
		const end = { w: a, slope: shape.logDensitySlope(a), bend: shape.logDensityBend(a) };
		return { log: shape.logDensity(a), ends: [end], mixed: 0 };
	}
	const end = (w: number, slope: number): End => ({
		w,
		slope,
		bend: slope * shape.logDensitySlope(w) - slope * slope
	});
	if (b === Infinity) {
		const log = shape.logSurvival(a);
		return { log, ends: [end(a, -Math.exp(shape.logDensity(a) - log))], mixed: 0 };
	}
	const { log, lowSlope, highSlope } = logBetween(shape, a, b);
	if (a === -Infinity) return { log, ends: [end(b, highSlope)], mixed: 0 };
	return { log, ends: [end(a, lowSlope), end(b, highSlope)], mixed: -lowSlope * highSlope };
}

/**
 * Log likelihood of a regression of times, its slope and its curvature.
 *
 * Exact times add ln f(w) − ln(σ t), others ln(S(lower) − S(upper)), w = (ln t − xβ)/σ; derivatives by the chain rule
 * with dw/dβ = −x/σ and dw/d ln σ = −w.
 *
 * @param o times, weights and design
 * @param shape standard shape of ln time
 * @param point coefficients, then ln σ unless it is fixed
 * @param fixed true when σ is 1
 * @returns value (natural log, on the time scale), slope, bend and curvature
 * Source: kalbfleischPrentice2002, section 3.2
 * Example: survivalHill(exactTimes, survivalShape('exponential'), [0], true).slope → [Σ t − n]
 */
export function survivalHill(
	o: Times,
	shape: SurvivalShape,
	point: number[],
	fixed: boolean
): Hill {
	const columns = o.design[0]!.length;
	const scale = fixed ? 1 : Math.exp(point[columns]!);
	const slope = point.map(() => 0);
	const bend = point.map((_, k) => point.map((_, j) => (k === j ? 1e-6 : 0)));
	const curvature = point.map(() => point.map(() => 0));
	let value = 0;
	o.design.forEach((row, i) => {
		const weight = o.weights?.[i] ?? 1;
		const [low, high] = [o.lower[i]!, o.upper[i]!];
		if (weight === 0 || (low === 0 && high === Infinity)) return;
		const centre = row.reduce((sum, x, j) => sum + x * point[j]!, 0);
		const standard = (time: number): number => (Math.log(time) - centre) / scale;
		const { log, ends, mixed } = endsOf(
			shape,
			standard(low),
			high === Infinity ? high : standard(high)
		);
		value += weight * log;
		if (low === high) {
			value -= weight * Math.log(scale * low);
			if (!fixed) slope[columns]! -= weight;
		}
		// How w moves with each unknown: −x/σ with a coefficient, −w with ln σ.
		const moves = ends.map(({ w }) => point.map((_, k) => (k < columns ? -row[k]! / scale : -w)));
		const second = (e: number, k: number, j: number): number => {
			if (k < columns && j < columns) return 0;
			if (k >= columns && j >= columns) return ends[e]!.w;
			return row[Math.min(k, j)]! / scale;
		};
		const score = point.map((_, k) =>
			ends.reduce((sum, end, e) => sum + end.slope * moves[e]![k]!, 0)
		);
		point.forEach((_, k) => {
			slope[k]! += weight * score[k]!;
			point.forEach((_, j) => {
				bend[k]![j]! += weight * score[k]! * score[j]!;
				let bends = ends.reduce(
					(sum, end, e) =>
						sum + end.slope * second(e, k, j) + end.bend * moves[e]![k]! * moves[e]![j]!,
					0
				);
				if (mixed) bends += mixed * (moves[0]![k]! * moves[1]![j]! + moves[1]![k]! * moves[0]![j]!);
				curvature[k]![j]! -= weight * bends;
			});
		});
	});
	return { value, slope, bend, curvature };
}
