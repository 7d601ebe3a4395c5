import type { LoadSign, Parameter, PresetLaw, Row } from './types.ts';

/** What is known of one friction law, and the numbers that may be moved. */
export type LawRow = Row & {
	key: PresetLaw['kind'];
	name: string;
	/** What a heavier hang does: fixed patch, plumb rope. */
	loadEffect: LoadSign;
	/** What a bigger patch at the same load does to the ratio. */
	areaEffect: 'bigger is better' | 'no change' | 'smaller is better' | 'either';
	evidence: 'strong' | 'fair' | 'weak' | 'none';
	standing: string;
	parameters: readonly Parameter[];
};

const coefficient = (start: number, range: readonly [number, number]) =>
	({
		field: 'coefficient',
		what: 'friction ratio',
		unit: '1',
		start,
		range,
		status: 'seen',
		source: ['derler2012']
	}) as const;

/** The five laws, with honest standing. Most published work says “harder or neutral” for more load. */
export const laws: readonly LawRow[] = [
	{
		key: 'constant',
		name: 'Constant ratio',
		loadEffect: 'no change',
		areaEffect: 'no change',
		evidence: 'strong',
		standing:
			'Dry skin on ordinary solids and short contacts come near it. Load and area cancel: the slip angle is the same at every load.',
		parameters: [coefficient(0.64, [0.2, 1.5])],
		source: ['derler2012', 'dzidek2017', 'savescu2008'],
		status: 'seen'
	},
	{
		key: 'adhesion',
		name: 'Ratio with sticking area',
		loadEffect: 'lighter is easier',
		areaEffect: 'bigger is better',
		evidence: 'strong',
		standing:
			'The usual reading of skin on smooth solids: a part of the friction goes with the patch, not with the load. Pressure on a hang lies far beyond the measured range.',
		parameters: [
			{ ...coefficient(0.45, [0.1, 0.8]), status: 'memory' },
			{
				field: 'shearStrength',
				what: 'shear strength over the whole pad',
				unit: 'Pa',
				start: 3700,
				range: [0, 60_000],
				status: 'derived',
				source: ['seo2009']
			}
		],
		source: ['derler2012', 'adams2007', 'warman2009', 'tomlinson2009'],
		status: 'seen',
		note: 'On the whole pad 1 to 15 kPa are plausible (from memory); never mix with 5 to 15 MPa on real nanoscale contact.'
	},
	{
		key: 'power',
		name: 'Ratio that follows a power of pressure',
		loadEffect: 'either',
		areaEffect: 'either',
		evidence: 'fair',
		standing:
			'Exponents below 1 (harder when heavier) are measured up to some 40 N a finger; above 1 only in scattered trials.',
		parameters: [
			coefficient(0.64, [0.2, 1.5]),
			{
				field: 'referencePressure',
				what: 'pressure at which the ratio is stated',
				unit: 'Pa',
				start: 250_000,
				range: [10_000, 600_000],
				status: 'assumed',
				source: []
			},
			{
				field: 'exponent',
				what: 'friction force goes as this power of load',
				unit: '1',
				start: 0.8,
				range: [0.5, 1.3],
				status: 'derived',
				source: ['seo2009', 'inoue2022']
			}
		],
		source: ['seo2009', 'comaish1971', 'dzidek2017', 'andre2009', 'inoue2022'],
		status: 'seen',
		note: 'Published moist and smooth 0.5 to 1.0; dry or rough 0.9 to 1.1. More than 1.1 is a what-if.'
	},
	{
		key: 'deformation',
		name: 'Ratio with a deformation part',
		loadEffect: 'either',
		areaEffect: 'either',
		evidence: 'weak',
		standing:
			'Classical theory of losses inside a soft body. On skin the part is usually small and belongs to rough surfaces; on slick holds it has least support.',
		parameters: [
			coefficient(0.45, [0.1, 0.8]),
			{
				field: 'shearStrength',
				what: 'shear strength over the whole pad',
				unit: 'Pa',
				start: 1000,
				range: [0, 60_000],
				status: 'memory',
				source: []
			},
			{
				field: 'deformation',
				what: 'deformation part at the reference pressure',
				unit: '1',
				start: 0.08,
				range: [0, 0.2],
				status: 'memory',
				source: ['derler2009']
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
		source: ['greenwoodTabor1958', 'derler2012', 'derler2009', 'leyvaMendivil2017'],
		status: 'memory'
	},
	{
		key: 'film',
		name: 'Ratio under a film that pressure breaks',
		loadEffect: 'heavier is easier',
		areaEffect: 'smaller is better',
		evidence: 'none',
		standing:
			'Assumed, not shown by experiments: slippery layers of loose powder have been seen, but no one has measured at which pressure a finger presses through.',
		parameters: [
			{
				field: 'filmCoefficient',
				what: 'friction ratio on the film',
				unit: '1',
				start: 0.4,
				range: [0.1, 0.8],
				status: 'assumed',
				source: []
			},
			{ ...coefficient(0.75, [0.2, 1.5]), status: 'assumed' },
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
		],
		source: ['li2001', 'fuss2012chalk', 'carre2012', 'persson2013'],
		status: 'assumed'
	}
];
