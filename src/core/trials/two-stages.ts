import type { Closeness } from '../statistics/integrate.ts';
import { openRows, type Stopped } from './open-rows.ts';
import { needGuess, type Settings } from './settings.ts';
import { slipRows, type SlipRow } from './slip-rows.ts';
import { fitOpen, fitSlip, type StageFit } from './stage-fit.ts';
import type { StoryVersion, Trial } from './trial.ts';
import { unseenPlaces, withUnseenOpenings, withUnseenSlips } from './unseen-cause.ts';

/**
 * The rows one story looks at.
 *
 * @param trials checked trials
 * @param version story and whether the order counts
 * @param referenceLoad kg
 * @returns rows for the slip stage
 * Source: derived
 * Example: rowsFor([], { story: 'rises', withOrder: false }, 60) → []
 */
export function rowsFor(
	trials: readonly Trial[],
	{ story, withOrder }: StoryVersion,
	referenceLoad: number
): SlipRow[] {
	const load = story.startsWith('rises') || story.startsWith('falls');
	return slipRows(trials, referenceLoad, { load, rope: story.includes('rope'), order: withOrder });
}

/** Closer points on the stage that is averaged over, as unseen trials sharpen the answer beyond its own fit. */
function closer(rows: readonly { count: number }[], unseen: number): number {
	const seen = rows.reduce((sum, { count }) => sum + count, 0);
	return Math.max(0.2, 0.5 / Math.sqrt(1 + unseen / (seen + 4)));
}

/**
 * The opening stage fitted to the trials whose cause was seen.
 *
 * @param trials checked trials
 * @param settings with a best guess
 * @param stopped what a stopped trial counts as
 * @param closeness of the lattice, when less or more is wanted
 * @returns evidence and weighted points
 * @throws RangeError without a best guess
 * Source: derived
 * Example: openAlone([], settings).sum.logEvidence → 0
 */
export function openAlone(
	trials: readonly Trial[],
	settings: Settings,
	stopped: Stopped = 'left-out',
	closeness: Closeness = {}
): StageFit {
	needGuess(settings);
	const rows = openRows(trials, settings.referenceLoad, stopped);
	const unseen = unseenPlaces(trials, settings.referenceLoad).length;
	return fitOpen(rows, settings, undefined, { step: closer(rows, unseen), ...closeness });
}

/**
 * The slip stage under one story, trials of unseen cause included.
 *
 * @param trials checked trials
 * @param version story and whether the order counts
 * @param settings a best guess is needed only when a cause was not seen
 * @param open the opening stage, when it has been fitted already
 * @returns evidence (given the opening stage's seen trials) and weighted points
 * @throws RangeError when a cause was not seen and there is no best guess
 * Source: derived
 * Example: slipGivenOpen([], version, settings).sum.logEvidence → 0
 */
export function slipGivenOpen(
	trials: readonly Trial[],
	version: StoryVersion,
	settings: Settings,
	open?: StageFit
): StageFit {
	const rows = rowsFor(trials, version, settings.referenceLoad);
	const places = unseenPlaces(trials, settings.referenceLoad);
	if (places.length === 0) return fitSlip(rows, version, settings);
	const other = open ?? openAlone(trials, settings);
	return fitSlip(rows, version, settings, withUnseenSlips(other, places, version, settings));
}

/**
 * The opening stage, trials of unseen cause included.
 *
 * @param trials checked trials
 * @param version story of the slip stage; matters only when a cause was not seen
 * @param settings with a best guess
 * @param stopped what a stopped trial counts as
 * @param closeness of the lattice, when less or more is wanted
 * @returns evidence (given the slip stage's seen trials) and weighted points over (u, ln s)
 * @throws RangeError without a best guess
 * Source: derived
 * Example: openGivenSlip([], version, settings, 'left-out').sum.logEvidence → 0
 */
export function openGivenSlip(
	trials: readonly Trial[],
	version: StoryVersion,
	settings: Settings,
	stopped: Stopped = 'left-out',
	closeness: Closeness = {}
): StageFit {
	const places = unseenPlaces(trials, settings.referenceLoad);
	if (places.length === 0) return openAlone(trials, settings, stopped, closeness);
	needGuess(settings);
	const slip = fitSlip(rowsFor(trials, version, settings.referenceLoad), version, settings);
	const rows = openRows(trials, settings.referenceLoad, stopped);
	const change = withUnseenOpenings(slip, places, settings.lapse);
	return fitOpen(rows, settings, change, { step: closer(rows, places.length), ...closeness });
}
