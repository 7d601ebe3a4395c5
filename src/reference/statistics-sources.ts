import type { Row } from './types.ts';

/** What the trials’ method takes from where. */
export type MethodRow = Row & { use: string };

export const statisticsSources: readonly MethodRow[] = [
	{
		key: 'lapses',
		use: 'A missed set-up biases limit and slope, and cannot be estimated from few trials: fix it, and show what it changes.',
		source: ['wichmannHill2001', 'prins2012', 'prins2013'],
		status: 'seen'
	},
	{
		key: 'two-causes',
		use: 'Whether slipping and opening are independent cannot be tested from such trials.',
		source: ['tsiatis1975'],
		status: 'seen'
	},
	{
		key: 'starting-guesses',
		use: 'Weak starting guesses give an answer when trials split cleanly; normal rather than Cauchy, whose mean may not exist then.',
		source: ['gelman2008', 'ghosh2018'],
		status: 'seen'
	},
	{
		key: 'clean-split',
		use: 'Bias-reduced fits as a second opinion on clean splits.',
		source: ['firth1993', 'heinzeSchemper2002', 'albertAnderson1984', 'kosmidisFirth2021'],
		status: 'memory'
	},
	{
		key: 'next-load',
		use: 'Choose the load whose outcome is expected to tell most; looking one step ahead is enough.',
		source: [
			'kontsevichTyler1999',
			'minimumEntropy2008',
			'adaptiveVision',
			'adaptiveHearing',
			'neyer1994'
		],
		status: 'seen'
	},
	{
		key: 'caps',
		use: 'A cap on the chance of passing the limit, kept fixed.',
		source: ['babb1998', 'ewoc2017', 'ewoc2022'],
		status: 'seen'
	},
	{
		key: 'no-shortcuts',
		use: 'Leave-one-out comparison is unreliable for small data, so none is offered.',
		source: ['looLimits2020'],
		status: 'seen'
	},
	{
		key: 'up-and-down',
		use: 'A paper method for a clinic; estimate with the same trials’ full fit.',
		source: ['dixonMood1948', 'gorla2017'],
		status: 'memory'
	},
	{
		key: 'worked-data',
		use: 'Published data sets that the fits are checked with.',
		source: [
			'bliss1935',
			'faraway2016',
			'gelman2013',
			'rSurvival',
			'rMass',
			'doganaksoy2002',
			'meekerEscobar1998'
		],
		status: 'seen'
	},
	{
		key: 'numerics',
		use: 'Fitted curves, normal probabilities, sums over grids, small linear systems and shuffles: textbook methods.',
		source: [
			'mcCullaghNelder1989',
			'kalbfleischPrentice2002',
			'pearson1895',
			'abramowitzStegun1964',
			'trefethenWeideman2014',
			'takahasiMori1974',
			'golubVanLoan2013',
			'nocedalWright2006',
			'blanchard2021',
			'durstenfeld1964',
			'blackmanVigna2021'
		],
		status: 'memory'
	},
	{
		key: 'information',
		use: 'What a trial is expected to tell, and how strongly trials favour one story over another.',
		source: ['shannon1948', 'lindley1956', 'kassRaftery1995', 'hoeting1999'],
		status: 'memory'
	},
	{
		key: 'reading-error',
		use: 'A reading rounded to a step is spread evenly over it; independent spreads add as squares.',
		source: ['jcgm100'],
		status: 'memory'
	}
];
