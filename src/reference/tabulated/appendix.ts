import type { TabulatedRow } from '../types.ts';

/** Coefficients from the appendix of an open textbook; single values may belong to either column. */
export const appendixTable: readonly TabulatedRow[] = [
	{
		key: 'eco-aluminium-aluminium-clean-dry',
		pair: 'aluminium on aluminium',
		condition: 'clean dry',
		starting: [1.05, 1.35],
		sliding: [0.4, 0.4],
		source: ['ecampusOntario'],
		status: 'seen'
	},
	{
		key: 'eco-aluminium-aluminium-lubricated',
		pair: 'aluminium on aluminium',
		condition: 'lubricated',
		starting: [0.3, 0.3],
		sliding: null,
		source: ['ecampusOntario'],
		status: 'seen'
	},
	{
		key: 'eco-aluminium-mild-steel-clean-dry',
		pair: 'aluminium on mild steel',
		condition: 'clean dry',
		starting: [0.61, 0.61],
		sliding: [0.47, 0.47],
		source: ['ecampusOntario'],
		status: 'seen'
	},
	{
		key: 'eco-aluminium-snow-wet-0-c',
		pair: 'aluminium on snow',
		condition: 'wet 0 C',
		starting: [0.4, 0.4],
		sliding: null,
		source: ['ecampusOntario'],
		status: 'seen'
	},
	{
		key: 'eco-aluminium-snow-dry-0-c',
		pair: 'aluminium on snow',
		condition: 'dry 0 C',
		starting: [0.35, 0.35],
		sliding: null,
		source: ['ecampusOntario'],
		status: 'seen'
	},
	{
		key: 'eco-brass-steel-clean-dry',
		pair: 'brass on steel',
		condition: 'clean dry',
		starting: [0.51, 0.51],
		sliding: [0.44, 0.44],
		source: ['ecampusOntario'],
		status: 'seen'
	},
	{
		key: 'eco-brass-steel-grease',
		pair: 'brass on steel',
		condition: 'grease',
		starting: [0.19, 0.19],
		sliding: null,
		source: ['ecampusOntario'],
		status: 'seen'
	},
	{
		key: 'eco-brass-ice-0-c',
		pair: 'brass on ice',
		condition: '0 C',
		starting: [0.02, 0.02],
		sliding: null,
		source: ['ecampusOntario'],
		status: 'seen'
	},
	{
		key: 'eco-brass-ice-80-c',
		pair: 'brass on ice',
		condition: '-80 C',
		starting: [0.15, 0.15],
		sliding: null,
		source: ['ecampusOntario'],
		status: 'seen'
	},
	{
		key: 'eco-brick-wood-clean-dry',
		pair: 'brick on wood',
		condition: 'clean dry',
		starting: [0.6, 0.6],
		sliding: null,
		source: ['ecampusOntario'],
		status: 'seen'
	},
	{
		key: 'eco-cast-iron-cast-iron-clean-dry',
		pair: 'cast iron on cast iron',
		condition: 'clean dry',
		starting: [1.1, 1.1],
		sliding: [0.15, 0.15],
		source: ['ecampusOntario'],
		status: 'seen'
	},
	{
		key: 'eco-cast-iron-oak-clean-dry',
		pair: 'cast iron on oak',
		condition: 'clean dry',
		starting: [0.49, 0.49],
		sliding: null,
		source: ['ecampusOntario'],
		status: 'seen'
	},
	{
		key: 'eco-cast-iron-steel-clean-dry',
		pair: 'cast iron on steel',
		condition: 'clean dry',
		starting: [0.4, 0.4],
		sliding: [0.23, 0.23],
		source: ['ecampusOntario'],
		status: 'seen'
	},
	{
		key: 'eco-car-tyre-asphalt-clean-dry',
		pair: 'car tyre on asphalt',
		condition: 'clean dry',
		starting: [0.72, 0.72],
		sliding: null,
		source: ['ecampusOntario'],
		status: 'seen'
	},
	{
		key: 'eco-car-tyre-grass-clean-dry',
		pair: 'car tyre on grass',
		condition: 'clean dry',
		starting: [0.35, 0.35],
		sliding: null,
		source: ['ecampusOntario'],
		status: 'seen'
	},
	{
		key: 'eco-carbon-steel-clean-dry',
		pair: 'carbon on steel',
		condition: 'clean dry',
		starting: [0.14, 0.14],
		sliding: null,
		source: ['ecampusOntario'],
		status: 'seen'
	},
	{
		key: 'eco-copper-copper-clean-dry',
		pair: 'copper on copper',
		condition: 'clean dry',
		starting: [1.6, 1.6],
		sliding: null,
		source: ['ecampusOntario'],
		status: 'seen'
	},
	{
		key: 'eco-copper-copper-grease',
		pair: 'copper on copper',
		condition: 'grease',
		starting: [0.08, 0.08],
		sliding: null,
		source: ['ecampusOntario'],
		status: 'seen'
	},
	{
		key: 'eco-copper-cast-iron-clean-dry',
		pair: 'copper on cast iron',
		condition: 'clean dry',
		starting: [1.05, 1.05],
		sliding: [0.29, 0.29],
		source: ['ecampusOntario'],
		status: 'seen'
	},
	{
		key: 'eco-copper-steel-clean-dry',
		pair: 'copper on steel',
		condition: 'clean dry',
		starting: [0.53, 0.53],
		sliding: [0.36, 0.36],
		source: ['ecampusOntario'],
		status: 'seen'
	},
	{
		key: 'eco-copper-glass-clean-dry',
		pair: 'copper on glass',
		condition: 'clean dry',
		starting: [0.68, 0.68],
		sliding: [0.53, 0.53],
		source: ['ecampusOntario'],
		status: 'seen'
	},
	{
		key: 'eco-diamond-diamond-clean-dry',
		pair: 'diamond on diamond',
		condition: 'clean dry',
		starting: [0.1, 0.1],
		sliding: null,
		source: ['ecampusOntario'],
		status: 'seen'
	}
];
