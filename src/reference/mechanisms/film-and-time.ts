import type { MechanismRow } from '../types.ts';

const filmParameters = [
	{
		field: 'filmCoefficient',
		what: 'friction ratio on the film',
		unit: '1',
		start: 0.4,
		range: [0.1, 0.8],
		status: 'assumed',
		source: []
	},
	{
		field: 'coefficient',
		what: 'friction ratio once the film is through',
		unit: '1',
		start: 0.75,
		range: [0.2, 1.5],
		status: 'assumed',
		source: []
	},
	{
		field: 'breakthroughPressure',
		what: 'pressure at which most of the film is through',
		unit: 'Pa',
		start: 150_000,
		range: [20_000, 500_000],
		status: 'assumed',
		source: []
	},
	{
		field: 'sharpness',
		what: 'how suddenly the film gives way',
		unit: '1',
		start: 1,
		range: [0.5, 6],
		status: 'assumed',
		source: []
	}
] as const;

/** Layers between skin and hold, and what time does. */
export const filmAndTimeMechanisms: readonly MechanismRow[] = [
	{
		key: 'powder-film',
		line: 7,
		name: 'Loose powder or dust is pressed through',
		family: 'film',
		constantArea: 'better',
		constantPressure: 'no change',
		biggerPatch: 'worse',
		loadEffect: 'heavier is easier',
		grade: 'weak',
		support:
			'A slippery layer of loose powder has been seen; its pressure of break-through has never been measured. Assumed, not shown by experiments.',
		range: 'ratio 0.25 to 0.5 on the film; pressure unknown, try 20 to 500 kPa',
		tellTale: 'Vanishes when the hold is brushed and the fingers wiped.',
		test: 'Brush the hold, wipe the fingers, repeat both loads.',
		expressibleInHang: true,
		boardKey: 'film',
		parameters: filmParameters,
		source: ['li2001', 'fuss2012chalk', 'carre2012', 'yamaguchi2020'],
		status: 'assumed'
	},
	{
		key: 'liquid-film',
		line: 8,
		name: 'Water or sweat is squeezed out',
		family: 'film',
		constantArea: 'better',
		constantPressure: 'no change',
		biggerPatch: 'worse',
		loadEffect: 'heavier is easier',
		grade: 'fair',
		support:
			'Lubrication theory, with a curve fitted to skin; the wet side of the moisture curve. No pressure for a finger on a hold was found.',
		range: 'only if visibly wet',
		tellTale: 'Improves with waiting and with load; vanishes when dry.',
		test: 'Dry hand and hold thoroughly, repeat both loads.',
		expressibleInHang: true,
		boardKey: 'liquidFilm',
		parameters: filmParameters,
		source: ['persson2013', 'andre2009', 'tomlinson2009thesis'],
		status: 'assumed',
		note: 'Drawn with the same assumed form as the powder film.'
	},
	{
		key: 'sitting-time',
		line: 10,
		name: 'Skin sits: the ratio moves toward a limit while one holds',
		family: 'time',
		constantArea: 'either',
		constantPressure: 'no change',
		biggerPatch: 'either',
		loadEffect: 'either',
		grade: 'strong',
		support:
			'On smooth sealed surfaces friction rises for some 20 s; on paper-like ones it falls. One study finds the time constant independent of load, another no effect of time at heavy load.',
		range: 'up to about ten times; time constant 2 to 15 s',
		tellTale: 'Follows the time on the hold, not the load.',
		test: 'Same load, 2 s and 20 s of rest on the hold before the test.',
		expressibleInHang: false,
		boardKey: 'sittingTime',
		parameters: [
			{
				field: 'coefficient',
				what: 'friction ratio at the first touch',
				unit: '1',
				start: 0.5,
				range: [0.2, 1.5],
				status: 'assumed',
				source: []
			},
			{
				field: 'rise',
				what: 'final ratio over first ratio',
				unit: '1',
				start: 3,
				range: [0.5, 10],
				status: 'seen',
				source: ['adams2013']
			},
			{
				field: 'timeConstant',
				what: 'time constant',
				unit: 's',
				start: 6,
				range: [2, 15],
				status: 'derived',
				source: ['dzidek2017pnas']
			},
			{
				field: 'time',
				what: 'time on the hold',
				unit: 's',
				start: 5,
				range: [0, 60],
				status: 'assumed',
				source: []
			}
		],
		source: ['dzidek2017pnas', 'adams2013', 'yum2020', 'jsme2003'],
		status: 'seen',
		note: 'The curve can also let the rise fade with force (an assumed form for the second study); left out unless asked for.'
	}
];
