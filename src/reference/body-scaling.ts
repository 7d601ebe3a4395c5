import type { Fact, Row } from './types.ts';

/** Exponents of size within one sex, fitted on doubly logarithmic axes. */
export type ScalingRow = Row & {
	what: string;
	men: number;
	women: number;
	unit: string;
};

const survey = {
	unit: '1',
	source: ['ansur2'],
	status: 'derived',
	note: 'Hand area here is hand length times breadth, a stand-in: pads may scale a little differently.'
} as const;

export const bodyScaling: readonly ScalingRow[] = [
	{
		key: 'area-on-stature',
		what: 'hand area as a power of stature',
		men: 1.483,
		women: 1.497,
		...survey
	},
	{
		key: 'mass-on-stature',
		what: 'body mass as a power of stature',
		men: 1.999,
		women: 2.192,
		...survey
	},
	{
		key: 'area-on-mass',
		what: 'hand area as a power of body mass',
		men: 0.3,
		women: 0.32,
		...survey
	},
	{
		key: 'area-on-mass-lean',
		what: 'the same among people of BMI under 25; same shape would be 0.67',
		men: 0.47,
		women: 0.46,
		...survey
	},
	{
		key: 'length-with-stature',
		what: 'correlation of hand length with stature',
		men: 0.67,
		women: 0.65,
		...survey
	},
	{
		key: 'breadth-with-mass',
		what: 'correlation of hand breadth with body mass',
		men: 0.54,
		women: 0.5,
		...survey
	},
	{
		key: 'area-explained',
		what: 'share of hand area explained by stature and mass together',
		men: 0.49,
		women: 0.47,
		...survey
	},
	{
		key: 'area-per-mass-shortest',
		what: 'hand area over mass, shortest fifth, m²/kg',
		men: 2.095e-4,
		women: 2.216e-4,
		...survey,
		unit: 'm²/kg'
	},
	{
		key: 'area-per-mass-tallest',
		what: 'hand area over mass, tallest fifth, m²/kg',
		men: 1.979e-4,
		women: 2.048e-4,
		...survey,
		unit: 'm²/kg'
	},
	{
		key: 'area-per-mass-change-lean',
		what: 'change of hand area over mass, shortest to tallest fifth, BMI under 25',
		men: -0.051,
		women: -0.079,
		...survey
	},
	{
		key: 'area-per-mass-p5-lean',
		what: 'hand area over mass, 5th percentile, BMI under 25',
		men: 2.05e-4,
		women: 2e-4,
		...survey,
		unit: 'm²/kg'
	},
	{
		key: 'area-per-mass-p95-lean',
		what: 'hand area over mass, 95th percentile, BMI under 25',
		men: 2.75e-4,
		women: 2.73e-4,
		...survey,
		unit: 'm²/kg'
	}
];

/** Strength and size, fingers and size. */
export const sizeFacts: readonly Fact[] = [
	{
		key: 'grip-on-mass-athletes',
		what: 'strength as a power of body mass, athletes',
		value: 0.68,
		unit: '1',
		conditions: 'others 0.56, common 0.64',
		source: ['judoScaling2020'],
		status: 'seen'
	},
	{
		key: 'grip-on-mass',
		what: 'strength as a power of body mass, common exponent',
		value: 0.64,
		unit: '1',
		conditions: 'athletes and others together',
		source: ['judoScaling2020'],
		status: 'seen'
	},
	{
		key: 'grip-on-height',
		what: 'handgrip strength as a power of height',
		value: 2,
		unit: '1',
		conditions: 'n = 8690; a cross-section law',
		source: ['nevill2021'],
		status: 'seen'
	},
	{
		key: 'grip-and-circumference',
		what: 'correlation of grip strength with hand circumference',
		value: null,
		range: [0.78, 0.83],
		unit: '1',
		conditions: 'n = 100, dynamometers',
		source: ['handSizeGrip'],
		status: 'seen'
	},
	{
		key: 'sex-difference-by-size',
		what: 'share of the sex difference in hand strength on pliers due to hand size',
		value: 0.35,
		unit: '1',
		conditions: 'handle span, which an open hold does not have',
		source: ['fransson1991'],
		status: 'seen'
	},
	{
		key: 'breadth-explains',
		what: 'share of segment breadth explained by hand breadth',
		value: null,
		range: [0.12, 0.47],
		unit: '1',
		conditions: 'segment depth 0.06 to 0.74',
		source: ['buchholz1991'],
		status: 'seen'
	},
	{
		key: 'index-breadth-men',
		what: 'breadth of the end of the index finger, men',
		value: 0.018,
		range: [0.016, 0.02],
		unit: 'm',
		conditions: 'rough; women 0.0155 (0.014 to 0.018)',
		source: [],
		status: 'memory'
	},
	{
		key: 'pad-area-men',
		what: 'pad of one finger, ellipse of 18 by 24 mm',
		value: 3.4e-4,
		unit: 'm²',
		conditions: 'women 2.7e-4 from 15.5 by 22 mm; from remembered breadths',
		source: [],
		status: 'derived',
		note: 'No readable table of pad areas was found. Print your own.'
	},
	{
		key: 'small-fingers',
		what: 'smaller fingers feel finer detail',
		value: null,
		unit: '1',
		conditions: 'n = 100; pad areas were not read',
		source: ['peters2009'],
		status: 'seen'
	}
];

/** The honest answer on big hands, in short sentences, each with how it is known. */
export const bigHands: readonly (Row & { text: string })[] = [
	{
		key: 'through-area',
		text: 'With textbook friction the patch cancels, so a bigger hand gives nothing.',
		source: ['openstaxUniversityPhysics'],
		status: 'derived'
	},
	{
		key: 'through-area-skin',
		text: 'With skin that sticks, the tallest fifth’s ratio is some 1 to 2 % below the shortest fifth’s. A hand that is unusually large for its owner’s mass could gain 3 to 10 %: build counts for more than height.',
		source: ['ansur2', 'seo2009'],
		status: 'derived'
	},
	{
		key: 'through-mass',
		text: 'Mass and strength both grow about as height squared: about even among lean people, a loss with extra mass. The friction limit does not depend on mass to first order; the strength limit does.',
		source: ['ansur2', 'nevill2021', 'judoScaling2020'],
		status: 'derived'
	},
	{
		key: 'through-levers',
		text: 'Bones and tendon arms grow together, so a longer finger is not a better lever.',
		source: [],
		status: 'derived'
	},
	{
		key: 'through-the-hold',
		text: 'What does change is the hold: on a 2.8 mm edge more pulp helps; on a large rounded hold a long finger reaches round or rests nearer its joint.',
		source: ['bourne2011'],
		status: 'derived'
	},
	{
		key: 'answer',
		text: 'Neither, to first order: it depends on the hold’s curve and on your build, and the expected effect is smaller than the scatter between goes.',
		source: ['ansur2'],
		status: 'derived'
	}
];
