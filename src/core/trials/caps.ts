import { marginalOf } from '../statistics/marginal.ts';
import { firstShare, highestRisk, largestStep, rounding } from './cap-values.ts';
import { checkNumber, checkTrials } from './check-trials.ts';
import type { Priors } from './priors.ts';
import { settingsOf } from './settings.ts';
import { forCaps, type StageFit } from './stage-fit.ts';
import type { Story, Trial } from './trial.ts';
import { openGivenSlip } from './two-stages.ts';

/** Why a load may not be suggested. */
export type BlockedBy =
	| 'own-maximum'
	| 'limit'
	| 'opening-risk'
	| 'step'
	| 'first-trial'
	| 'opened'
	| 'stopped'
	| 'pain'
	| 'adult';

export type CapOptions = {
	referenceLoad: number;
	bestGuess: number;
	/** The person's own maximum, kg: never exceeded. */
	ownMaximum: number;
	/** Has the person been marked adult? */
	adult: boolean;
	story?: Story;
	lapse?: number;
	/** Heaviest load held to the target time outside these trials, such as on the warm-up ladder, kg. */
	heaviestHeld?: number;
	priors?: Priors;
};

/** How a load stands against the caps. */
export type Caps = {
	/** The first cap that a load in kg breaks, or null. */
	blockedBy(load: number): BlockedBy | null;
	/** Chances at a load, the worse of the two readings of stopped trials. */
	risk(load: number): { limitBelow: number; opening: number };
};

/**
 * What may be suggested at all, before anyone asks what would teach most.
 *
 * Blocked: everyone not marked adult; everything after pain; above the own maximum; above the lightest load that
 * opened or was stopped in the latest session; with nothing held yet, above half the best guess; above 1.10 × the
 * heaviest load held to the target time; where P(limit < load) > 0.25; where the fingers would open with chance
 * above 0.25 if the hold did not slip. The last two are computed with stopped trials left out and counted as opened,
 * and the worse counts. Slips raise no cap. Half, a tenth and 0.25 are judgement.
 *
 * @param trials of one grip, kg; any trial with reason 'pain' blocks, whatever its session
 * @param o referenceLoad, bestGuess, ownMaximum, heaviestHeld in kg; adult; story and lapse as in openingLimit
 * @returns a judge of loads
 * @throws RangeError naming field, value and range
 * Source: babb1998 (bounding the chance of too much, with the bound kept fixed); values are judgement
 * Example: loadCaps([], { referenceLoad: 60, bestGuess: 80, ownMaximum: 90, adult: true }).blockedBy(41) → 'first-trial'
 */
export function loadCaps(trials: readonly Trial[], o: CapOptions): Caps {
	checkTrials(trials);
	checkNumber('ownMaximum', o.ownMaximum, { above: 0 });
	if (o.heaviestHeld !== undefined) checkNumber('heaviestHeld', o.heaviestHeld, { least: 0 });
	const settings = settingsOf(o);
	const version = { story: o.story ?? 'rises', withOrder: false } as const;
	const session = trials.reduce((last, trial) => Math.max(last, trial.session ?? 1), -Infinity);
	const loads = (outcome: Trial['outcome'], here: boolean): number[] =>
		trials
			.filter((trial) => trial.outcome === outcome && (!here || (trial.session ?? 1) === session))
			.map(({ load }) => load);
	const held = Math.max(o.heaviestHeld ?? 0, ...loads('held', false));
	const opened = Math.min(Infinity, ...loads('opened', true));
	const stopped = Math.min(Infinity, ...loads('stopped', true));
	const pain = trials.some(({ reason }) => reason === 'pain');

	let readings: { fit: StageFit; below(value: number): number }[] | undefined;
	const fitted = () => {
		const both = trials.some(({ outcome }) => outcome === 'stopped');
		readings ??= (both ? (['left-out', 'opened'] as const) : (['left-out'] as const)).map(
			(reading) => {
				const fit = openGivenSlip(trials, version, settings, reading, forCaps);
				return { fit, below: marginalOf(fit.lattice).below };
			}
		);
		return readings;
	};
	const risk = (load: number) => {
		const lnLoad = Math.log(load / o.referenceLoad);
		const each = fitted().map(({ fit, below }) => {
			const chances = fit.chances({ lnLoad, ropeTerm: 0, order: 0 });
			const holds = chances.reduce((sum, chance, k) => sum + chance * fit.sum.weights[k]!, 0);
			return { limitBelow: below(lnLoad), opening: 1 - holds };
		});
		return {
			limitBelow: Math.max(...each.map(({ limitBelow }) => limitBelow)),
			opening: Math.max(...each.map(({ opening }) => opening))
		};
	};
	return {
		risk,
		blockedBy(load) {
			checkNumber('load', load, { above: 0 });
			if (!o.adult) return 'adult';
			if (pain) return 'pain';
			if (load > o.ownMaximum) return 'own-maximum';
			if (load > opened) return 'opened';
			if (load > stopped) return 'stopped';
			if (held === 0 && load > firstShare * o.bestGuess * rounding) return 'first-trial';
			if (held > 0 && load > largestStep * held * rounding) return 'step';
			const { limitBelow, opening } = risk(load);
			if (limitBelow > highestRisk) return 'limit';
			return opening > highestRisk ? 'opening-risk' : null;
		}
	};
}
