import { shares } from '../statistics/log-sum.ts';
import {
	addChances,
	type ChanceHistogram,
	emptyHistogram,
	histogramQuantile,
	productHistogram
} from './chance-histogram.ts';
import { checkNumber, checkTrials, type CommonOptions } from './check-trials.ts';
import type { Priors } from './priors.ts';
import { settingsOf } from './settings.ts';
import { type StageFit } from './stage-fit.ts';
import { storiesInPlay } from './stories-in-play.ts';
import type { Trial } from './trial.ts';
import { openGivenSlip, slipGivenOpen } from './two-stages.ts';

/** A chance with the band in which it lies nine times in ten. */
export type Band = { mean: number; q05: number; q95: number };

/** Chances at one load. */
export type CurvePoint = {
	/** kg */
	load: number;
	/** Chance of not slipping. */
	sticks: Band;
	/** Chance that the fingers do not open, if the hold does not slip. */
	keeps: Band;
	/** Chance of holding the target time: both. */
	holds: Band;
	/** False outside 0.8 × the lightest to 1.1 × the heaviest load tried: hatch it. */
	tried: boolean;
};

const band = (histogram: ChanceHistogram): Band => ({
	mean: histogram.mean,
	q05: histogramQuantile(histogram, 0.05),
	q95: histogramQuantile(histogram, 0.95)
});

/**
 * The chance of holding against load, with its band, averaged over the stories in play without order.
 *
 * P(hold) = P(no slip) × P(no opening | no slip), mid-session, at one rope term; each story counts by its evidence.
 * The two stages are believed independently, which is exact when every cause was seen.
 *
 * @param trials of one grip, kg
 * @param loads at which to draw, kg, above 0
 * @param o as in storyEvidence, with a best guess; ropeTerm of the drawn hang, 0 when left out
 * @returns one point a load
 * @throws RangeError naming field, value and range
 * Source: hoeting1999, equation 1 (averaging over models)
 * Example: holdingCurve([], [40], { referenceLoad: 60, bestGuess: 80 })[0]!.tried → false
 */
export function holdingCurve(
	trials: readonly Trial[],
	loads: readonly number[],
	o: CommonOptions & { bestGuess: number; ropeTerm?: number; priors?: Priors }
): CurvePoint[] {
	checkTrials(trials);
	loads.forEach((load, k) => checkNumber(`loads[${k}]`, load, { above: 0 }));
	const settings = settingsOf(o);
	const slips = storiesInPlay(trials).inPlay.map((story) =>
		slipGivenOpen(trials, { story, withOrder: false }, settings)
	);
	const weights = shares(slips.map(({ sum }) => sum.logEvidence));
	const open = openGivenSlip(trials, { story: 'rises', withOrder: false }, settings);
	const tried = trials.map(({ load }) => load);
	const [from, to] = [0.8 * Math.min(...tried), 1.1 * Math.max(...tried)];
	return loads.map((load) => {
		const place = {
			lnLoad: Math.log(load / o.referenceLoad),
			ropeTerm: o.ropeTerm ?? 0,
			order: 0
		};
		const sticks = emptyHistogram();
		slips.forEach((fit, k) => add(sticks, weights[k]!, fit, place));
		const keeps = emptyHistogram();
		add(keeps, 1, open, place);
		return {
			load,
			sticks: band(sticks),
			keeps: band(keeps),
			holds: band(productHistogram(sticks, keeps)),
			tried: load >= from && load <= to
		};
	});
}

function add(
	histogram: ChanceHistogram,
	share: number,
	fit: StageFit,
	place: { lnLoad: number; ropeTerm: number; order: number }
): void {
	if (share < 1e-4) return;
	const half = fit.lattice.innerStep / 2;
	const ends = [-half, half].map((by) => fit.chances(place, by)) as [Float64Array, Float64Array];
	addChances(histogram, share, fit.sum.weights, fit.chances(place), ...ends);
}
