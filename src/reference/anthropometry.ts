import type { Row } from './types.ts';

/** One body measure of one sex: mean, spread and the 5th, 50th and 95th percentile, m or kg. */
export type BodyMeasureRow = Row & {
	measure: string;
	sex: 'men' | 'women';
	unit: 'm' | 'kg';
	mean: number;
	spread: number;
	p5: number;
	p50: number;
	p95: number;
};

const survey = {
	source: ['ansur2'],
	status: 'derived',
	note: 'Computed from the raw survey files: 4082 men, 1986 women of the United States Army.'
} as const;

export const bodyMeasures: readonly BodyMeasureRow[] = [
	{
		key: 'hand-length-men',
		measure: 'hand length',
		sex: 'men',
		unit: 'm',
		mean: 0.1933,
		spread: 0.0099,
		p5: 0.177,
		p50: 0.193,
		p95: 0.21,
		...survey
	},
	{
		key: 'hand-length-women',
		measure: 'hand length',
		sex: 'women',
		unit: 'm',
		mean: 0.1811,
		spread: 0.0101,
		p5: 0.165,
		p50: 0.18,
		p95: 0.199,
		...survey
	},
	{
		key: 'palm-length-men',
		measure: 'palm length',
		sex: 'men',
		unit: 'm',
		mean: 0.1165,
		spread: 0.0062,
		p5: 0.107,
		p50: 0.116,
		p95: 0.127,
		...survey
	},
	{
		key: 'palm-length-women',
		measure: 'palm length',
		sex: 'women',
		unit: 'm',
		mean: 0.1087,
		spread: 0.0059,
		p5: 0.1,
		p50: 0.108,
		p95: 0.119,
		...survey
	},
	{
		key: 'hand-breadth-men',
		measure: 'hand breadth',
		sex: 'men',
		unit: 'm',
		mean: 0.0883,
		spread: 0.0044,
		p5: 0.081,
		p50: 0.088,
		p95: 0.096,
		...survey
	},
	{
		key: 'hand-breadth-women',
		measure: 'hand breadth',
		sex: 'women',
		unit: 'm',
		mean: 0.0782,
		spread: 0.0038,
		p5: 0.072,
		p50: 0.078,
		p95: 0.085,
		...survey
	},
	{
		key: 'hand-circumference-men',
		measure: 'hand circumference',
		sex: 'men',
		unit: 'm',
		mean: 0.2123,
		spread: 0.0102,
		p5: 0.195,
		p50: 0.212,
		p95: 0.23,
		...survey
	},
	{
		key: 'hand-circumference-women',
		measure: 'hand circumference',
		sex: 'women',
		unit: 'm',
		mean: 0.1866,
		spread: 0.0088,
		p5: 0.173,
		p50: 0.187,
		p95: 0.202,
		...survey
	},
	{
		key: 'stature-men',
		measure: 'stature',
		sex: 'men',
		unit: 'm',
		mean: 1.756,
		spread: 0.069,
		p5: 1.648,
		p50: 1.755,
		p95: 1.87,
		...survey
	},
	{
		key: 'stature-women',
		measure: 'stature',
		sex: 'women',
		unit: 'm',
		mean: 1.628,
		spread: 0.064,
		p5: 1.525,
		p50: 1.626,
		p95: 1.74,
		...survey
	},
	{
		key: 'mass-men',
		measure: 'body mass',
		sex: 'men',
		unit: 'kg',
		mean: 85.5,
		spread: 14.2,
		p5: 64.4,
		p50: 84.6,
		p95: 110.7,
		...survey
	},
	{
		key: 'mass-women',
		measure: 'body mass',
		sex: 'women',
		unit: 'kg',
		mean: 67.8,
		spread: 11,
		p5: 51.3,
		p50: 66.8,
		p95: 87.1,
		...survey
	}
];
