import { type BlockedBy, type CapOptions, loadCaps } from './caps.ts';
import { checkNumber, checkTrials } from './check-trials.ts';
import { predictTogether, type Prediction } from './predict-together.ts';
import { settingsOf } from './settings.ts';
import type { Trial } from './trial.ts';
import { fitOpen, fitSlip, forPredictions } from './stage-fit.ts';
import { openRows } from './open-rows.ts';
import { rowsFor } from './two-stages.ts';
import { unseenPlaces } from './unseen-cause.ts';

/** One candidate for the next trial. */
export type Candidate = Prediction & {
	/** kg */
	load: number;
	ropeTerm: number;
	/** The first cap it breaks, or null. */
	blockedBy: BlockedBy | null;
};

/**
 * What each candidate for the next trial would teach, how it may end, and whether a cap forbids it.
 *
 * Information = entropy of the predicted outcome less its mean entropy were all unknowns known; with every cause seen
 * this is I(slip) + P(no slip) I(opening). Caps are judged first and information never overrides them.
 *
 * @param trials of one grip, kg
 * @param o as in loadCaps, and candidates (load kg, rope term, 0 when left out); order: the next trial's order term,
 * which adds an order effect to the slip stage when given
 * @returns one row a candidate in the order given, blocked ones included; information in nats, chances 0 to 1
 * @throws RangeError naming field, value and range
 * Source: lindley1956, definition 2; caps as in loadCaps
 * Example: nextTrial([], { referenceLoad: 60, bestGuess: 80, candidates: [{ load: 40 }], ownMaximum: 90, adult: true })[0]!.blockedBy → null
 */
export function nextTrial(
	trials: readonly Trial[],
	o: CapOptions & { candidates: readonly { load: number; ropeTerm?: number }[]; order?: number }
): Candidate[] {
	checkTrials(trials);
	o.candidates.forEach(({ load, ropeTerm = 0 }, k) => {
		checkNumber(`candidates[${k}].load`, load, { above: 0 });
		checkNumber(`candidates[${k}].ropeTerm`, ropeTerm);
	});
	if (o.order !== undefined) checkNumber('order', o.order);
	const settings = settingsOf(o);
	const caps = loadCaps(trials, o);
	const version = { story: o.story ?? 'rises', withOrder: o.order !== undefined } as const;
	const slip = fitSlip(rowsFor(trials, version, o.referenceLoad), version, settings);
	const open = fitOpen(
		openRows(trials, o.referenceLoad, 'left-out'),
		settings,
		undefined,
		forPredictions
	);
	const predictions = predictTogether(
		slip,
		open,
		unseenPlaces(trials, o.referenceLoad),
		o.candidates.map(({ load, ropeTerm = 0 }) => ({
			lnLoad: Math.log(load / o.referenceLoad),
			ropeTerm,
			order: o.order ?? 0
		}))
	);
	return o.candidates.map(({ load, ropeTerm = 0 }, k) => ({
		load,
		ropeTerm,
		...predictions[k]!,
		blockedBy: caps.blockedBy(load)
	}));
}
