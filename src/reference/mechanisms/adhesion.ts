import type { MechanismRow } from '../types.ts';

const ratio = {
	field: 'coefficient',
	what: 'friction ratio without the effect',
	unit: '1',
	start: 0.43,
	range: [0.1, 0.8],
	status: 'derived',
	source: ['seo2009']
} as const;

const shearStrength = {
	field: 'shearStrength',
	what: 'shear strength over the whole pad',
	unit: 'Pa',
	start: 3700,
	range: [0, 60_000],
	status: 'derived',
	source: ['seo2009']
} as const;

const growth = {
	field: 'exponent',
	what: 'the pad grows as this power of its load',
	unit: '1',
	start: 0.32,
	range: [0, 1],
	status: 'memory',
	source: []
} as const;

/** Friction that goes with contact area: the best supported family on smooth holds. */
export const adhesionMechanisms: readonly MechanismRow[] = [
	{
		key: 'adhesion',
		line: 2,
		name: 'Skin sticks: part of friction goes with the patch',
		family: 'adhesion',
		constantArea: 'worse',
		constantPressure: 'no change',
		biggerPatch: 'better',
		loadEffect: 'lighter is easier',
		grade: 'strong',
		support: 'The usual reading of skin friction on smooth solids.',
		range: '40 to 80 N on one pad: −1 to −15 %',
		tellTale: 'More fingers or more pad is better; lighter is better.',
		test: 'Same load with fewer fingers: worse.',
		expressibleInHang: true,
		boardKey: 'adhesion',
		parameters: [ratio, shearStrength],
		source: ['derler2012', 'adams2007', 'warman2009', 'tomlinson2009'],
		status: 'seen'
	},
	{
		key: 'natural-growth',
		line: 3,
		name: 'Skin sticks, and the pad spreads as load rises',
		family: 'adhesion',
		constantArea: 'worse',
		constantPressure: 'not defined',
		biggerPatch: 'better',
		loadEffect: 'lighter is easier',
		grade: 'strong',
		support:
			'Ratio falls as a power of load, less steeply than on a fixed patch, unless the pad grows faster than load.',
		range: 'ratio as load to the power −0.2 to −0.5; a doubling −13 % at −0.206',
		tellTale: 'A straight falling line on doubly logarithmic paper.',
		test: 'Tilt to slip at three loads, ink print each time.',
		expressibleInHang: true,
		boardKey: 'naturalGrowth',
		parameters: [ratio, shearStrength, growth],
		source: ['dzidek2017', 'seo2009', 'warman2009'],
		status: 'seen',
		note: 'On its own path: patch follows load.'
	},
	{
		key: 'saturation',
		line: 4,
		name: 'Real contact is full: more load finds no more of it',
		family: 'adhesion',
		constantArea: 'worse',
		constantPressure: 'no change',
		biggerPatch: 'better',
		loadEffect: 'lighter is easier',
		grade: 'fair',
		support:
			'Good for elastomers; for skin an inference. Moist skin on smooth resin or gloss paint may be there.',
		range: 'toward a ratio that halves with each doubling of load',
		tellTale: 'Moist, smooth, long holds.',
		test: 'Dry finger against moist finger, two loads each.',
		expressibleInHang: false,
		boardKey: 'saturation',
		parameters: [
			{ ...ratio, start: 0.64, range: [0.2, 1.5] },
			{
				field: 'saturationPressure',
				what: 'pressure at which real contact fills up',
				unit: 'Pa',
				start: 300_000,
				range: [30_000, 3_000_000],
				status: 'assumed',
				source: []
			}
		],
		source: ['lubricants2018'],
		status: 'assumed',
		note: 'The form of the transition is ours; both ends of it are the published ones.'
	},
	{
		key: 'capillary',
		line: 9,
		name: 'A closing gap pulls the skin in',
		family: 'adhesion',
		constantArea: 'either',
		constantPressure: 'no change',
		biggerPatch: 'better',
		loadEffect: 'either',
		grade: 'weak',
		support:
			'Better at low pressure in theory and on artificial skin; measured moist skin says worse.',
		range: 'modest moisture only',
		tellTale: 'A peak at intermediate moisture.',
		test: 'Wipe, breathe on, and wet the finger in turn at one load.',
		expressibleInHang: false,
		boardKey: null,
		parameters: [],
		source: ['persson2013', 'nishi2021', 'derler2012'],
		status: 'seen',
		note: 'No formula with usable numbers was found, so no curve is drawn.'
	},
	{
		key: 'shear-loss',
		line: 11,
		name: 'Pulling sideways shrinks small contacts more',
		family: 'adhesion',
		constantArea: 'better',
		constantPressure: 'no change',
		biggerPatch: 'either',
		loadEffect: 'heavier is easier',
		grade: 'weak',
		support:
			'Real contact falls by up to 30 % before a slide; larger junctions lose less (from memory), so heavier would lose less.',
		range: 'at most some 10 % over a tenfold load',
		tellTale: 'Acts on the start of a slide only.',
		test: 'None that is cheap.',
		expressibleInHang: false,
		boardKey: 'shearLoss',
		parameters: [
			{ ...ratio, start: 0.64, range: [0.2, 1.5] },
			{
				field: 'loss',
				what: 'share of real contact lost at the reference force',
				unit: '1',
				start: 0.1,
				range: [0, 0.3],
				status: 'assumed',
				source: []
			},
			{
				field: 'referenceForce',
				what: 'force on one pad at which that share is stated',
				unit: 'N',
				start: 40,
				range: [5, 200],
				status: 'assumed',
				source: []
			}
		],
		source: ['sahli2018'],
		status: 'assumed',
		note: 'The 30 % is seen; the law for size is from memory, and its use by load is ours.'
	},
	{
		key: 'precursor-slip',
		line: 12,
		name: 'Slip starts at the edge and runs through',
		family: 'adhesion',
		constantArea: 'worse',
		constantPressure: 'either',
		biggerPatch: 'better',
		loadEffect: 'lighter is easier',
		grade: 'weak',
		support: 'Seen on polymer blocks; a fingertip’s slip also starts at its edge.',
		range: 'a few percent',
		tellTale: 'Depends on how the load is applied.',
		test: 'None that is cheap.',
		expressibleInHang: false,
		boardKey: null,
		parameters: [],
		source: ['katano2014', 'andre2011'],
		status: 'seen',
		note: 'No formula for a finger was found, so no curve is drawn.'
	},
	{
		key: 'flatter-hand',
		line: 13,
		name: 'The hand lies flatter when it is loaded more',
		family: 'adhesion',
		constantArea: 'either',
		constantPressure: 'not defined',
		biggerPatch: 'either',
		loadEffect: 'either',
		grade: 'weak',
		support:
			'Helps only where the surface is sticky and the patch grows faster than the load; hurts where pressure helps. Never measured in hangs.',
		range: 'one extra phalanx is 1.5 to 2 times the patch',
		tellTale: 'The print reaches farther down the finger.',
		test: 'Ink or chalk prints at two loads.',
		expressibleInHang: false,
		boardKey: 'flatterHand',
		parameters: [
			ratio,
			{ ...shearStrength, start: 20_000 },
			{
				...growth,
				what: 'the patch grows as this power of load',
				start: 1.3,
				range: [0, 2],
				status: 'assumed'
			},
			{
				field: 'largestFactor',
				what: 'most that the patch can grow',
				unit: '1',
				start: 2,
				range: [1, 2.5],
				status: 'assumed',
				source: []
			}
		],
		source: ['bourne2011', 'warman2009'],
		status: 'assumed',
		note: 'A hand laid on two phalanges is outside the strength model.'
	}
];
