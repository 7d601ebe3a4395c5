import { checkNumber, checkOptions, type CommonOptions } from './check-trials.ts';
import { defaultPriors, type Priors } from './priors.ts';

/** Options completed once at the border. */
export type Settings = {
	/** Load at which ln load is 0, kg. */
	referenceLoad: number;
	/** ln(best guess of the opening limit/reference load); NaN when no guess was given. */
	lnGuess: number;
	lapse: number;
	priors: Priors;
};

/**
 * Completes an analysis' options: no lapse, and the printed starting guesses, unless told otherwise.
 *
 * @param options referenceLoad and bestGuess in kg, lapse from 0 to below 0.5, priors to replace the printed ones
 * @returns complete settings
 * @throws RangeError naming field, value and range
 * Source: derived
 * Example: settingsOf({ referenceLoad: 60, bestGuess: 60 }).lnGuess → 0
 */
export function settingsOf(options: CommonOptions & { priors?: Priors }): Settings {
	checkOptions(options);
	const { referenceLoad, bestGuess, lapse = 0, priors = defaultPriors } = options;
	return { referenceLoad, lnGuess: Math.log((bestGuess ?? NaN) / referenceLoad), lapse, priors };
}

/** Refuses to go on without a best guess of the opening limit. */
export function needGuess({ lnGuess, referenceLoad }: Settings): void {
	if (Number.isNaN(lnGuess)) checkNumber('bestGuess', lnGuess * referenceLoad, { above: 0 });
}
