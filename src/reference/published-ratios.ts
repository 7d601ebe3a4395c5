import type { Fact } from './types.ts';

const cadaver =
	'cadaver fingers at the terminal event; nine in the slope grip, twelve in the crimp';
const schoffl = {
	unit: 'N',
	conditions: cadaver,
	source: ['schoffl2009'],
	status: 'seen'
} as const;

/**
 * Published finger loads beside which the chain model's own numbers are shown.
 * Never a margin to injury: old donors' fingers, with no known transfer to the living.
 */
export const publishedRatios: readonly Fact[] = [
	{ key: 'a2-crimp', what: 'force on the A2 pulley, crimp', value: 287, ...schoffl },
	{ key: 'a2-slope', what: 'force on the A2 pulley, slope grip', value: 121, ...schoffl },
	{ key: 'a4-crimp', what: 'force on the A4 pulley, crimp', value: 226, ...schoffl },
	{ key: 'a4-slope', what: 'force on the A4 pulley, slope grip', value: 103, ...schoffl },
	{ key: 'tip-crimp', what: 'fingertip force, crimp', value: 161, ...schoffl },
	{ key: 'tip-slope', what: 'fingertip force, slope grip', value: 105, ...schoffl },
	{ key: 'fdp-crimp', what: 'tension of the deep flexor, crimp', value: 348, ...schoffl },
	{ key: 'fdp-slope', what: 'tension of the deep flexor, slope grip', value: 371, ...schoffl },
	{
		key: 'a4-ruptures-crimp',
		what: 'share of crimp tests that ended with a torn A4',
		value: 0.5,
		unit: '1',
		conditions: cadaver,
		source: ['schoffl2009'],
		status: 'seen'
	},
	{
		key: 'a2-to-tip-living',
		what: 'A2 force over fingertip force, crimp',
		value: 3,
		range: [2.5, 3.5],
		unit: '1',
		conditions: 'sixteen fingers of four living people; “about”; up to 116 N measured',
		source: ['schweizer2001'],
		status: 'seen'
	},
	{
		key: 'flexors-crimp',
		what: 'deep over superficial flexor tension, crimp',
		value: 1.75,
		unit: '1',
		conditions: 'model fed with measured fingertip forces',
		source: ['vigouroux2006'],
		status: 'seen',
		note: 'A bare planar chain does not reach it; do not tune the chain to it.'
	},
	{
		key: 'flexors-slope',
		what: 'deep over superficial flexor tension, slope grip',
		value: 0.88,
		unit: '1',
		conditions: 'model fed with measured fingertip forces',
		source: ['vigouroux2006'],
		status: 'memory',
		note: 'A bare planar chain does not reach it.'
	},
	{
		key: 'passive-dip-share',
		what: 'share of the last joint’s moment carried without muscle in a crimp',
		value: 0.25,
		unit: '1',
		conditions: 'estimate',
		source: ['vigouroux2006'],
		status: 'seen'
	},
	{
		key: 'a2-crimp-over-slope',
		what: 'A2 load, crimp over slope grip',
		value: 36,
		unit: '1',
		conditions: 'model',
		source: ['vigouroux2006'],
		status: 'memory',
		note: 'Disagrees with the cadaver figures by an order of magnitude: show both.'
	},
	{
		key: 'a4-crimp-over-slope',
		what: 'A4 load, crimp over slope grip',
		value: 4,
		unit: '1',
		conditions: 'model',
		source: ['vigouroux2006'],
		status: 'memory'
	},
	{
		key: 'a4-first',
		what: 'share of single-pulley ruptures that were A4',
		value: 14 / 17,
		unit: '1',
		conditions: 'seventeen of 21 cadaver fingers, age 61 to 84, tore a single pulley first',
		source: ['marco1998'],
		status: 'derived'
	},
	{
		key: 'pulley-order',
		what: 'strength of the pulleys, in order',
		value: null,
		unit: 'N',
		conditions:
			'A2 strongest, then A1 and A4; A4 least yielding; no newtons read; no difference by digit or sex',
		source: ['lin1990', 'mallo2008'],
		status: 'seen'
	},
	{
		key: 'tendon-friction',
		what: 'friction of tendon on pulley, share of output force',
		value: null,
		range: [0.09, 0.12],
		unit: '1',
		conditions: 'eccentric against concentric',
		source: ['tendonFriction2014'],
		status: 'seen'
	},
	{
		key: 'bowstringing',
		what: 'growth of bowstringing during warm-up',
		value: 0.3,
		unit: '1',
		conditions: '0.6 mm, living climbers',
		source: ['schweizer2001'],
		status: 'seen'
	}
];
