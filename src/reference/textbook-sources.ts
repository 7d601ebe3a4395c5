import type { Row } from './types.ts';

/** A book or page whose problems are used, under the short name its problems carry. */
export type TextbookSourceRow = Row & { cases: number; licence: string };

/** Where the published friction problems come from. Numbers only; the statements are ours. */
export const textbookSources: readonly TextbookSourceRow[] = [
	{
		key: 'UP',
		cases: 26,
		licence:
			'CC BY-NC-SA 4.0 in the edition seen (LICENSE file and collection metadata; earlier printings were CC BY 4.0 (from memory))',
		source: ['openstaxUniversityPhysics'],
		status: 'seen'
	},
	{
		key: 'CP',
		cases: 4,
		licence: 'CC BY-NC-SA 4.0 in the edition seen',
		source: ['openstaxCollegePhysics'],
		status: 'seen'
	},
	{ key: 'HSP', cases: 0, licence: 'CC BY 4.0', source: ['openstaxPhysics'], status: 'seen' },
	{ key: 'ES', cases: 2, licence: 'CC BY-NC-SA 4.0', source: ['bakerHaynes'], status: 'seen' },
	{ key: 'MNRW', cases: 8, licence: 'CC BY-SA 4.0', source: ['martinNeary'], status: 'seen' },
	{ key: 'LM', cases: 5, licence: 'CC BY-SA 3.0', source: ['crowell'], status: 'seen' },
	{
		key: 'TAYAL',
		cases: 6,
		licence: 'book: all rights reserved; numbers cited as facts',
		source: ['tayal2010'],
		status: 'seen'
	},
	{
		key: 'BANSAL',
		cases: 9,
		licence: 'book: all rights reserved; numbers cited as facts',
		source: ['bansal'],
		status: 'seen'
	},
	{
		key: 'MCLEAN',
		cases: 5,
		licence: 'book: all rights reserved; numbers cited as facts',
		source: ['mcleanNelson1997'],
		status: 'seen'
	},
	{
		key: 'HIBG',
		cases: 2,
		licence: 'book: all rights reserved; numbers cited as facts',
		source: ['hibbelerGupta'],
		status: 'seen'
	},
	{
		key: 'KHGU',
		cases: 12,
		licence: 'book: all rights reserved; numbers cited as facts',
		source: ['khurmiGupta2009'],
		status: 'seen'
	},
	{
		key: 'BEVAN',
		cases: 1,
		licence: 'book: all rights reserved; numbers cited as facts',
		source: ['bevan2005'],
		status: 'seen'
	},
	{
		key: 'LEV',
		cases: 4,
		licence: 'book: all rights reserved; numbers cited as facts',
		source: ['levinson2002'],
		status: 'seen'
	},
	{
		key: 'HCV',
		cases: 3,
		licence: 'book: all rights reserved; numbers cited as facts',
		source: ['verma2011'],
		status: 'seen'
	},
	{
		key: 'AB',
		cases: 1,
		licence: 'not stated in the excerpt',
		source: ['adaptiveBooks'],
		status: 'seen'
	},
	{ key: 'NMU', cases: 1, licence: 'not stated', source: ['donovan2020'], status: 'seen' },
	{ key: 'JISK', cases: 0, licence: 'not stated', source: ['jiskha1268402'], status: 'seen' },
	{ key: 'KNI', cases: 0, licence: 'not stated', source: ['knightAnswers'], status: 'seen' },
	{ key: 'PHF', cases: 1, licence: 'not stated', source: ['physicsHelpForum2017'], status: 'seen' },
	{ key: 'LMU', cases: 0, licence: 'not stated', source: ['phillips2002'], status: 'seen' },
	{ key: 'BGU', cases: 1, licence: 'not stated', source: ['benGurionPool'], status: 'seen' },
	{ key: 'GIAN', cases: 1, licence: 'not stated', source: ['giancoliChimney'], status: 'seen' },
	{ key: 'BLUR', cases: 0, licence: 'not stated', source: ['blurtit197912'], status: 'seen' },
	{ key: 'BM', cases: 1, licence: 'not stated', source: ['brainmass216967'], status: 'seen' },
	{
		key: 'BJ',
		cases: 0,
		licence: 'book: all rights reserved; numbers cited as facts',
		source: ['beerJohnston'],
		status: 'memory'
	},
	{ key: 'KOMAL', cases: 1, licence: 'not stated', source: ['komal2014'], status: 'seen' },
	{ key: 'SS', cases: 1, licence: 'not stated', source: ['hibbeler14'], status: 'seen' },
	{
		key: 'HCVM',
		cases: 1,
		licence: 'book: all rights reserved; numbers cited as facts',
		source: ['vermaWalls'],
		status: 'memory'
	}
];
