import type { CoefficientRow } from '../types.ts';

const pooled = { kind: 'static', load: '19.6 and 39.2 N pinch', people: 7 } as const;
const pinch = ['buchholz1988', 'umichFrictionData'] as const;

/** Rock, wood, resin, sandpaper: what hands hold on to. */
export const holdCoefficients: readonly CoefficientRow[] = [
	{
		key: 'limestone-bare',
		surface: 'limestone',
		state: 'bare hand',
		value: 0.64,
		kind: 'tilt to slip',
		load: 'body weight',
		people: 11,
		source: ['magazineRockFriction', 'amca2012'],
		status: 'seen',
		note: 'Absolute value from a magazine summary; its ratio to sandstone agrees with the study’s abstract.'
	},
	{
		key: 'sandstone-bare',
		surface: 'sandstone',
		state: 'bare hand',
		value: 0.74,
		kind: 'tilt to slip',
		load: 'body weight',
		people: 11,
		source: ['magazineRockFriction', 'amca2012'],
		status: 'seen',
		note: 'Absolute value from a magazine summary, as for limestone.'
	},
	{
		key: 'limestone-chalked',
		surface: 'limestone',
		state: 'chalked hand',
		value: 0.76,
		kind: 'tilt to slip',
		load: 'body weight',
		people: 11,
		source: ['amca2012', 'magazineRockFriction'],
		status: 'derived',
		note: '0.64 raised by the 18.7 % of the abstract.'
	},
	{
		key: 'sandstone-chalked',
		surface: 'sandstone',
		state: 'chalked hand',
		value: 0.9,
		kind: 'tilt to slip',
		load: 'body weight',
		people: 11,
		source: ['amca2012', 'magazineRockFriction'],
		status: 'derived',
		note: '0.74 raised by the 21.6 % of the abstract.'
	},
	{
		key: 'granite-slate',
		surface: 'granite, slate',
		state: 'dry, wet, chalked',
		value: null,
		kind: 'not stated',
		load: 'rock pulled from the fingertips',
		people: 15,
		source: ['li2001'],
		status: 'seen',
		note: 'Below sandstone; no numbers were seen.'
	},
	{
		key: 'resin',
		surface: 'moulded climbing resin',
		state: 'any',
		value: null,
		kind: 'not stated',
		load: 'body weight',
		people: null,
		source: [],
		status: 'assumed',
		note: 'No value found at body-weight load.'
	},
	{
		key: 'painted-wood',
		surface: 'painted wood',
		state: 'any',
		value: null,
		kind: 'not stated',
		load: 'body weight',
		people: null,
		source: [],
		status: 'assumed',
		note: 'No value found at body-weight load. Wood finishes at light load: gloss far above satin.'
	},
	{
		key: 'wood-finishes',
		surface: 'pine, cherry, maple: raw, shellac, lacquer, polyurethane',
		state: 'dry to moist',
		value: null,
		range: [0.46, 4.8],
		kind: 'static',
		load: 'not seen, probably light',
		people: null,
		source: ['gott2013'],
		status: 'seen',
		note: 'Raw lowest; satin far below gloss; moisture raises. Sliding 0.22 to 5.42.'
	},
	{
		key: 'sandpaper-pinch',
		surface: 'sandpaper, grit 320',
		state: 'dry and moist pooled',
		value: 0.61,
		spread: 0.1,
		...pooled,
		source: pinch,
		status: 'seen'
	},
	{
		key: 'sandpaper-sliding',
		surface: 'sandpaper',
		state: 'natural',
		value: 0.96,
		spread: 0.09,
		kind: 'dynamic',
		load: '4 N',
		people: 12,
		source: ['savescu2008'],
		status: 'seen'
	},
	{
		key: 'instrumented-hold',
		surface: 'fourteen surfaces on an instrumented hold, PTFE to rubber',
		state: 'climbing',
		value: null,
		range: [0.53, 0.84],
		kind: 'applied, not a limit',
		load: 'climbing',
		people: 22,
		source: ['fuss2020'],
		status: 'seen',
		note: 'What people used, not what the surface could give.'
	}
];
