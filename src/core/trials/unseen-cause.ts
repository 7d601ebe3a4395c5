import type { LineDensity } from '../statistics/line-density.ts';
import { logChanceTable, lookUp } from '../statistics/log-chance-table.ts';
import type { Settings } from './settings.ts';
import type { Place, StageFit } from './stage-fit.ts';
import { termsOf } from './slip-terms.ts';
import type { StoryVersion, Trial } from './trial.ts';

/**
 * Places of the trials that failed with the cause not seen.
 *
 * @param trials checked trials
 * @param referenceLoad load at which ln load is 0, kg
 * @returns one place a trial, in order
 * Source: derived
 * Example: unseenPlaces([], 60) → []
 */
export function unseenPlaces(trials: readonly Trial[], referenceLoad: number): Place[] {
	return trials
		.filter(({ outcome }) => outcome === 'unknown')
		.map(({ load, ropeTerm, order }) => ({
			lnLoad: Math.log(load / referenceLoad),
			ropeTerm,
			order
		}));
}

/**
 * Averages ∏ (1 − P_j Q_j) over one stage, as a function of the other stage's chances.
 *
 * A failure of unseen cause has likelihood 1 − P Q = (1 − P) + P (1 − Q). Multiplying out m of them gives 2^m
 * products of the two stages; summing over the points of one stage first gives the same sum with m factors a point,
 * exactly and for any m.
 *
 * @param fit the stage to average over, fitted to the trials whose cause was seen
 * @param places of the unseen trials
 * @returns ln of the average, for the other stage's chances at those places
 * Source: derived
 * Example: averageOver(fit, [])([]) → 0
 */
export function averageOver(
	fit: StageFit,
	places: readonly Place[]
): (others: Float64Array) => number {
	const { weights } = fit.sum;
	const chances = places.map((place) => fit.chances(place));
	const kept: number[] = [];
	for (let k = 0; k < weights.length; k += 1) if (weights[k]! > 1e-13) kept.push(k);
	const m = places.length;
	const weight = Float64Array.from(kept, (k) => weights[k]!);
	const own = Float64Array.from(kept.flatMap((k) => chances.map((chance) => chance[k]!)));
	return (others) => {
		let sum = 0;
		for (let k = 0, at = 0; k < weight.length; k += 1) {
			let product = weight[k]!;
			for (let j = 0; j < m; j += 1, at += 1) product *= 1 - own[at]! * others[j]!;
			sum += product;
		}
		return Math.log(sum);
	};
}

/**
 * Adds the unseen trials to the slip stage's density.
 *
 * @param fit opening stage, fitted to the trials whose cause was seen
 * @param places of the unseen trials
 * @param version story of the slip stage
 * @param settings starting guesses and lapse
 * @returns a change of the slip density
 * Source: derived
 * Example: withUnseenSlips(fit, [], version, settings)(density) is density
 */
export function withUnseenSlips(
	fit: StageFit,
	places: readonly Place[],
	version: StoryVersion,
	settings: Settings
): (density: LineDensity) => LineDensity {
	if (places.length === 0) return (density) => density;
	const average = averageOver(fit, places);
	const terms = termsOf(version, settings.priors);
	const table = logChanceTable(settings.lapse);
	const base = new Float64Array(places.length);
	const chances = new Float64Array(places.length);
	return (density) => ({
		...density,
		enter(outer) {
			density.enter(outer);
			const { load, rope, order } = terms.at(outer);
			places.forEach((place, j) => {
				base[j] = load * place.lnLoad - rope * place.ropeTerm + order * place.order;
			});
		},
		at(margin) {
			for (let j = 0; j < base.length; j += 1)
				chances[j] = Math.exp(lookUp(table, base[j]! + margin));
			return density.at(margin) + average(chances);
		}
	});
}

/**
 * Adds the unseen trials to the opening stage's density.
 *
 * @param fit slip stage, fitted to the trials whose cause was seen
 * @param places of the unseen trials
 * @param lapse λ
 * @returns a change of the opening density
 * Source: derived
 * Example: withUnseenOpenings(fit, [], 0)(density) is density
 */
export function withUnseenOpenings(
	fit: StageFit,
	places: readonly Place[],
	lapse: number
): (density: LineDensity) => LineDensity {
	if (places.length === 0) return (density) => density;
	const average = averageOver(fit, places);
	const table = logChanceTable(lapse);
	const reach = new Float64Array(places.length);
	const chances = new Float64Array(places.length);
	return (density) => ({
		...density,
		enter(outer) {
			density.enter(outer);
			places.forEach((place, j) => {
				reach[j] = outer[0]! - place.lnLoad;
			});
		},
		at(lnSpread) {
			const steepness = Math.exp(-lnSpread);
			for (let j = 0; j < reach.length; j += 1)
				chances[j] = Math.exp(lookUp(table, reach[j]! * steepness));
			return density.at(lnSpread) + average(chances);
		}
	});
}
