import type { Fact, Row } from './types.ts';

/** How well a finger test repeats: intraclass correlation and coefficient of variation, as fractions. */
export type ReliabilityRow = Row & {
	test: string;
	people: number;
	icc: readonly [number, number];
	cv: readonly [number, number] | null;
};

/** Show a single person the CV, never the correlation alone: a mixed group inflates it. */
export const reliability: readonly ReliabilityRow[] = [
	{
		key: 'pull-down-between',
		test: 'isometric pull-down, four body positions, between sessions',
		people: 26,
		icc: [0.978, 0.991],
		cv: [0.0204, 0.0337],
		source: ['pullDown2025'],
		status: 'seen'
	},
	{
		key: 'pull-down-within',
		test: 'isometric pull-down, four body positions, within a session',
		people: 26,
		icc: [0.951, 0.99],
		cv: [0.0181, 0.0311],
		source: ['pullDown2025'],
		status: 'seen'
	},
	{
		key: 'arm-positions',
		test: 'four arm positions, within a session',
		people: 46,
		icc: [0.95, 0.98],
		cv: null,
		source: ['nomos490031'],
		status: 'seen'
	},
	{
		key: 'one-hand-sensor',
		test: 'electronic sensor, one-hand rung, within and between days',
		people: 25,
		icc: [0.9, 0.95],
		cv: null,
		source: ['labott2022'],
		status: 'seen'
	},
	{
		key: 'edge-and-sloping-hold',
		test: 'edge and sloping hold, two postures, two days',
		people: 22,
		icc: [0.94, 0.99],
		cv: null,
		source: ['edgeSloper2022'],
		status: 'seen'
	},
	{
		key: 'hangs',
		test: 'hang time on 14 mm, smallest edge for 40 s, most added weight for 5 s',
		people: 40,
		icc: [0.89, 1],
		cv: null,
		source: ['bergua2018'],
		status: 'seen'
	},
	{
		key: 'all-out-peak',
		test: 'four-minute all-out test: peak',
		people: 13,
		icc: [0.938, 0.938],
		cv: [0.056, 0.056],
		source: ['mcclean2023'],
		status: 'seen',
		note: 'Limits of agreement −17.2 to +14.6 %.'
	},
	{
		key: 'all-out-end',
		test: 'four-minute all-out test: end force',
		people: 13,
		icc: [0.848, 0.848],
		cv: [0.21, 0.21],
		source: ['mcclean2023'],
		status: 'seen'
	},
	{
		key: 'all-out-impulse',
		test: 'four-minute all-out test: impulse above the end force',
		people: 13,
		icc: [0.82, 0.82],
		cv: [0.132, 0.132],
		source: ['mcclean2023'],
		status: 'seen'
	},
	{
		key: 'review',
		test: 'systematic review, 15 studies',
		people: 747,
		icc: [0.85, 0.99],
		cv: null,
		source: ['perezCordero2025'],
		status: 'seen'
	}
];

/** What a fair session needs. */
export const protocolFacts: readonly Fact[] = [
	{
		key: 'rest',
		what: 'rest between hardest goes',
		value: 180,
		range: [120, 300],
		unit: 's',
		conditions:
			'fixed and logged; isokinetic studies found 60 s enough, or 1 min less than 3 min and 3 the same as 5',
		source: ['parcell2002', 'mtsuThesis', 'isometricPulls'],
		status: 'common practice'
	},
	{
		key: 'attempts',
		what: 'hardest goes in a session',
		value: 6,
		range: [1, 6],
		unit: '1',
		conditions: 'at most five or six',
		source: [],
		status: 'common practice'
	},
	{
		key: 'sitting',
		what: 'time for which skin contact on a smooth surface keeps growing',
		value: 20,
		unit: 's',
		conditions: 'so fix the time from touch to load',
		source: ['dzidek2017pnas'],
		status: 'seen'
	},
	{
		key: 'force-tolerance',
		what: 'deviation of a held force to accept',
		value: null,
		range: [0.05, 0.07],
		unit: '1',
		conditions: 'recommendation of an endurance study',
		source: ['frontiers902521'],
		status: 'seen'
	},
	{
		key: 'warm-up-effects',
		what: 'effect of foam rolling, pre-exhaustion or stretching on strength',
		value: 0,
		unit: '1',
		conditions: 'none found, n = 9; pre-exhaustion and stretching shortened some hangs',
		source: ['foamRolling'],
		status: 'seen'
	},
	{
		key: 'scales',
		what: 'household and electronic scales under the feet are a published way to read the load',
		value: null,
		unit: '1',
		conditions: 'hands carry whole weight less reading',
		source: ['balas2014', 'soderqvist2024'],
		status: 'seen'
	},
	{
		key: 'scale-resolution',
		what: 'resolution of a household scale',
		value: null,
		range: [0.1, 0.2],
		unit: 'kg',
		conditions: 'usual',
		source: [],
		status: 'memory'
	}
];
