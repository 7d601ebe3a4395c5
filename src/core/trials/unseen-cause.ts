import type { LineDensity } from '../statistics/line-density.ts';
import { logChanceTable, lookUp } from '../statistics/log-chance-table.ts';
import type { Settings } from './settings.ts';
import type { Place, StageFit } from './stage-fit.ts';
import { termsOf } from './slip-terms.ts';
import type { StoryVersion, Trial } from './trial.ts';
import { averageOverOpenings, averageOverSlips } from './unseen-average.ts';

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
	const average = averageOverOpenings(fit, places);
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
	const average = averageOverSlips(fit, places);
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
