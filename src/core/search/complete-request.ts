import { requireAllowed, type AllowedRange } from '../units/allowed-range.ts';
import { hangRanges } from '../strength/check-hang.ts';
import { checkLaws } from './law-of.ts';
import { searchRanges } from './ranges.ts';
import { thresholds } from './thresholds.ts';
import {
	additions,
	lawStories,
	type Observation,
	type Range,
	type SearchRequest,
	type StoryGrip
} from './types.ts';

export type CompleteRequest = Required<SearchRequest>;

const outcomes = ['held', 'barely', 'slipped', 'opened', 'easier'];

/**
 * Completes what is searched for with defaults and stops numbers that have no meaning.
 * @param request what was seen, the grips, the seed; the rest as wished
 * @returns the same with nothing left out: 70 kg, two hands, a pad of 16 × 21 mm with the bone 5 mm
 * above the skin, strength measured on a 20 mm edge for 5 s, 20 000 candidates, all laws and additions
 * Valid for: 1 to 40 goes with 1 to 8 grips.
 * @throws RangeError for a field outside its range, an unknown grip, or an order used twice
 * Source: derived; the defaults are assumptions.
 * Example: completeRequest({ ...practiceReport, seed: 1 }).bodyMass is 70.
 */
export function completeRequest(request: SearchRequest): CompleteRequest {
	const complete: CompleteRequest = {
		bodyMass: 70,
		hands: 2,
		pad: { padWidth: 0.016, padLength: 0.021, padDepth: 0.005 },
		strengthTest: { referenceEdgeDepth: 0.02, referenceHoldTime: 5, holdTime: 5 },
		candidates: 20_000,
		laws: lawStories,
		additions,
		ranges: searchRanges,
		...request
	};
	const { grips, observations, ranges, pad } = complete;
	requireAllowed('bodyMass', complete.bodyMass, { above: 0, unit: 'kg' });
	requireAllowed('seed', complete.seed, { whole: true });
	requireAllowed('candidates', complete.candidates, { min: 1, max: 1e6, whole: true });
	requireAllowed('grips.length', grips.length, { min: 1, max: 8 });
	requireAllowed('observations.length', observations.length, { min: 1, max: 40 });
	for (const law of complete.laws) requireOneOf('laws', law, lawStories);
	for (const addition of complete.additions) requireOneOf('additions', addition, additions);
	checkGrips(grips, pad.padWidth * pad.padLength);
	checkObservations(observations, grips);
	checkRange('ranges.slope', ranges.slope, hangRanges.slope);
	checkRange('ranges.ropeAngle', ranges.ropeAngle, hangRanges.ropeAngle);
	checkRange('ranges.push', ranges.push, { unit: 'N' });
	checkRange('ranges.drift', ranges.drift, { min: -0.5, max: 0.5 });
	checkRange('ranges.barelyMargin', ranges.barelyMargin, {
		min: thresholds.heldFrom,
		max: thresholds.barelyTo
	});
	checkLaws(complete);
	return complete;
}

function checkGrips(grips: readonly StoryGrip[], pad: number): void {
	grips.forEach(({ id, fingers, padArea, referenceForce }, index) => {
		if (grips.findIndex((other) => other.id === id) !== index)
			throw new RangeError(`grips must each have an id of their own, but ${id} is used twice`);
		requireAllowed('fingers', fingers, { min: 1, max: 4, whole: true });
		checkRange('padArea', padArea, { above: 0, max: pad, unit: 'm²' });
		checkRange('referenceForce', referenceForce, { above: 0, unit: 'N' });
	});
}

function checkObservations(goes: readonly Observation[], grips: readonly StoryGrip[]): void {
	goes.forEach(({ grip, load, order, outcome }, index) => {
		requireOneOf(
			'grip',
			grip,
			grips.map(({ id }) => id)
		);
		requireAllowed('load', load, { above: 0, max: 3 });
		requireAllowed('order', order, { min: 1, max: 1000, whole: true });
		if (goes.findIndex((other) => other.order === order) !== index)
			throw new RangeError(`order must be another number for each go, but ${order} is used twice`);
		requireOneOf('outcome.kind', outcome.kind, outcomes);
		if (outcome.kind === 'easier') {
			const others = goes.map((other) => other.order).filter((other) => other !== order);
			requireOneOf('outcome.than', outcome.than, others);
		}
	});
}

function checkRange(field: string, { from, to }: Range, allowed: AllowedRange): void {
	requireAllowed(`${field}.from`, from, allowed);
	requireAllowed(`${field}.to`, to, allowed);
	if (from > to) requireAllowed(`${field}.to`, to, { ...allowed, min: from });
}

function requireOneOf<T>(field: string, value: T, allowed: readonly T[]): void {
	if (allowed.includes(value)) return;
	throw new RangeError(`${field} must be one of ${allowed.join(', ')}, but is ${String(value)}`);
}
