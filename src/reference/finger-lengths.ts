import type { Fact, Row } from './types.ts';

export const fingers = ['index', 'middle', 'ring', 'little'] as const;
export type Finger = (typeof fingers)[number];

/** Bone lengths of one finger, m. Joint centres are a little farther apart. */
export type FingerLengthRow = Row & {
	key: Finger;
	metacarpal: number;
	proximal: number;
	middle: number;
	distal: number;
	softTip: number;
};

const origin = { source: ['buryanovKotiuk2010'], status: 'seen' } as const;

/** Mean X-ray bone lengths; scale by own hand length over referenceHandLength. */
export const fingerLengths: readonly FingerLengthRow[] = [
	{
		key: 'index',
		metacarpal: 0.06812,
		proximal: 0.03978,
		middle: 0.02238,
		distal: 0.01582,
		softTip: 0.00384,
		...origin
	},
	{
		key: 'middle',
		metacarpal: 0.0646,
		proximal: 0.04463,
		middle: 0.02633,
		distal: 0.0174,
		softTip: 0.00395,
		...origin
	},
	{
		key: 'ring',
		metacarpal: 0.058,
		proximal: 0.04137,
		middle: 0.02565,
		distal: 0.0173,
		softTip: 0.00395,
		...origin
	},
	{
		key: 'little',
		metacarpal: 0.05369,
		proximal: 0.03257,
		middle: 0.01811,
		distal: 0.01596,
		softTip: 0.00373,
		...origin
	}
];

/** Hand length that the bone lengths are taken to belong to, m: assumed, near the pooled survey mean. */
export const referenceHandLength: Fact = {
	key: 'reference-hand-length',
	what: 'hand length that the bone lengths are taken to belong to',
	value: 0.187,
	unit: 'm',
	conditions: 'adults, both sexes; external hand length explains 49 to 99 % of segment lengths',
	source: ['ansur2', 'buchholz1992'],
	status: 'assumed'
};

/** Finger lengths from crease to tip on photographs, m: shorter than knuckle to tip. */
export const photographedLengths: readonly Fact[] = [
	{
		key: 'index',
		what: 'finger length, palm crease to tip',
		value: 0.0639,
		spread: 0.0041,
		unit: 'm',
		conditions: 'photographs, n = 51',
		source: ['chatzioglou2024'],
		status: 'seen'
	},
	{
		key: 'middle',
		what: 'finger length, palm crease to tip',
		value: 0.0707,
		spread: 0.0052,
		unit: 'm',
		conditions: 'photographs, n = 51',
		source: ['chatzioglou2024'],
		status: 'seen'
	},
	{
		key: 'ring',
		what: 'finger length, palm crease to tip',
		value: 0.0655,
		spread: 0.0048,
		unit: 'm',
		conditions: 'photographs, n = 51',
		source: ['chatzioglou2024'],
		status: 'seen'
	},
	{
		key: 'little',
		what: 'finger length, palm crease to tip',
		value: 0.0533,
		spread: 0.0043,
		unit: 'm',
		conditions: 'photographs, n = 51',
		source: ['chatzioglou2024'],
		status: 'seen'
	}
];
