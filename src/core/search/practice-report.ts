import { kilogramsToNewtons } from '../units/force.ts';
import type { Observation, Range, StoryGrip } from './types.ts';

const held = { kind: 'held' } as const;
const slipped = { kind: 'slipped' } as const;

/** What one hand may carry on the measured edge, N: 20 to 125 kg. An assumption. */
export const usualReferenceForce: Range = {
	from: kilogramsToNewtons(20),
	to: kilogramsToNewtons(125)
};

/**
 * A report to try the search with: on a very slick slope near the limit, heavier was easier.
 * Common practice, no source; one report, unverified. The order of the goes was not reported: they
 * stand as listed, which matters only to the drift. Patches are assumptions: a half crimp presses
 * small hard patches, three open fingers wide ones.
 */
export const practiceReport = {
	mark: 'common practice, no source; one report, unverified',
	grips: [
		{
			id: 'halfCrimp',
			fingers: 4,
			padArea: { from: 90e-6, to: 160e-6 },
			referenceForce: usualReferenceForce
		},
		{
			id: 'threeOpen',
			fingers: 3,
			padArea: { from: 200e-6, to: 330e-6 },
			referenceForce: usualReferenceForce
		}
	] satisfies StoryGrip[],
	observations: [
		{ grip: 'halfCrimp', load: 0.87, order: 1, outcome: slipped },
		{ grip: 'halfCrimp', load: 1, order: 2, outcome: { kind: 'barely' } },
		{ grip: 'halfCrimp', load: 1.18, order: 3, outcome: { kind: 'easier', than: 2 } },
		{ grip: 'threeOpen', load: 0.87, order: 4, outcome: slipped },
		{ grip: 'threeOpen', load: 1, order: 5, outcome: held },
		{ grip: 'threeOpen', load: 1.12, order: 6, outcome: held },
		{ grip: 'threeOpen', load: 1.18, order: 7, outcome: { kind: 'opened' } }
	] satisfies Observation[]
};
