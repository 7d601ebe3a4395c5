import type { CoefficientRow } from '../types.ts';

const pooled = { kind: 'static', load: '19.6 and 39.2 N pinch', people: 7 } as const;
const pinch = ['buchholz1988', 'umichFrictionData'] as const;

/** Metals, glass, vinyl, paper, leather, and skin in general. */
export const materialCoefficients: readonly CoefficientRow[] = [
	{
		key: 'aluminium-pinch',
		surface: 'aluminium',
		state: 'dry and moist pooled',
		value: 0.38,
		spread: 0.13,
		...pooled,
		source: pinch,
		status: 'seen'
	},
	{
		key: 'aluminium-sliding',
		surface: 'aluminium',
		state: 'natural',
		value: 0.6,
		kind: 'dynamic',
		load: 'mean over 1, 10 and 20 N',
		people: 12,
		source: ['seo2009'],
		status: 'seen',
		note: 'The ratio falls by 46 % from 1 to 20 N.'
	},
	{
		key: 'aluminium-handle',
		surface: 'aluminium handle',
		state: 'bare hand',
		value: 0.5,
		kind: 'not stated',
		load: 'not seen',
		people: 13,
		source: ['handBreakaway2022'],
		status: 'seen',
		note: 'Polyester glove 0.32, latex glove 0.74.'
	},
	{
		key: 'rubber-sliding',
		surface: 'rubber hoses',
		state: 'natural',
		value: 0.9,
		kind: 'dynamic',
		load: 'mean over 1, 10 and 20 N',
		people: 12,
		source: ['seo2009'],
		status: 'seen'
	},
	{
		key: 'smooth-vinyl',
		surface: 'smooth vinyl',
		state: 'dry and moist pooled',
		value: 0.53,
		spread: 0.18,
		...pooled,
		source: pinch,
		status: 'seen'
	},
	{
		key: 'textured-vinyl',
		surface: 'textured vinyl',
		state: 'dry and moist pooled',
		value: 0.5,
		spread: 0.11,
		...pooled,
		source: pinch,
		status: 'seen'
	},
	{
		key: 'suede-dry',
		surface: 'suede',
		state: 'dry',
		value: 0.39,
		spread: 0.06,
		...pooled,
		source: pinch,
		status: 'seen'
	},
	{
		key: 'suede-moist',
		surface: 'suede',
		state: 'moist',
		value: 0.66,
		spread: 0.11,
		...pooled,
		source: pinch,
		status: 'seen'
	},
	{
		key: 'tape-dry',
		surface: 'adhesive tape',
		state: 'dry',
		value: 0.41,
		spread: 0.1,
		...pooled,
		source: pinch,
		status: 'seen'
	},
	{
		key: 'tape-moist',
		surface: 'adhesive tape',
		state: 'moist',
		value: 0.66,
		spread: 0.14,
		...pooled,
		source: pinch,
		status: 'seen'
	},
	{
		key: 'paper-dry',
		surface: 'paper',
		state: 'dry',
		value: 0.27,
		...pooled,
		source: pinch,
		status: 'seen'
	},
	{
		key: 'paper-moist',
		surface: 'paper',
		state: 'moist',
		value: 0.42,
		spread: 0.07,
		...pooled,
		source: pinch,
		status: 'seen'
	},
	{
		key: 'smooth-plates',
		surface: 'polyamide plate to rosin-coated glass, six smooth surfaces',
		state: 'washed and dried',
		value: null,
		range: [0.43, 2.79],
		kind: 'dynamic',
		load: 'light stroke',
		people: 10,
		source: ['smithScott1996'],
		status: 'seen'
	},
	{
		key: 'rail-dry',
		surface: 'five grab-rail metals, palm',
		state: 'dry',
		value: 1.72,
		spread: 0.16,
		kind: 'static',
		load: 'functional grip, normal force inferred',
		people: 30,
		source: ['omeara2002'],
		status: 'seen',
		note: 'High values: the normal force was inferred indirectly.'
	},
	{
		key: 'rail-wet',
		surface: 'five grab-rail metals, palm',
		state: 'wet',
		value: 1.42,
		spread: 0.16,
		kind: 'static',
		load: 'functional grip, normal force inferred',
		people: 30,
		source: ['omeara2002'],
		status: 'seen'
	},
	{
		key: 'rail-soapy',
		surface: 'five grab-rail metals, palm',
		state: 'soapy',
		value: 0.46,
		spread: 0.04,
		kind: 'static',
		load: 'functional grip, normal force inferred',
		people: 30,
		source: ['omeara2002'],
		status: 'seen'
	},
	{
		key: 'glass-pad',
		surface: 'glass',
		state: 'natural finger pad',
		value: null,
		range: [0.4, 0.8],
		kind: 'dynamic',
		load: '0.5 to 3 N',
		people: null,
		source: ['lee2026'],
		status: 'seen',
		note: 'Few people.'
	},
	{
		key: 'glass-lightest',
		surface: 'glass',
		state: 'skin, lowest load',
		value: 14,
		kind: 'not stated',
		load: 'very light',
		people: null,
		source: ['jsme2003'],
		status: 'seen',
		note: 'The highest value; the ratio falls with load.'
	},
	{
		key: 'body-sites-static',
		surface: 'stainless steel, aluminium, polyethylene, PTFE',
		state: 'four body sites, natural',
		value: 0.52,
		kind: 'static',
		load: 'light, portable instrument',
		people: null,
		source: ['veijgen2013'],
		status: 'seen',
		note: 'Median of 450 measurements; steel highest, PTFE lowest.'
	},
	{
		key: 'body-sites-dynamic',
		surface: 'stainless steel, aluminium, polyethylene, PTFE',
		state: 'four body sites, natural',
		value: 0.36,
		kind: 'dynamic',
		load: 'light, portable instrument',
		people: null,
		source: ['veijgen2013'],
		status: 'seen',
		note: 'Median of 450 measurements.'
	},
	{
		key: 'softball',
		surface: 'softball cover, coated leather',
		state: 'bare, natural',
		value: 1.04,
		kind: 'static',
		load: 'not seen',
		people: 14,
		source: ['softballFriction'],
		status: 'seen',
		note: 'Seam 1.07 to 1.16; chalk and rosin lower it.'
	},
	{
		key: 'baseball',
		surface: 'baseball leather',
		state: 'no agent',
		value: 0.78,
		kind: 'static',
		load: 'slope over five force levels',
		people: 1,
		source: ['yamaguchi2022'],
		status: 'seen',
		note: 'One example subject.'
	},
	{
		key: 'dry-skin',
		surface: 'ordinary solids',
		state: 'dry skin',
		value: 0.5,
		range: [0.2, 1],
		kind: 'not stated',
		load: 'review of many studies',
		people: null,
		source: ['derler2012'],
		status: 'seen',
		note: 'Above 0.2 and typically about 0.5, independent of pressure; upper end of the range assumed.'
	},
	{
		key: 'moist-smooth-skin',
		surface: 'smooth solids',
		state: 'moist or wet skin, low pressure',
		value: null,
		range: [1, 5],
		kind: 'not stated',
		load: 'review of many studies; 0.5 to 20 kPa',
		people: null,
		source: ['derler2012', 'exVivoSkin2017'],
		status: 'seen',
		note: 'Typically above 1, rising strongly as pressure falls.'
	},
	{
		key: 'ex-vivo-untreated',
		surface: 'probe on skin ex vivo',
		state: 'untreated',
		value: null,
		range: [0.5, 2.3],
		kind: 'not stated',
		load: '0.5 to 20 kPa',
		people: null,
		source: ['exVivoSkin2017'],
		status: 'seen',
		note: 'The higher value presumably belongs to the lower pressure. Wet 0.65 to 5.5, oiled 0.35 to 0.65.'
	}
];
