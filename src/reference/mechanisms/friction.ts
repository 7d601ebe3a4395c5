import type { MechanismRow } from '../types.ts';
import { adhesionMechanisms } from './adhesion.ts';
import { filmAndTimeMechanisms } from './film-and-time.ts';

const ratio = {
	field: 'coefficient',
	what: 'friction ratio without the effect',
	unit: '1',
	start: 0.64,
	range: [0.2, 1.5],
	status: 'seen',
	source: ['derler2012']
} as const;

/** Load effects that act through the friction ratio itself. */
export const frictionMechanisms: readonly MechanismRow[] = [
	{
		key: 'constant',
		line: 1,
		name: 'Textbook friction: load cancels',
		family: 'none',
		constantArea: 'no change',
		constantPressure: 'no change',
		biggerPatch: 'no change',
		loadEffect: 'no change',
		grade: 'strong',
		support: 'Dry skin on ordinary solids, short contacts, most fabrics at 4 to 12 N.',
		range: 'ratio 0.2 to 0.9',
		tellTale: 'The slip angle is the same at all loads and areas.',
		test: 'Tilt to slip at two loads: the same angle.',
		expressibleInHang: true,
		boardKey: 'constant',
		parameters: [ratio],
		source: ['derler2012', 'dzidek2017', 'savescu2008'],
		status: 'seen'
	},
	...adhesionMechanisms,
	{
		key: 'deformation',
		line: 5,
		name: 'Skin is deformed by a rough surface and loses energy',
		family: 'deformation',
		constantArea: 'better',
		constantPressure: 'no change',
		biggerPatch: 'worse',
		loadEffect: 'heavier is easier',
		grade: 'weak',
		support:
			'Classical theory; on skin a minority of data (“several studies” in the review, rough dry glass from memory). Weakest on slick holds.',
		range: 'part 0.02 to 0.2, growing as the cube root of pressure: a doubling adds 0.005 to 0.05',
		tellTale: 'Only on rough surfaces; fewer fingers do better.',
		test: 'Same load with fewer fingers on a coarse and on a smooth hold.',
		expressibleInHang: true,
		boardKey: 'deformation',
		parameters: [
			{ ...ratio, start: 0.5 },
			{
				field: 'deformation',
				what: 'deformation part at the reference pressure',
				unit: '1',
				start: 0.1,
				range: [0, 0.2],
				status: 'memory',
				source: []
			},
			{
				field: 'referencePressure',
				what: 'pressure at which that part is stated',
				unit: 'Pa',
				start: 114_000,
				range: [10_000, 600_000],
				status: 'assumed',
				source: []
			}
		],
		source: ['derler2012', 'greenwoodTabor1958', 'derler2009', 'leyvaMendivil2017'],
		status: 'memory'
	},
	{
		key: 'interlock',
		line: 6,
		name: 'Skin is pressed into grains or ridges',
		family: 'deformation',
		constantArea: 'better',
		constantPressure: 'no change',
		biggerPatch: 'worse',
		loadEffect: 'heavier is easier',
		grade: 'weak',
		support:
			'Ridged and rough surfaces grip more; no curve against load was found for rock. It must end in a plateau, and falls if grains shear off.',
		range: 'pressure of penetration unknown; try 30 to 300 kPa',
		tellTale: 'Sharp coarse texture; none on smooth.',
		test: 'Same material, polished against coarse, at two loads.',
		expressibleInHang: false,
		boardKey: 'interlock',
		parameters: [
			{ ...ratio, start: 0.5 },
			{
				field: 'interlock',
				what: 'largest part that interlock adds',
				unit: '1',
				start: 0.2,
				range: [0, 0.5],
				status: 'assumed',
				source: []
			},
			{
				field: 'penetrationPressure',
				what: 'pressure of penetration',
				unit: 'Pa',
				start: 150_000,
				range: [30_000, 300_000],
				status: 'assumed',
				source: []
			}
		],
		source: ['tomlinson2009', 'tomlinson2009thesis', 'tomlinson2013'],
		status: 'assumed',
		note: 'The form is ours; the sources show interlock, not its growth with load.'
	},
	...filmAndTimeMechanisms
];
