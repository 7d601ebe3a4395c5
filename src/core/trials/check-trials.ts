import type { Trial } from './trial.ts';

const outcomes = ['held', 'slipped', 'opened', 'stopped', 'unknown'];

/** Refuses a number outside a range, naming the field, the value and the range. */
export function checkNumber(
	name: string,
	value: unknown,
	{ above = -Infinity, least = -Infinity, below = Infinity, most = Infinity } = {}
): void {
	const fine =
		typeof value === 'number' &&
		Number.isFinite(value) &&
		value > above &&
		value >= least &&
		value < below &&
		value <= most;
	if (fine) return;
	const range = [
		above > -Infinity ? `above ${above}` : '',
		least > -Infinity ? `at least ${least}` : '',
		below < Infinity ? `below ${below}` : '',
		most < Infinity ? `at most ${most}` : ''
	].filter(Boolean);
	throw new RangeError(
		`${name}: ${value} is not a number ${range.join(' and ') || 'that is finite'}`
	);
}

/**
 * Refuses trials that cannot be analysed, once, at the border.
 *
 * @param trials loads in kg above 0; finite order and rope terms; seconds at least 0; sessions whole
 * @throws RangeError naming trial, field, value and range
 * Source: derived
 * Example: checkTrials([]) passes
 */
export function checkTrials(trials: readonly Trial[]): void {
	trials.forEach((trial, k) => {
		const name = `trials[${k}]`;
		checkNumber(`${name}.load`, trial.load, { above: 0 });
		checkNumber(`${name}.order`, trial.order);
		checkNumber(`${name}.ropeTerm`, trial.ropeTerm);
		if (trial.seconds !== undefined) checkNumber(`${name}.seconds`, trial.seconds, { least: 0 });
		if (trial.session !== undefined) checkNumber(`${name}.session`, trial.session);
		if (!outcomes.includes(trial.outcome))
			throw new RangeError(
				`${name}.outcome: ${trial.outcome} is not one of ${outcomes.join(', ')}`
			);
	});
}

/** Options every analysis shares. */
export type CommonOptions = { referenceLoad: number; bestGuess?: number; lapse?: number };

/**
 * Refuses options that cannot be used.
 *
 * @param options referenceLoad and bestGuess in kg above 0, lapse from 0 to below 0.5
 * @throws RangeError naming field, value and range
 * Source: derived
 * Example: checkOptions({ referenceLoad: 60 }) passes
 */
export function checkOptions({ referenceLoad, bestGuess, lapse }: CommonOptions): void {
	checkNumber('referenceLoad', referenceLoad, { above: 0 });
	if (bestGuess !== undefined) checkNumber('bestGuess', bestGuess, { above: 0 });
	if (lapse !== undefined) checkNumber('lapse', lapse, { least: 0, below: 0.5 });
}
