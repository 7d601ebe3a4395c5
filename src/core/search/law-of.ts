import { lawFormula } from '../friction/laws.ts';
import type { FrictionLaw } from '../types.ts';
import type { CompleteRequest } from './complete-request.ts';
import type { LawField, LawStory } from './types.ts';

const kinds: Record<LawStory, FrictionLaw['kind']> = {
	constant: 'constant',
	adhesion: 'adhesion',
	powerFalling: 'power',
	powerRising: 'power',
	deformation: 'deformation',
	film: 'film'
};

/** Which way the ratio goes with pressure, wherever in the story's own ranges: 0 stays, NaN either. */
export const trendOf: Record<LawStory, number> = {
	constant: 0,
	adhesion: -1,
	powerFalling: -1,
	powerRising: 1,
	deformation: NaN,
	film: 1
};

/** The numbers each story's law takes, in the order they are drawn. */
export const lawFields: Record<LawStory, readonly LawField[]> = {
	constant: ['coefficient'],
	adhesion: ['coefficient', 'shearStrength'],
	powerFalling: ['coefficient', 'referencePressure', 'exponent'],
	powerRising: ['coefficient', 'referencePressure', 'exponent'],
	deformation: ['coefficient', 'shearStrength', 'deformation', 'referencePressure'],
	film: ['filmCoefficient', 'coefficient', 'breakthroughPressure', 'sharpness']
};

/**
 * Makes the friction law of a story from its numbers.
 * @param story which law
 * @param values its numbers, in the order of lawFields; SI
 * @returns the law
 * Valid for: checked ranges.
 * Source: derived.
 * Example: lawOf('constant', [0.5]) is { kind: 'constant', coefficient: 0.5 }.
 */
export function lawOf(story: LawStory, values: readonly number[]): FrictionLaw {
	const law: Record<string, number | string> = { kind: kinds[story] };
	lawFields[story].forEach((field, index) => (law[field] = values[index]!));
	return law as FrictionLaw;
}

/** Coefficients that are parts of the ratio: all of them together carry its size. */
const ratioParts = ['coefficient', 'shearStrength', 'deformation', 'filmCoefficient'] as const;

/**
 * Gives a law whose ratio is larger by one factor at every pressure.
 * μ′(p) = factor · μ(p)
 * @param law any law
 * @param factor above 0
 * @returns a law of the same kind
 * Source: derived.
 * Example: scaledLaw({ kind: 'constant', coefficient: 0.5 }, 1.1) has coefficient 0.55.
 */
export function scaledLaw(law: FrictionLaw, factor: number): FrictionLaw {
	const scaled = { ...law } as Record<string, unknown>;
	for (const part of ratioParts) {
		if (part in law) scaled[part] = (scaled[part] as number) * factor;
	}
	return scaled as FrictionLaw;
}

/**
 * Stops ranges of law numbers that a law has no meaning for, or that leave the story's own kind.
 * @param request a completed request
 * @throws RangeError naming the field
 * Source: derived.
 * Example: a powerFalling exponent from 0.5 to 1.2 throws, for above 1 it rises.
 */
export function checkLaws({ laws, ranges }: CompleteRequest): void {
	for (const story of laws) {
		for (const end of ['from', 'to'] as const) {
			const values = lawFields[story].map((field) => ranges.laws[story][field]?.[end] ?? NaN);
			const law = lawOf(story, values);
			lawFormula(law).check(law);
		}
		for (const field of lawFields[story]) {
			const { from, to } = ranges.laws[story][field]!;
			const top = story === 'powerFalling' && field === 'exponent' ? 1 : Infinity;
			const bottom = story === 'powerRising' && field === 'exponent' ? 1 : -Infinity;
			if (from > to || from < bottom || to > top)
				throw new RangeError(
					`ranges.laws.${story}.${field} must run upward${top === 1 ? ' and end at 1 or below' : bottom === 1 ? ' and start at 1 or above' : ''}, but runs from ${from} to ${to}`
				);
		}
	}
}
