import type { MechanismRow } from '../types.ts';

/** Load effects that are none: the trials' order, and fingers that open instead of sliding. */
export const orderAndStrengthMechanisms: readonly MechanismRow[] = [
	{
		key: 'order-drift',
		line: 16,
		name: 'Order, warm-up, sweat, a hold cleaned by earlier goes',
		family: 'order',
		constantArea: 'either',
		constantPressure: 'either',
		biggerPatch: 'not defined',
		loadEffect: 'either',
		grade: 'strong',
		support:
			'Moisture, powder and wear all drift within a session, and loads are usually tried in rising order.',
		range: '20 % or more over a session',
		tellTale: 'Follows the trial’s number, not its load.',
		test: 'Shuffle the loads and repeat the first one at the end.',
		expressibleInHang: false,
		boardKey: 'orderDrift',
		parameters: [
			{
				field: 'drift',
				what: 'change of the ratio’s logarithm from one go to the next',
				unit: '1',
				start: 0.02,
				range: [-0.1, 0.1],
				status: 'assumed',
				source: []
			},
			{
				field: 'firstMass',
				what: 'net mass of the first go',
				unit: 'kg',
				start: 40,
				range: [10, 150],
				status: 'assumed',
				source: []
			},
			{
				field: 'step',
				what: 'net mass added from one go to the next',
				unit: 'kg',
				start: 5,
				range: [0.5, 20],
				status: 'assumed',
				source: []
			}
		],
		source: ['comaish1971', 'andre2010', 'adams2013', 'amca2012', 'li2001', 'carre2012'],
		status: 'seen'
	},
	{
		key: 'other-failure',
		line: 17,
		name: 'The fingers open, and it is taken for a slip',
		family: 'strength',
		constantArea: 'worse',
		constantPressure: 'worse',
		biggerPatch: 'not defined',
		loadEffect: 'lighter is easier',
		grade: 'strong',
		support:
			'Finger strength is used up by load in any case; what the hand reports as “easier” is not a slip margin.',
		range: 'no number',
		tellTale: 'The fingers unroll instead of sliding.',
		test: 'Film the fingertips: did they slide, or open?',
		expressibleInHang: true,
		boardKey: null,
		parameters: [],
		source: ['young2009'],
		status: 'seen',
		note: 'Explore’s strength limit shows it; it has no curve of slip margin.'
	}
];
