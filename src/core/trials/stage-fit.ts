import { type Closeness, type Integral, integrate } from '../statistics/integrate.ts';
import type { LineDensity } from '../statistics/line-density.ts';
import { logChanceTable, lookUp } from '../statistics/log-chance-table.ts';
import { openDensity } from './open-density.ts';
import type { OpenRow } from './open-rows.ts';
import type { Settings } from './settings.ts';
import { slipDensity } from './slip-density.ts';
import type { SlipRow } from './slip-rows.ts';
import { termsOf } from './slip-terms.ts';
import type { StoryVersion } from './trial.ts';

/** A trial's place on the axes the two stages look at. */
export type Place = { lnLoad: number; ropeTerm: number; order: number };

/** A fitted stage: its evidence, its weighted points, and its chance of "no" at each of them. */
export type StageFit = Integral & {
	/** Chance that this stage does not end the trial, at each point, its innermost unknown moved by `shift`. */
	chances(place: Place, shift?: number): Float64Array;
};

/**
 * With few trials the answer is mostly the starting guess, on which each trial cuts an edge much sharper than the
 * whole is wide: look closer. With none it must be the starting guess itself: reach further down, too.
 * With more than a thousand the whole is narrow and smooth: wider steps are good to 1e-4 in log evidence.
 */
const laying = (rows: number) => {
	if (rows === 0) return { step: 0.6, depth: 26 };
	if (rows > 1000) return { step: 0.95, depth: 14, coarseness: 2e-3 };
	return rows < 12 ? { step: 0.7, depth: 20, coarseness: 1e-5 } : { step: 0.76, depth: 20 };
};

/**
 * Sharp edges are the rule in the opening stage, in the trials and in whatever is predicted from it: lines lie no
 * further apart than a third of the typical spread, and every second one alone must already agree.
 */
const openLaying: Closeness = {
	step: 0.5,
	depth: 20,
	coarseness: 1e-6,
	most: ([, lnSpread]) => [0.35 * Math.exp(lnSpread!), Infinity]
};

/** Predictions look at the far tails of the opening stage as well: reach further down. */
export const forPredictions: Closeness = { step: 0.45, depth: 34 };

/** Caps compare chances with a quarter: four digits will do. */
export const forCaps: Closeness = { step: 0.5, depth: 16, coarseness: 1e-3 };

/**
 * Fits the slip stage under one story.
 *
 * @param rows from slipRows
 * @param version story and whether the order counts
 * @param settings starting guesses and lapse
 * @param change optional extra factor on the density, for trials whose cause was not seen
 * @param closeness spacing in posterior standard deviations, and how far down to reach, nats
 * @returns evidence, weighted points and the chance of not slipping at each; over several sessions that chance is a
 * typical day's, the session's shift averaged over its starting guess
 * Source: derived
 * Example: fitSlip([], { story: 'constant', withOrder: false }, settings).sum.logEvidence → 0
 */
export function fitSlip(
	rows: readonly SlipRow[],
	version: StoryVersion,
	settings: Settings,
	change: (density: LineDensity) => LineDensity = (density) => density,
	closeness: Closeness = {}
): StageFit {
	const { priors, lapse } = settings;
	const density = change(slipDensity(rows, version, priors, lapse));
	const integral = integrate(density, { ...laying(rows.length), ...closeness });
	const severalSessions = new Set(rows.map((row) => row.session)).size > 1;
	const shrink = severalSessions ? 1 / Math.hypot(1, priors.sessionSd) : 1;
	const predictor = slipPredictor(version, settings);
	return {
		...integral,
		chances: (place, shift = 0) =>
			chancesOn(integral, lapse, shift, (outer) => predictor(place, outer, shrink))
	};
}

/** A line's predictor as base + slope × innermost unknown. */
type LinePredictor = { base: number; slope: number };

function slipPredictor(version: StoryVersion, { priors }: Settings) {
	const terms = termsOf(version, priors);
	return ({ lnLoad, ropeTerm, order }: Place, outer: Float64Array, shrink: number) => {
		const at = terms.at(outer);
		return {
			base: shrink * (at.load * lnLoad - at.rope * ropeTerm + at.order * order),
			slope: shrink
		};
	};
}

function chancesOn(
	{ lattice }: Integral,
	lapse: number,
	shift: number,
	predictor: (outer: Float64Array) => LinePredictor
): Float64Array {
	const { outer, outerValues, starts, inner } = lattice;
	const table = logChanceTable(lapse);
	const chances = new Float64Array(inner.length);
	for (let line = 0; line + 1 < starts.length; line += 1) {
		const { base, slope } = predictor(outerValues.subarray(line * outer, (line + 1) * outer));
		for (let k = starts[line]!; k < starts[line + 1]!; k += 1)
			chances[k] = Math.exp(lookUp(table, base + slope * (inner[k]! + shift)));
	}
	return chances;
}

/**
 * Fits the opening stage.
 *
 * @param rows from openRows
 * @param settings starting guesses, best guess and lapse
 * @param change optional extra factor on the density, for trials whose cause was not seen
 * @param closeness spacing in posterior standard deviations, and how far down to reach, nats
 * @returns evidence, weighted points over (u, ln s) and the chance of not opening at each
 * Source: derived
 * Example: fitOpen([], settings).sum.logEvidence → 0
 */
export function fitOpen(
	rows: readonly OpenRow[],
	settings: Settings,
	change: (density: LineDensity) => LineDensity = (density) => density,
	closeness: Closeness = {}
): StageFit {
	const density = change(openDensity(rows, settings));
	const integral = integrate(density, {
		...openLaying,
		depth: rows.length === 0 ? 26 : 20,
		...closeness
	});
	const { starts, outerValues, inner } = integral.lattice;
	const table = logChanceTable(settings.lapse);
	return {
		...integral,
		chances({ lnLoad }, shift = 0) {
			const chances = new Float64Array(inner.length);
			for (let line = 0; line + 1 < starts.length; line += 1) {
				const reach = outerValues[line]! - lnLoad;
				for (let k = starts[line]!; k < starts[line + 1]!; k += 1)
					chances[k] = Math.exp(lookUp(table, reach * Math.exp(-inner[k]! - shift)));
			}
			return chances;
		}
	};
}
