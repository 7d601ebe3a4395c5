import type { Finger } from './finger-lengths.ts';
import type { Fact, Row } from './types.ts';

/** Distances of the flexor tendons from the joints of one finger, m. */
export type MomentArmRow = Row & {
	finger: Finger;
	set: 'ketchum' | 'an';
	/** Deep flexor at the last, middle and knuckle joint. */
	fdpAtDip: number;
	fdpAtPip: number;
	fdpAtMcp: number;
	/** Superficial flexor at the middle and knuckle joint. */
	fdsAtPip: number;
	fdsAtMcp: number;
	/** Share of all forearm muscle force, %, deep and superficial; where tabulated. */
	relativeForce?: { fdp: number; fds: number };
};

const ketchum = {
	set: 'ketchum',
	source: ['ketchum1978', 'brandHollister1993'],
	status: 'seen',
	note: 'Read second-hand in a table. Arms differ between people by about 2.5 mm.'
} as const;

/** Two sets, offered side by side: neither is your finger. A band of 25 to 35 % on tension is honest. */
export const momentArms: readonly MomentArmRow[] = [
	{
		key: 'ketchum-index',
		finger: 'index',
		fdpAtDip: 0.0065,
		fdpAtPip: 0.0098,
		fdpAtMcp: 0.0101,
		fdsAtPip: 0.0083,
		fdsAtMcp: 0.0121,
		relativeForce: { fdp: 2.7, fds: 2 },
		...ketchum
	},
	{
		key: 'ketchum-middle',
		finger: 'middle',
		fdpAtDip: 0.007,
		fdpAtPip: 0.0107,
		fdpAtMcp: 0.0116,
		fdsAtPip: 0.0087,
		fdsAtMcp: 0.014,
		relativeForce: { fdp: 3.4, fds: 3.4 },
		...ketchum
	},
	{
		key: 'ketchum-ring',
		finger: 'ring',
		fdpAtDip: 0.0068,
		fdpAtPip: 0.0104,
		fdpAtMcp: 0.0104,
		fdsAtPip: 0.0085,
		fdsAtMcp: 0.013,
		relativeForce: { fdp: 3, fds: 2 },
		...ketchum
	},
	{
		key: 'ketchum-little',
		finger: 'little',
		fdpAtDip: 0.006,
		fdpAtPip: 0.0085,
		fdpAtMcp: 0.0089,
		fdsAtPip: 0.0074,
		fdsAtMcp: 0.0098,
		relativeForce: { fdp: 2.8, fds: 0.9 },
		...ketchum
	},
	{
		key: 'an-index',
		finger: 'index',
		set: 'an',
		fdpAtDip: 0.0041,
		fdpAtPip: 0.0079,
		fdpAtMcp: 0.0111,
		fdsAtPip: 0.0062,
		fdsAtMcp: 0.0119,
		source: ['an1983'],
		status: 'memory',
		note: 'Index finger only, from memory.'
	}
];

/** How sure moment arms are. */
export const momentArmFacts: readonly Fact[] = [
	{
		key: 'between-people',
		what: 'spread of a measured moment arm between people',
		value: 0.0025,
		unit: 'm',
		conditions: 'standard deviation, about',
		source: ['lee2015'],
		status: 'seen'
	},
	{
		key: 'through-the-range',
		what: 'change of a flexor arm through the joint’s range, share',
		value: null,
		unit: '1',
		conditions:
			'nearly constant, largest at the knuckle, smallest at the last joint; nine forearms',
		source: ['fingerMomentArms'],
		status: 'seen'
	}
];
