import type { Row } from './types.ts';

/** What one study found when load rose: the exponent x in ratio ~ load^−x, where it gives one. */
export type TrendRow = Row & {
	contact: string;
	people: number | null;
	/** x in ratio ~ N^−x: above 0 means harder when heavier; null where only the direction is known. */
	exponent: number | null;
	exponentRange?: readonly [number, number];
	direction: 'falls' | 'flat' | 'rises' | 'mixed';
	finding: string;
};

/** Skin friction against load. Most say falls or flat; a minority rises; none is a body-weight hang. */
export const loadTrends: readonly TrendRow[] = [
	{
		key: 'seo',
		contact: 'middle finger pad on aluminium and rubber, 1 to 20 N',
		people: 12,
		exponent: 0.206,
		direction: 'falls',
		finding: 'The ratio falls by 46 %; the exponent is worked out from that.',
		source: ['seo2009'],
		status: 'derived'
	},
	{
		key: 'dzidek-long',
		contact: 'finger pad on glass, over 10 s of contact',
		people: null,
		exponent: null,
		exponentRange: [0.35, 0.54],
		direction: 'falls',
		finding: 'The ratio changes about fivefold over the load range; the range was not seen.',
		source: ['dzidek2017'],
		status: 'derived'
	},
	{
		key: 'dzidek-short',
		contact: 'finger pad, short contact or not smooth',
		people: null,
		exponent: 0,
		direction: 'flat',
		finding: 'Load does not matter.',
		source: ['dzidek2017'],
		status: 'seen'
	},
	{
		key: 'derler-smooth',
		contact: 'skin on smooth dry or rough wet glass, to 50 N',
		people: 4,
		exponent: null,
		exponentRange: [0.2, 0.5],
		direction: 'falls',
		finding: 'Exponent in pressure.',
		source: ['derler2009'],
		status: 'memory'
	},
	{
		key: 'derler-rough',
		contact: 'dry finger pad on rough glass',
		people: 4,
		exponent: null,
		direction: 'rises',
		finding: 'The ratio rises with pressure; the deformation part stays under 0.2.',
		source: ['derler2009'],
		status: 'memory'
	},
	{
		key: 'review',
		contact: 'skin, many studies',
		people: null,
		exponent: null,
		direction: 'mixed',
		finding:
			'Dry: low and independent of pressure. Moist: higher, rising as pressure falls. Several studies see it rise with pressure, within the same range.',
		source: ['derler2012'],
		status: 'seen'
	},
	{
		key: 'forearm',
		contact: 'forearm skin',
		people: null,
		exponent: null,
		exponentRange: [0.28, 0.32],
		direction: 'falls',
		finding: 'Two studies.',
		source: ['koudine2000', 'sivamani2003'],
		status: 'memory'
	},
	{
		key: 'buchholz',
		contact: 'pinch at 19.6 and 39.2 N, seven materials, dry and moist',
		people: 7,
		exponent: null,
		direction: 'falls',
		finding: 'Lower at the higher force for every pair of material and moisture.',
		source: ['buchholz1988', 'umichFrictionData'],
		status: 'seen'
	},
	{
		key: 'warman',
		contact: 'fingers on dry acrylic',
		people: null,
		exponent: null,
		direction: 'falls',
		finding: 'Falls with force; a flatter finger, with more area, has more friction.',
		source: ['warman2009'],
		status: 'seen'
	},
	{
		key: 'savescu',
		contact: 'rayon, cotton, polyester, silk at 4, 8 and 12 N',
		people: 12,
		exponent: 0,
		direction: 'flat',
		finding: 'Only sandpaper depended on load; which way was not visible in the excerpt.',
		source: ['savescu2008'],
		status: 'seen'
	},
	{
		key: 'tomlinson',
		contact: 'finger on twelve materials',
		people: 1,
		exponent: 0,
		direction: 'flat',
		finding:
			'Force linear in load above about 1 N, where the contact area was already at its largest.',
		source: ['tomlinson2009', 'tomlinson2009thesis'],
		status: 'seen'
	},
	{
		key: 'inoue',
		contact: 'finger on artificial skins',
		people: null,
		exponent: null,
		direction: 'mixed',
		finding: 'The exponent varied: negative, zero or positive.',
		source: ['inoue2022'],
		status: 'seen'
	},
	{
		key: 'jsme',
		contact: 'skin on glass',
		people: null,
		exponent: null,
		direction: 'falls',
		finding:
			'14 at the lightest load. Longer loading raised friction at light load, not at heavy load.',
		source: ['jsme2003'],
		status: 'seen'
	},
	{
		key: 'lee',
		contact: 'finger pad on glass, 0.5 to 3 N',
		people: null,
		exponent: null,
		direction: 'mixed',
		finding: 'Ratio and area follow powers of load.',
		source: ['lee2026'],
		status: 'seen'
	},
	{
		key: 'andre',
		contact: 'fingertips at several moistures',
		people: 10,
		exponent: null,
		direction: 'falls',
		finding: 'A power of load whose factor is bell-shaped in moisture.',
		source: ['andre2009'],
		status: 'seen'
	},
	{
		key: 'comaish',
		contact: 'skin',
		people: null,
		exponent: null,
		direction: 'falls',
		finding: 'The first to write skin friction as a power of load.',
		source: ['comaish1971'],
		status: 'seen'
	},
	{
		key: 'yamaguchi',
		contact: 'finger on leather, bare and with powder of rosin and magnesium carbonate',
		people: 10,
		exponent: null,
		direction: 'mixed',
		finding: 'Powder makes the ratio depend less on load and differ less between people.',
		source: ['yamaguchi2020'],
		status: 'seen'
	},
	{
		key: 'hang',
		contact: 'body-weight hang on a slope',
		people: null,
		exponent: null,
		direction: 'mixed',
		finding:
			'No published experiment was found in which a hang had a higher ratio when it was heavier.',
		source: [],
		status: 'seen',
		note: 'A statement about our search, not about skin.'
	}
];
