import type { Fact } from './types.ts';

/** What is known of the pad’s contact, and of moisture, time and temperature. */
export const contactFacts: readonly Fact[] = [
	{
		key: 'pad-coefficient',
		what: 'pad area at 1 N',
		value: 110e-6,
		range: [60e-6, 180e-6],
		unit: 'm²',
		conditions: 'end of one finger',
		source: ['xydas1999', 'pawluk1999', 'serina1998'],
		status: 'memory',
		note: 'The form is published; the number is a remembered middle value.'
	},
	{
		key: 'pad-exponent',
		what: 'pad area grows as this power of its load',
		value: 0.32,
		range: [0.2, 0.55],
		unit: '1',
		conditions: 'soft finger theory allows 0 to 0.67; fast growth to about 1 N, slow after',
		source: ['xydas1999', 'tomlinson2009', 'liu2018'],
		status: 'memory'
	},
	{
		key: 'pad-limit',
		what: 'largest pad area of the end of one finger',
		value: 350e-6,
		range: [250e-6, 450e-6],
		unit: 'm²',
		conditions:
			'50 N at 120 kPa gives 417 mm²; Hertz without a limit gives over 1000 mm², which no finger has',
		source: ['derler2009', 'hertz1882'],
		status: 'derived'
	},
	{
		key: 'pad-at-hang',
		what: 'pad area at 50 N',
		value: 330e-6,
		range: [220e-6, 450e-6],
		unit: 'm²',
		conditions: 'end of one finger',
		source: ['derler2009'],
		status: 'derived'
	},
	{
		key: 'pressure-at-fifty',
		what: 'mean pad pressure at 50 N',
		value: 150_000,
		range: [80_000, 230_000],
		unit: 'Pa',
		conditions: 'remembered 120 kPa; 150 kPa from the area above',
		source: ['derler2009'],
		status: 'derived'
	},
	{
		key: 'fingerprint-loss',
		what: 'share of contact area lost to fingerprint gaps',
		value: 1 / 3,
		range: [0.25, 0.45],
		unit: '1',
		conditions: 'fingers on acrylic',
		source: ['warman2009'],
		status: 'seen'
	},
	{
		key: 'shear-loss',
		what: 'share of real contact lost under sideways pull before a slide',
		value: 0.3,
		range: [0, 0.3],
		unit: '1',
		conditions: 'as much as; rough elastomers and fingertips; the gross area shrinks too',
		source: ['sahli2018', 'delhaye2014'],
		status: 'seen'
	},
	{
		key: 'pull-off',
		what: 'largest pull-off force of a fingertip',
		value: 0.015,
		unit: 'N',
		conditions: 'on epoxy resin: stickiness is shear strength, not extra press',
		source: ['spinner2016'],
		status: 'seen'
	},
	{
		key: 'real-shear-dry',
		what: 'shear strength of real nanoscale contact, dry skin',
		value: 13e6,
		range: [13e6, 15e6],
		unit: 'Pa',
		conditions: 'never to be mixed with kilopascals over the whole pad',
		source: ['kovalev2014', 'persson2013'],
		status: 'seen'
	},
	{
		key: 'real-shear-wet',
		what: 'shear strength of real nanoscale contact, wet skin',
		value: 5e6,
		unit: 'Pa',
		conditions: 'wrist skin',
		source: ['kovalev2014'],
		status: 'seen'
	},
	{
		key: 'gross-area',
		what: 'gross area says little about real contact',
		value: null,
		unit: '1',
		conditions: 'dry and wet fingers on glass had like gross and very different real area',
		source: ['serhat2022', 'dzidek2017pnas'],
		status: 'seen'
	},
	{
		key: 'sitting-time',
		what: 'time to full contact on smooth, sealed surfaces',
		value: 20,
		unit: 's',
		conditions: 'whatever the first moisture and the load; at once on soft surfaces',
		source: ['dzidek2017pnas'],
		status: 'seen'
	},
	{
		key: 'sitting-constant',
		what: 'time constant of that rise',
		value: 6,
		range: [2, 15],
		unit: 's',
		conditions: '4.3 to 6.7 s if 20 s means 99 to 95 %',
		source: ['dzidek2017pnas'],
		status: 'derived'
	},
	{
		key: 'sitting-rise',
		what: 'final ratio over first ratio on smooth, sealed surfaces',
		value: 10,
		range: [1, 15],
		unit: '1',
		conditions: 'an order of magnitude in tens of seconds; on paper it falls instead',
		source: ['adams2013'],
		status: 'seen'
	},
	{
		key: 'ageing',
		what: 'strength of a resting soft contact',
		value: null,
		unit: '1',
		conditions: 'grows as the logarithm of resting time and of pull rate',
		source: ['juvekar2016'],
		status: 'seen'
	},
	{
		key: 'drying',
		what: 'time for which a wetted contact stays high',
		value: 100,
		unit: 's',
		conditions: 'order of; some 14 µm of water at 50 % humidity',
		source: ['persson2013'],
		status: 'seen'
	},
	{
		key: 'moisture-bell',
		what: 'ratio at the best moisture over the dry ratio, less one',
		value: null,
		range: [1, 4],
		unit: '1',
		conditions: 'bell-shaped in moisture; grip drifts toward the best moisture by itself',
		source: ['andre2009', 'andre2010', 'tomlinson2009thesis', 'yum2020'],
		status: 'assumed',
		note: 'The bell is seen; its height is ours.'
	},
	{
		key: 'artificial-skin-water',
		what: 'share of contact wetted at the greatest ratio',
		value: 0.05,
		unit: '1',
		conditions: 'artificial skin',
		source: ['nishi2021'],
		status: 'seen'
	},
	{
		key: 'humid-factor',
		what: 'ratio in a humid over a dry climate',
		value: 2,
		range: [1.5, 3],
		unit: '1',
		conditions: 'cheek and forearm; smoother surfaces up to 5 to 10 times, mostly below 1 µm',
		source: ['hendriks2010'],
		status: 'seen'
	},
	{
		key: 'smooth-paper',
		what: 'smoother coated papers and gloss finishes have more finger friction',
		value: null,
		unit: '1',
		conditions: 'sticking at the smooth end, interlock at the rough end',
		source: ['skedung2010', 'gott2013'],
		status: 'seen'
	},
	{
		key: 'between-areas',
		what: 'coefficient of variation of the ratio between people',
		value: null,
		range: [0.25, 0.75],
		unit: '1',
		conditions: 'by grasp; palm above fingertips; thicker outer skin higher',
		source: ['handSkinAreas2010', 'skinStructureFriction'],
		status: 'seen'
	},
	{
		key: 'air',
		what: 'correlation of rock friction with air temperature or humidity',
		value: 0,
		unit: '1',
		conditions: 'none in 42 climbing sessions',
		source: ['amca2012'],
		status: 'seen'
	},
	{
		key: 'rubber-lens',
		what: 'rubber: shear stress without pressure on a smooth lens, with pressure on a sand-blasted one',
		value: null,
		unit: '1',
		conditions: 'an analogue of skin on smooth and rough holds',
		source: ['trejo2017', 'nonAmontons2017', 'briscoeTabor1978', 'towle1974'],
		status: 'seen'
	},
	{
		key: 'rock-joints',
		what: 'rough rock on rock: the roughness part falls with stress',
		value: null,
		unit: '1',
		conditions: 'a textbook cousin of interlock, not skin',
		source: ['patton1966', 'barton1973'],
		status: 'memory'
	},
	{
		key: 'smaller-test-loads',
		what: 'finger load in rock-friction tests',
		value: null,
		range: [5, 15],
		unit: 'N',
		conditions:
			'a fifth of a full hang’s or less; a poster gives 13 N for a quarter of body weight on the middle finger, simple sharing gives 43 N',
		source: ['clarke2024', 'clarke2024poster'],
		status: 'seen'
	}
];
