import { logChanceTable, lookUp } from '../statistics/log-chance-table.ts';
import { type Integral } from '../statistics/integrate.ts';
import { sumLattice } from '../statistics/lattice-sum.ts';
import { shares } from '../statistics/log-sum.ts';
import { checkTrials, type CommonOptions } from './check-trials.ts';
import type { Priors } from './priors.ts';
import { type Settings, settingsOf } from './settings.ts';
import { termsOf } from './slip-terms.ts';
import { fitSlip } from './stage-fit.ts';
import { type StoryEvidence, storyEvidence } from './story-evidence.ts';
import { storyVersions, type StoryVersion, type Trial } from './trial.ts';
import { rowsFor } from './two-stages.ts';

/** The twelve stories with their lattices kept, so that one more trial costs one look at each point. */
export type StoryBook = {
	trials: readonly Trial[];
	settings: Settings;
	evidence: StoryEvidence[];
	/** One a story; none where trials of unseen cause or several sessions ask for a full computation each time. */
	kept?: Kept[];
};

type Kept = Integral & {
	/** Bound on the share of the density that lies beyond the lattice. */
	beyond: number;
};

// Closer and deeper than one evidence needs, so that the lattice stays good while trials are added.
const closeness = { step: 0.68, depth: 24, coarseness: 1.5e-4 };
/** Whole four-dimensional bell beyond exp(−24) of its top. */
const beyondAtFirst = 25 * Math.exp(-24);
/** Beyond these a story is fitted afresh at once, so that its evidence stays good to 1e-6. */
const mustRefit = { beyond: 5e-7, coarseness: 9e-4 };
/** Beyond these it is fitted afresh when there is time. */
const mayRefit = { beyond: 3e-8, coarseness: 5e-4 };

const past = ({ beyond, sum }: Kept, bound: typeof mustRefit): boolean =>
	beyond > bound.beyond || sum.coarseness.some((c) => c > bound.coarseness);

const plain = (trials: readonly Trial[]): boolean =>
	!trials.some(({ outcome }) => outcome === 'unknown') &&
	new Set(trials.map(({ session = 1 }) => session)).size <= 1;

function fresh(trials: readonly Trial[], version: StoryVersion, settings: Settings): Kept {
	const rows = rowsFor(trials, version, settings.referenceLoad);
	const { lattice, sum } = fitSlip(rows, version, settings, undefined, closeness);
	return { lattice, sum, beyond: beyondAtFirst };
}

function read(kept: readonly Kept[]): StoryEvidence[] {
	const logs = kept.map(({ sum }) => sum.logEvidence);
	const weights = shares(logs);
	return storyVersions.map((version, k) => ({
		...version,
		logEvidence: logs[k]!,
		weight: weights[k]!
	}));
}

/**
 * Fits all twelve stories and keeps their lattices.
 *
 * @param trials as in storyEvidence
 * @param o as in storyEvidence
 * @returns a book whose evidence equals storyEvidence's to 1e-6
 * @throws RangeError naming field, value and range
 * Source: derived
 * Example: openBook([], { referenceLoad: 60 }).evidence.length → 12
 */
export function openBook(
	trials: readonly Trial[],
	o: CommonOptions & { priors?: Priors }
): StoryBook {
	checkTrials(trials);
	const settings = settingsOf(o);
	if (!plain(trials)) return { trials, settings, evidence: storyEvidence(trials, o) };
	const kept = storyVersions.map((version) => fresh(trials, version, settings));
	return { trials, settings, evidence: read(kept), kept };
}

/**
 * Adds one trial to a book of stories; the old book stays as it was.
 *
 * Each point's log density gains ln P of the new outcome. A likelihood is at most 1, so what lies beyond the lattice
 * grows at most by one over the trial's predicted chance; that bound and the lattice's own check of its spacing
 * decide when a story is fitted afresh.
 *
 * @param book from openBook or addTrial
 * @param trial the new trial
 * @returns the next book
 * @throws RangeError naming field, value and range
 * Source: derived
 * Example: addTrial(book, trial).trials.length → book.trials.length + 1
 */
export function addTrial(book: StoryBook, trial: Trial): StoryBook {
	checkTrials([trial]);
	const { settings } = book;
	const trials = [...book.trials, trial];
	const o = {
		referenceLoad: settings.referenceLoad,
		bestGuess: settings.referenceLoad * Math.exp(settings.lnGuess) || undefined,
		lapse: settings.lapse,
		priors: settings.priors
	};
	if (!book.kept || !plain(trials)) return openBook(trials, o);
	if (trial.outcome === 'stopped') return { ...book, trials };
	const kept = storyVersions.map((version, k) => {
		const old = book.kept![k]!;
		const lattice = { ...old.lattice, logDensity: gained(old, version, trial, settings) };
		const sum = sumLattice(lattice);
		const beyond = old.beyond * Math.exp(old.sum.logEvidence - sum.logEvidence);
		const next = { lattice, sum, beyond };
		return past(next, mustRefit) ? fresh(trials, version, settings) : next;
	});
	return { trials, settings, evidence: read(kept), kept };
}

/**
 * Fits afresh the stories of a book whose lattices have grown loose, so that adding further trials stays quick.
 *
 * @param book from openBook or addTrial
 * @returns the same book when nothing is loose, otherwise one with the same evidence to 1e-6
 * Source: derived
 * Example: tidyBook(openBook(trials, o)) is that book
 */
export function tidyBook(book: StoryBook): StoryBook {
	if (!book.kept?.some((kept) => past(kept, mayRefit))) return book;
	const kept = book.kept.map((old, k) =>
		past(old, mayRefit) ? fresh(book.trials, storyVersions[k]!, book.settings) : old
	);
	return { ...book, evidence: read(kept), kept };
}

function gained(old: Kept, version: StoryVersion, trial: Trial, settings: Settings): Float64Array {
	const { outer, outerValues, starts, inner, logDensity } = old.lattice;
	const terms = termsOf(version, settings.priors);
	const table = logChanceTable(settings.lapse);
	const lnLoad = Math.log(trial.load / settings.referenceLoad);
	const sign = trial.outcome === 'slipped' ? -1 : 1;
	const next = new Float64Array(logDensity.length);
	for (let line = 0; line + 1 < starts.length; line += 1) {
		const at = terms.at(outerValues, line * outer);
		const base = at.load * lnLoad - at.rope * trial.ropeTerm + at.order * trial.order;
		for (let k = starts[line]!; k < starts[line + 1]!; k += 1)
			next[k] = logDensity[k]! + lookUp(table, sign * (base + inner[k]!));
	}
	return next;
}
