import type { Priors } from './priors.ts';
import type { StoryVersion } from './trial.ts';

const halfLogTwoPi = 0.5 * Math.log(2 * Math.PI);

/** A story's effects at one set of outer unknowns, and the log of their starting guess there. */
export type Effects = { load: number; rope: number; order: number; logPrior: number };

/** A story's outer unknowns. */
export type Terms = {
	start: number[];
	scale: number[];
	at(outer: ArrayLike<number>, from?: number): Effects;
};

/**
 * Maps the whole line onto the positive half smoothly enough for an even lattice: the edge at 0 is met faster than
 * any exponential, and far out the map is straight.
 *
 * y = ln(1 + exp(t − exp(−t))), ln dy/dt = ln(1 + exp(−t)) − ln(1 + exp(exp(−t) − t)).
 *
 * @param t any number
 * @returns y > 0 and the logarithm of the map's slope
 * Source: takahasiMori1974 (the double-exponential idea); derived
 * Example: positive(0).value → 0.31326168751822286
 */
function positive(t: number): { value: number; logSlope: number } {
	const shrink = Math.exp(-t);
	const w = t - shrink;
	const value = w > 0 ? w + Math.log1p(Math.exp(-w)) : Math.log1p(Math.exp(w));
	return { value, logSlope: Math.log1p(shrink) + w - value };
}

/**
 * Turns a story into unknowns on the whole line, with their starting guesses.
 *
 * c = ± c₀ ln(1 + exp(t − exp(−t))), half-normal(c₀) in c; q = exp(v), v normal; g normal. The Jacobian of t is part of
 * the starting guess.
 *
 * @param version story and whether the order counts
 * @param priors starting guesses
 * @returns where to look first, and the effects at any place
 * Source: takahasiMori1974 (the map); derived
 * Example: termsOf({ story: 'constant', withOrder: false }, defaultPriors).start → []
 */
export function termsOf({ story, withOrder }: StoryVersion, priors: Priors): Terms {
	const sign = story.startsWith('rises') ? 1 : story.startsWith('falls') ? -1 : 0;
	const rope = story.includes('rope');
	const { loadEffectSd, lnRopeEffect, orderEffectSd } = priors;
	const start: number[] = [];
	const scale: number[] = [];
	if (sign) {
		start.push(0.6);
		scale.push(0.8);
	}
	if (rope) {
		start.push(lnRopeEffect.mean);
		scale.push(lnRopeEffect.sd);
	}
	if (withOrder) {
		start.push(0);
		scale.push(orderEffectSd);
	}
	const loadPart = Math.log(2) - halfLogTwoPi;
	const ropePart = -halfLogTwoPi - Math.log(lnRopeEffect.sd);
	const orderPart = -halfLogTwoPi - Math.log(orderEffectSd);
	return {
		start,
		scale,
		at(outer, from = 0) {
			let k = from;
			const effects = { load: 0, rope: 0, order: 0, logPrior: 0 };
			if (sign) {
				const { value, logSlope } = positive(outer[k++]!);
				effects.load = sign * loadEffectSd * value;
				effects.logPrior += loadPart - (value * value) / 2 + logSlope;
			}
			if (rope) {
				const v = outer[k++]!;
				const d = (v - lnRopeEffect.mean) / lnRopeEffect.sd;
				effects.rope = Math.exp(v);
				effects.logPrior += ropePart - (d * d) / 2;
			}
			if (withOrder) {
				const g = outer[k]!;
				const d = g / orderEffectSd;
				effects.order = g;
				effects.logPrior += orderPart - (d * d) / 2;
			}
			return effects;
		}
	};
}
