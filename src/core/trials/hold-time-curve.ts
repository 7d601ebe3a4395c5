import { checkNumber } from './check-trials.ts';
import { fitTimes, type TimedOptions } from './timed-fit.ts';
import type { Trial } from './trial.ts';

/** How long the fingers last at one load: the time at which half of the goes have opened, s. */
export type TimePoint = { load: number; q05: number; q50: number; q95: number };

/** Points with less belief than this move no quantile that is shown. */
const negligible = 1e-7;

/**
 * How long holds last against load, with the range in which the answer likely lies.
 *
 * Half have opened by t₅₀ = t* exp(σ (u − x)/s); its quantiles over the belief about (u, σ, s).
 *
 * @param trials loads in kg, seconds in s; let go early, slipped or held: not opened before that time
 * @param loads at which to answer, kg, above 0
 * @param o as in timedOpeningLimit
 * @returns one point a load, times in s
 * @throws RangeError naming field, value and range
 * Valid for: loads and times that were tried; slipping is taken not to depend on time
 * Source: derived; log-normal times as in kalbfleischPrentice2002, section 2.2
 * Example: holdTimeCurve([], [80], { referenceLoad: 60, bestGuess: 80, targetTime: 10 })[0]!.q50 → 10
 */
export function holdTimeCurve(
	trials: readonly Trial[],
	loads: readonly number[],
	o: TimedOptions
): TimePoint[] {
	loads.forEach((load, k) => checkNumber(`loads[${k}]`, load, { above: 0 }));
	const { lattice, sum } = fitTimes(trials, o);
	const { starts, outerValues, inner } = lattice;
	const points: { limit: number; perLoad: number; weight: number }[] = [];
	for (let line = 0; line + 1 < starts.length; line += 1) {
		const [limit, scatter] = [outerValues[2 * line]!, Math.exp(outerValues[2 * line + 1]!)];
		for (let k = starts[line]!; k < starts[line + 1]!; k += 1) {
			const weight = sum.weights[k]!;
			if (weight > negligible)
				points.push({ limit, perLoad: scatter * Math.exp(-inner[k]!), weight });
		}
	}
	return loads.map((load) => {
		const lnLoad = Math.log(load / o.referenceLoad);
		const quantile = quantilesOf(
			points.map(({ limit, perLoad, weight }) => ({ value: perLoad * (limit - lnLoad), weight }))
		);
		const time = (share: number): number => o.targetTime * Math.exp(quantile(share));
		return { load, q05: time(0.05), q50: time(0.5), q95: time(0.95) };
	});
}

/** Quantiles of weighted points, each point's share spread evenly up to its neighbours' middles. */
function quantilesOf(points: { value: number; weight: number }[]): (share: number) => number {
	const sorted = points.sort((one, other) => one.value - other.value);
	const total = sorted.reduce((sum, { weight }) => sum + weight, 0);
	return (share) => {
		let below = 0;
		for (const [k, { value, weight }] of sorted.entries()) {
			const part = weight / total;
			if (below + part >= share) {
				const from = k > 0 ? (sorted[k - 1]!.value + value) / 2 : value;
				const to = k + 1 < sorted.length ? (value + sorted[k + 1]!.value) / 2 : value;
				return from + ((share - below) / part) * (to - from);
			}
			below += part;
		}
		return sorted.at(-1)!.value;
	};
}
