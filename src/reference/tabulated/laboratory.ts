import type { TabulatedRow } from '../types.ts';

/** Coefficients from one laboratory’s engineering page, with what films do. */
export const laboratoryTable: readonly TabulatedRow[] = [
	{
		key: 'lbl-aluminium-aluminium-dry',
		pair: 'aluminium on aluminium',
		condition: 'dry',
		starting: [1.05, 1.35],
		sliding: [1.4, 1.4],
		source: ['lblFriction'],
		status: 'seen'
	},
	{
		key: 'lbl-aluminium-aluminium-greasy',
		pair: 'aluminium on aluminium',
		condition: 'greasy',
		starting: [0.3, 0.3],
		sliding: null,
		source: ['lblFriction'],
		status: 'seen'
	},
	{
		key: 'lbl-aluminium-mild-steel-dry',
		pair: 'aluminium on mild steel',
		condition: 'dry',
		starting: [0.61, 0.61],
		sliding: [0.47, 0.47],
		source: ['lblFriction'],
		status: 'seen'
	},
	{
		key: 'lbl-brake-material-cast-iron-dry',
		pair: 'brake material on cast iron',
		condition: 'dry',
		starting: [0.4, 0.4],
		sliding: null,
		source: ['lblFriction'],
		status: 'seen'
	},
	{
		key: 'lbl-brake-material-cast-iron-dry-2',
		pair: 'brake material on cast iron (wet)',
		condition: 'dry',
		starting: [0.2, 0.2],
		sliding: null,
		source: ['lblFriction'],
		status: 'seen'
	},
	{
		key: 'lbl-brass-cast-iron-dry',
		pair: 'brass on cast iron',
		condition: 'dry',
		starting: null,
		sliding: [0.3, 0.3],
		source: ['lblFriction'],
		status: 'seen'
	},
	{
		key: 'lbl-brick-wood-dry',
		pair: 'brick on wood',
		condition: 'dry',
		starting: [0.6, 0.6],
		sliding: null,
		source: ['lblFriction'],
		status: 'seen'
	},
	{
		key: 'lbl-bronze-cast-iron-dry',
		pair: 'bronze on cast iron',
		condition: 'dry',
		starting: null,
		sliding: [0.22, 0.22],
		source: ['lblFriction'],
		status: 'seen'
	},
	{
		key: 'lbl-bronze-steel-greasy',
		pair: 'bronze on steel',
		condition: 'greasy',
		starting: [0.16, 0.16],
		sliding: null,
		source: ['lblFriction'],
		status: 'seen'
	},
	{
		key: 'lbl-cadmium-cadmium-dry',
		pair: 'cadmium on cadmium',
		condition: 'dry',
		starting: [0.5, 0.5],
		sliding: null,
		source: ['lblFriction'],
		status: 'seen'
	},
	{
		key: 'lbl-cadmium-cadmium-greasy',
		pair: 'cadmium on cadmium',
		condition: 'greasy',
		starting: [0.05, 0.05],
		sliding: null,
		source: ['lblFriction'],
		status: 'seen'
	},
	{
		key: 'lbl-cadmium-mild-steel-dry',
		pair: 'cadmium on mild steel',
		condition: 'dry',
		starting: null,
		sliding: [0.46, 0.46],
		source: ['lblFriction'],
		status: 'seen'
	},
	{
		key: 'lbl-cast-iron-cast-iron-dry',
		pair: 'cast iron on cast iron',
		condition: 'dry',
		starting: [1.1, 1.1],
		sliding: [0.15, 0.15],
		source: ['lblFriction'],
		status: 'seen'
	},
	{
		key: 'lbl-cast-iron-cast-iron-greasy',
		pair: 'cast iron on cast iron',
		condition: 'greasy',
		starting: null,
		sliding: [0.07, 0.07],
		source: ['lblFriction'],
		status: 'seen'
	},
	{
		key: 'lbl-cast-iron-oak-dry',
		pair: 'cast iron on oak',
		condition: 'dry',
		starting: null,
		sliding: [0.49, 0.49],
		source: ['lblFriction'],
		status: 'seen'
	},
	{
		key: 'lbl-cast-iron-oak-greasy',
		pair: 'cast iron on oak',
		condition: 'greasy',
		starting: null,
		sliding: [0.075, 0.075],
		source: ['lblFriction'],
		status: 'seen'
	},
	{
		key: 'lbl-chromium-chromium-dry',
		pair: 'chromium on chromium',
		condition: 'dry',
		starting: [0.41, 0.41],
		sliding: null,
		source: ['lblFriction'],
		status: 'seen'
	},
	{
		key: 'lbl-chromium-chromium-greasy',
		pair: 'chromium on chromium',
		condition: 'greasy',
		starting: [0.34, 0.34],
		sliding: null,
		source: ['lblFriction'],
		status: 'seen'
	},
	{
		key: 'lbl-copper-cast-iron-dry',
		pair: 'copper on cast iron',
		condition: 'dry',
		starting: [1.05, 1.05],
		sliding: [0.29, 0.29],
		source: ['lblFriction'],
		status: 'seen'
	},
	{
		key: 'lbl-copper-copper-dry',
		pair: 'copper on copper',
		condition: 'dry',
		starting: [1, 1],
		sliding: null,
		source: ['lblFriction'],
		status: 'seen'
	},
	{
		key: 'lbl-copper-copper-greasy',
		pair: 'copper on copper',
		condition: 'greasy',
		starting: [0.08, 0.08],
		sliding: null,
		source: ['lblFriction'],
		status: 'seen'
	},
	{
		key: 'lbl-copper-mild-steel-dry',
		pair: 'copper on mild steel',
		condition: 'dry',
		starting: [0.53, 0.53],
		sliding: [0.36, 0.36],
		source: ['lblFriction'],
		status: 'seen'
	},
	{
		key: 'lbl-copper-mild-steel-greasy',
		pair: 'copper on mild steel',
		condition: 'greasy',
		starting: null,
		sliding: [0.18, 0.18],
		source: ['lblFriction'],
		status: 'seen'
	},
	{
		key: 'lbl-copper-304-stainless-dry',
		pair: 'copper on 304 stainless',
		condition: 'dry',
		starting: [0.23, 0.23],
		sliding: [0.21, 0.21],
		source: ['lblFriction'],
		status: 'seen'
	},
	{
		key: 'lbl-steel-steel-clean-dry-film-table',
		pair: 'steel on steel',
		condition: 'clean dry, film table',
		starting: [0.78, 0.78],
		sliding: null,
		source: ['lblFriction'],
		status: 'seen'
	},
	{
		key: 'lbl-steel-steel-thick-oxide-film',
		pair: 'steel on steel',
		condition: 'thick oxide film',
		starting: [0.27, 0.27],
		sliding: null,
		source: ['lblFriction'],
		status: 'seen'
	},
	{
		key: 'lbl-steel-steel-sulfide-film',
		pair: 'steel on steel',
		condition: 'sulfide film',
		starting: [0.39, 0.39],
		sliding: null,
		source: ['lblFriction'],
		status: 'seen'
	},
	{
		key: 'lbl-copper-copper-clean-dry-film-table',
		pair: 'copper on copper',
		condition: 'clean dry, film table',
		starting: [1.21, 1.21],
		sliding: null,
		source: ['lblFriction'],
		status: 'seen'
	},
	{
		key: 'lbl-copper-copper-thick-oxide-film',
		pair: 'copper on copper',
		condition: 'thick oxide film',
		starting: [0.76, 0.76],
		sliding: null,
		source: ['lblFriction'],
		status: 'seen'
	},
	{
		key: 'lbl-copper-copper-sulfide-film',
		pair: 'copper on copper',
		condition: 'sulfide film',
		starting: [0.74, 0.74],
		sliding: null,
		source: ['lblFriction'],
		status: 'seen'
	}
];
