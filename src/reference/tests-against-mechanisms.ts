import type { Row } from './types.ts';

/** The families that one afternoon of tests can tell apart. */
export const testedFamilies = [
	'adhesion',
	'deformation',
	'film',
	'time',
	'geometry',
	'order'
] as const;
export type TestedFamily = (typeof testedFamilies)[number];

/** What a test does to the holding, were this family the reason. */
export const testOutcomes = [
	'better',
	'worse',
	'no change',
	'either',
	'little',
	'differs',
	'vanishes',
	'drifts',
	'stays better',
	'resets'
] as const;
export type TestOutcome = (typeof testOutcomes)[number];

export type SeparatingTest = Row & {
	name: string;
	outcome: Record<TestedFamily, TestOutcome>;
	remarks?: Partial<Record<TestedFamily, string>>;
};

/** Observations that separate the families: worked out from the signs of the mechanism rows. */
export const separatingTests: readonly SeparatingTest[] = [
	{
		key: 'more-load',
		name: 'More load, same grip, plumb pull',
		outcome: {
			adhesion: 'worse',
			deformation: 'better',
			film: 'better',
			time: 'no change',
			geometry: 'no change',
			order: 'no change'
		},
		remarks: {
			deformation: 'on rough surfaces only',
			film: 'until it is through',
			order: 'if loads are shuffled'
		},
		source: [],
		status: 'derived'
	},
	{
		key: 'smaller-patch',
		name: 'Fewer fingers or a smaller patch, same load',
		outcome: {
			adhesion: 'worse',
			deformation: 'better',
			film: 'better',
			time: 'no change',
			geometry: 'no change',
			order: 'no change'
		},
		source: [],
		status: 'derived'
	},
	{
		key: 'wait',
		name: 'Rest 20 s instead of 2 s on the hold before the test',
		outcome: {
			adhesion: 'better',
			deformation: 'little',
			film: 'either',
			time: 'better',
			geometry: 'no change',
			order: 'no change'
		},
		remarks: {
			adhesion: 'on sealed smooth surfaces',
			film: 'wet films better, powder little'
		},
		source: ['dzidek2017pnas', 'adams2013'],
		status: 'derived'
	},
	{
		key: 'lean-rope',
		name: 'Lead the rope outward, then inward: does the load effect turn round?',
		outcome: {
			adhesion: 'no change',
			deformation: 'no change',
			film: 'no change',
			time: 'no change',
			geometry: 'differs',
			order: 'no change'
		},
		remarks: { geometry: 'worse outward, better inward, by the tangent of slope plus lean' },
		source: [],
		status: 'derived'
	},
	{
		key: 'same-net-load',
		name: 'The same net load by vest and rope, and plain',
		outcome: {
			adhesion: 'no change',
			deformation: 'no change',
			film: 'no change',
			time: 'no change',
			geometry: 'differs',
			order: 'no change'
		},
		source: [],
		status: 'derived'
	},
	{
		key: 'brush-and-wipe',
		name: 'Brush the hold, wipe the fingers',
		outcome: {
			adhesion: 'little',
			deformation: 'little',
			film: 'vanishes',
			time: 'little',
			geometry: 'no change',
			order: 'resets'
		},
		remarks: { film: 'the effect of load vanishes' },
		source: ['fuss2012chalk', 'carre2012'],
		status: 'derived'
	},
	{
		key: 'up-and-down',
		name: 'Loads up, then down again',
		outcome: {
			adhesion: 'no change',
			deformation: 'no change',
			film: 'stays better',
			time: 'drifts',
			geometry: 'no change',
			order: 'drifts'
		},
		remarks: { film: 'a film once displaced stays displaced' },
		source: [],
		status: 'derived'
	},
	{
		key: 'smooth-and-coarse',
		name: 'Smooth against coarse, same material',
		outcome: {
			adhesion: 'differs',
			deformation: 'differs',
			film: 'either',
			time: 'differs',
			geometry: 'no change',
			order: 'no change'
		},
		remarks: {
			adhesion: 'stronger on smooth',
			deformation: 'only on coarse',
			time: 'only on sealed surfaces'
		},
		source: ['hendriks2010', 'tomlinson2009'],
		status: 'derived'
	}
];
