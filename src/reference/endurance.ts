import type { Fact, Row } from './types.ts';

/** Numbers of the endurance curve t[min] = a + b/f + c/f² + d/f³, f the share of maximum, 0.2 to 1. */
export const rohmertCurve = {
	key: 'rohmert',
	what: 'time a share of maximum can be held, minutes',
	terms: [-1.5, 2.1, -0.6, 0.1],
	range: [0.2, 1],
	unit: 'min',
	source: ['rohmertBernard', 'nioshShoulder', 'enduranceReview1994'],
	status: 'seen',
	note: 'One curve for all muscles is a rough guide: a review calls it unreliable, and for shoulders it is wrong both ways.'
} as const;

/** A smooth curve in public use: t[s] = scale/(percent − offset)^power − shift. */
export const smoothCurve = {
	key: 'smooth',
	what: 'time a share of maximum can be held, seconds',
	scale: 1236.5,
	offset: 15,
	power: 0.618,
	shift: 72.5,
	unit: 's',
	source: ['armFatigueReport'],
	status: 'seen'
} as const;

/** Rates of the three-compartment fatigue model, per second: tiring F, recovering R, and R's factor at rest. */
export type FatigueRow = Row & { people: string; tiring: number; recovering: number; rest: number };

export const fatigueRates: readonly FatigueRow[] = [
	{
		key: 'hand-men',
		people: 'men, hand and grip group',
		tiring: 0.01238,
		recovering: 0.00178,
		rest: 8,
		source: ['rakshit2021', 'freyLaw2012', 'xiaFreyLaw2008'],
		status: 'seen',
		note: 'Read in public simulation code that cites the paper.'
	},
	{
		key: 'hand-women',
		people: 'women, hand and grip group',
		tiring: 0.01159,
		recovering: 0.00217,
		rest: 7.39,
		source: ['rakshit2021', 'freyLaw2012', 'xiaFreyLaw2008'],
		status: 'seen',
		note: 'As for men.'
	}
];

/** What is known of holding and of pulling on and off. */
export const enduranceFacts: readonly Fact[] = [
	{
		key: 'joint-order',
		what: 'fatigue resistance by joint',
		value: null,
		unit: '1',
		conditions: 'ankle > trunk > hand and grip > elbow > knee > shoulder; 194 papers',
		source: ['freyLawAvin2010'],
		status: 'seen'
	},
	{
		key: 'repetitions-climbers',
		what: 'pulls at 80 % of maximum, 5 s on and 5 s off',
		value: 19.33,
		spread: 4.84,
		unit: '1',
		conditions: 'ten elite climbers',
		source: ['quaine2003'],
		status: 'seen'
	},
	{
		key: 'repetitions-untrained',
		what: 'pulls at 80 % of maximum, 5 s on and 5 s off',
		value: 12.88,
		spread: 4.96,
		unit: '1',
		conditions: 'ten untrained people',
		source: ['quaine2003'],
		status: 'seen'
	},
	{
		key: 'plateau-climbers',
		what: 'share of maximum where intermittent force levels off',
		value: 0.63,
		unit: '1',
		conditions: 'elite climbers, after about three minutes; untrained 0.5 after half that',
		source: ['vigourouxQuaine2006'],
		status: 'seen'
	},
	{
		key: 'critical-force',
		what: 'critical force of the finger flexors, as mass',
		value: 20.1,
		spread: 5.7,
		unit: 'kg',
		conditions:
			'n = 12, four-minute all-out intermittent; held only 440 ± 140 s, so not sustainable',
		source: ['balas2024'],
		status: 'seen',
		note: 'For pulls with rests. Do not use for an uninterrupted hang.'
	},
	{
		key: 'critical-force-and-grade',
		what: 'share of grade explained by critical force over body mass',
		value: 0.61,
		unit: '1',
		conditions: 'sport climbing, n = 129; bouldering 0.26',
		source: ['giles2021'],
		status: 'seen'
	},
	{
		key: 'critical-force-two-arms',
		what: 'critical force, both arms',
		value: 425.7,
		spread: 82.8,
		unit: 'N',
		conditions: 'all-out test',
		source: ['giles2019'],
		status: 'memory'
	}
];
