import type { Addition, LawStory, Movement, Parameter, StoryResult } from '#core/search/types.ts';
import { thresholds } from '#core/search/thresholds.ts';
import { formatNumber } from '#core/units/format-number.ts';
import type { OutcomeKind } from '#state/search/statement.ts';

export const lawText: Record<LawStory, string> = {
	constant: 'constant ratio',
	adhesion: 'ratio with sticking area',
	powerFalling: 'power of load below 1',
	powerRising: 'power of load above 1',
	deformation: 'deformation part',
	film: 'film pressed through'
};

export const additionText: Record<Addition, string> = {
	none: 'alone',
	rope: 'with a leaning rope',
	push: 'with a steady push',
	drift: 'with an order drift'
};

export const outcomeText: Record<OutcomeKind, string> = {
	slipped: 'slipped',
	barely: 'barely held',
	held: 'held',
	easier: 'easier than another',
	opened: 'fingers opened'
};

/** What each outcome means to the search, as margins. */
export const thresholdText: Record<OutcomeKind, string> = {
	slipped: `slip margin below ${thresholds.slippedBelow}`,
	barely: `margin ${thresholds.heldFrom} to ${thresholds.barelyTo}`,
	held: `margin at least ${thresholds.heldFrom}`,
	easier: `slip margin at least ${formatNumber(100 * (thresholds.easierBy - 1))} % above the other go’s, and no finger opens`,
	opened: `strength margin below ${thresholds.openedBelow}, slip margin at least ${thresholds.heldFrom}`
};

export const parameterText: Record<Parameter['key'], string> = {
	coefficient: 'friction coefficient',
	shearStrength: 'shear strength',
	referencePressure: 'reference pressure',
	exponent: 'exponent of load',
	deformation: 'deformation part',
	filmCoefficient: 'friction coefficient on the film',
	breakthroughPressure: 'pressure that breaks the film',
	sharpness: 'sharpness of the break',
	ropeAngle: 'rope angle',
	push: 'steady push',
	drift: 'drift of the ratio from go to go',
	padArea: 'contact patch of one finger',
	slope: 'slope',
	referenceForce: 'strength of one hand on the edge'
};

/** "1 in 340", or that only moving the closest one step by step led to one. */
export function tuningText({ share, fitting }: StoryResult, tried = 'of those tried'): string {
	if (fitting === 0) return `none ${tried}; reached by moving the closest`;
	return share >= 0.5
		? `${formatNumber(100 * share, { digits: 2 })} % ${tried}`
		: `1 in ${formatNumber(1 / share, { digits: 2 })} ${tried}`;
}

/** Which part of its range a number may move in, all others staying. */
export function roomText({ from, to, moves }: Movement): string {
	if (to === from) return 'kept fixed';
	const share = (moves.to - moves.from) / (to - from);
	return share < 0.01
		? 'under 1 % of its range'
		: `${formatNumber(100 * share, { digits: 2 })} % of its range`;
}
