import { kilogramsToNewtons } from '../units/force.ts';
import type { CompleteRequest } from './complete-request.ts';
import { lawFields } from './law-of.ts';
import type {
	Addition,
	LawField,
	LawStory,
	Observation,
	Parameter,
	Range,
	StoryGrip
} from './types.ts';

/** One go, with everything about it that no candidate changes. */
export type Trial = {
	observation: Observation;
	grip: number;
	/** kg */
	netMass: number;
	/** Downward load on all hands, N. */
	vertical: number;
	/** Lighter than the body: the rope carries the rest. */
	roped: boolean;
	/** How many goes after the first one it came, in the person's order. */
	later: number;
	/** Index of the go it was easier than, or −1. */
	than: number;
};

/**
 * One law with one addition, laid out for the search: every candidate is a list of numbers in the
 * order of `parameters`: the law's, the addition's, a patch for each grip, the slope, a reference
 * force for each grip.
 */
export type Plan = {
	request: CompleteRequest;
	law: LawStory;
	addition: Addition;
	parameters: Parameter[];
	trials: Trial[];
	/** The first barely held go, from which the slope is solved; −1: the slope is drawn. */
	anchor: number;
	lawLength: number;
	/** Places in the list of numbers; −1 where a plan has none. */
	additionAt: number;
	areasAt: number;
	slopeAt: number;
	forcesAt: number;
};

const units: Record<LawField, Parameter['unit']> = {
	coefficient: '1',
	shearStrength: 'Pa',
	referencePressure: 'Pa',
	exponent: '1',
	deformation: '1',
	filmCoefficient: '1',
	breakthroughPressure: 'Pa',
	sharpness: '1'
};

/**
 * Lays out one law with one addition for the search.
 * @param request a completed request
 * @param law the story about the ratio
 * @param addition what comes on top of it
 * @returns the parameters with their ranges, and the goes
 * Source: derived.
 * Example: constant alone with two grips has coefficient, two patches, slope and two forces.
 */
export function makePlan(request: CompleteRequest, law: LawStory, addition: Addition): Plan {
	const { grips, observations, ranges, bodyMass } = request;
	const anchor = observations.findIndex(({ outcome }) => outcome.kind === 'barely');
	const parameters: Parameter[] = lawFields[law].map((key) =>
		parameter(key, ranges.laws[law][key]!, units[key])
	);
	const lawLength = parameters.length;
	if (addition === 'rope') parameters.push(parameter('ropeAngle', ranges.ropeAngle, 'rad'));
	if (addition === 'push') parameters.push(parameter('push', ranges.push, 'N'));
	if (addition === 'drift') parameters.push(parameter('drift', ranges.drift, '1'));
	const areasAt = parameters.length;
	parameters.push(...grips.map((grip) => parameter('padArea', grip.padArea, 'm²', grip)));
	const slopeAt = parameters.length;
	parameters.push({
		...parameter('slope', ranges.slope, 'rad'),
		how: anchor < 0 ? 'drawn' : 'solved'
	});
	parameters.push(
		...grips.map((grip): Parameter => ({
			...parameter('referenceForce', grip.referenceForce, 'N', grip),
			how: 'solved'
		}))
	);
	const first = Math.min(...observations.map(({ order }) => order));
	const orders = observations.map(({ order }) => order);
	return {
		request,
		law,
		addition,
		parameters,
		trials: observations.map((observation) => ({
			observation,
			grip: grips.findIndex(({ id }) => id === observation.grip),
			netMass: observation.load * bodyMass,
			vertical: kilogramsToNewtons(observation.load * bodyMass),
			roped: observation.load < 1,
			later: observation.order - first,
			than: observation.outcome.kind === 'easier' ? orders.indexOf(observation.outcome.than) : -1
		})),
		anchor,
		lawLength,
		additionAt: addition === 'none' ? -1 : lawLength,
		areasAt,
		slopeAt,
		forcesAt: slopeAt + 1
	};
}

function parameter(
	key: Parameter['key'],
	{ from, to }: Range,
	unit: Parameter['unit'],
	grip?: StoryGrip
): Parameter {
	return { key, from, to, unit, how: 'drawn', ...(grip ? { grip: grip.id } : {}) };
}
