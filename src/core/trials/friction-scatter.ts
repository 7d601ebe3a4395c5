import { integrate } from '../statistics/integrate.ts';
import { covarianceOf } from '../statistics/lattice-sum.ts';
import { marginalOf } from '../statistics/marginal.ts';
import { checkNumber } from './check-trials.ts';
import { defaultPriors, type Guess, type Priors } from './priors.ts';

/** What repeated tilt-to-slip tests say about the scatter of friction from trial to trial. */
export type FrictionScatter = {
	/** Starting guess of ln q to use from now on: a bell with the same mean and sd. */
	lnRopeEffect: Guess;
	/** Scatter τ of ln friction ratio: lies below with chance 0.05, 0.5, 0.95. */
	scatter: { q05: number; q50: number; q95: number };
	/** Tests less the groups' means taken out. */
	freedom: number;
};

/**
 * How much friction scatters from trial to trial, from tilting a loaded hold until it slips, several times.
 *
 * ln ratios scatter with sd τ = 1/q about their group's mean: density of ln q ∝ starting guess × q^ν exp(−q² S/2),
 * S the squares about the means, ν tests less groups. Feed `lnRopeEffect` into the stories' starting guesses.
 *
 * @param groups friction ratios at slip (tan of the angle), above 0, one group for each load or day
 * @param priors starting guesses; the printed ones when left out
 * @returns updated starting guess and quantiles of τ, no unit
 * @throws RangeError naming field, value and range
 * Source: gelman2013, section 3.2 (normal data, unknown mean and variance)
 * Example: frictionScatter([]).scatter.q50 → 0.125
 */
export function frictionScatter(
	groups: readonly (readonly number[])[],
	priors: Priors = defaultPriors
): FrictionScatter {
	const { mean, sd } = priors.lnRopeEffect;
	let squares = 0;
	let freedom = 0;
	groups.forEach((ratios, g) => {
		ratios.forEach((ratio, k) => checkNumber(`groups[${g}][${k}]`, ratio, { above: 0 }));
		if (ratios.length < 2) return;
		const logs = ratios.map(Math.log);
		const middle = logs.reduce((a, b) => a + b, 0) / logs.length;
		squares += logs.reduce((sum, l) => sum + (l - middle) ** 2, 0);
		freedom += logs.length - 1;
	});
	const { lattice, sum } = integrate(
		{
			start: [mean],
			scale: [sd],
			enter: () => undefined,
			at: (v) => freedom * v - (Math.exp(2 * v) * squares) / 2 - ((v - mean) / sd) ** 2 / 2
		},
		{ step: 0.4 }
	);
	const marginal = marginalOf(lattice);
	const scatter = (share: number): number => Math.exp(-marginal.quantile(1 - share));
	return {
		lnRopeEffect: { mean: sum.mean[0]!, sd: Math.sqrt(covarianceOf(lattice, sum)[0]![0]!) },
		scatter: { q05: scatter(0.05), q50: scatter(0.5), q95: scatter(0.95) },
		freedom
	};
}
