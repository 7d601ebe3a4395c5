import type { TabulatedRow } from '../types.ts';

/** Coefficients from trade charts. */
export const tradeTable: readonly TabulatedRow[] = [
	{
		key: 'schn-glass-metal-clean-dry',
		pair: 'glass on metal',
		condition: 'clean dry',
		starting: [0.5, 0.7],
		sliding: null,
		source: ['tradeChart'],
		status: 'seen'
	},
	{
		key: 'schn-glass-metal-lubricated',
		pair: 'glass on metal',
		condition: 'lubricated',
		starting: [0.2, 0.3],
		sliding: null,
		source: ['tradeChart'],
		status: 'seen'
	},
	{
		key: 'schn-glass-nickel-clean-dry',
		pair: 'glass on nickel',
		condition: 'clean dry',
		starting: [0.78, 0.78],
		sliding: null,
		source: ['tradeChart'],
		status: 'seen'
	},
	{
		key: 'schn-graphite-steel-clean-dry',
		pair: 'graphite on steel',
		condition: 'clean dry',
		starting: [0.1, 0.1],
		sliding: null,
		source: ['tradeChart'],
		status: 'seen'
	},
	{
		key: 'schn-iron-iron-clean-dry',
		pair: 'iron on iron',
		condition: 'clean dry',
		starting: [1, 1],
		sliding: null,
		source: ['tradeChart'],
		status: 'seen'
	},
	{
		key: 'schn-iron-iron-lubricated',
		pair: 'iron on iron',
		condition: 'lubricated',
		starting: [0.15, 0.2],
		sliding: null,
		source: ['tradeChart'],
		status: 'seen'
	},
	{
		key: 'schn-leather-metal-clean-dry',
		pair: 'leather on metal',
		condition: 'clean dry',
		starting: [0.4, 0.4],
		sliding: null,
		source: ['tradeChart'],
		status: 'seen'
	},
	{
		key: 'schn-aluminium-bronze-steel-clean-dry',
		pair: 'aluminium / bronze / steel',
		condition: 'clean dry',
		starting: [0.45, 0.45],
		sliding: null,
		source: ['tradeChart'],
		status: 'seen'
	},
	{
		key: 'nord-steel-steel-dry',
		pair: 'steel on steel',
		condition: 'dry',
		starting: [0.5, 0.8],
		sliding: null,
		source: ['nordTables'],
		status: 'seen',
		note: 'The table does not say whether starting or sliding.'
	},
	{
		key: 'nord-steel-steel-greased',
		pair: 'steel on steel',
		condition: 'greased',
		starting: [0.04, 0.24],
		sliding: null,
		source: ['nordTables'],
		status: 'seen',
		note: 'The table does not say whether starting or sliding.'
	},
	{
		key: 'nord-wood-steel-dry',
		pair: 'wood on steel',
		condition: 'dry',
		starting: [0.3, 0.6],
		sliding: null,
		source: ['nordTables'],
		status: 'seen',
		note: 'The table does not say whether starting or sliding.'
	},
	{
		key: 'nord-wood-wood-dry',
		pair: 'wood on wood',
		condition: 'dry',
		starting: [0.3, 0.5],
		sliding: null,
		source: ['nordTables'],
		status: 'seen',
		note: 'The table does not say whether starting or sliding.'
	},
	{
		key: 'nord-wood-wood-greased',
		pair: 'wood on wood',
		condition: 'greased',
		starting: [0.18, 0.35],
		sliding: null,
		source: ['nordTables'],
		status: 'seen',
		note: 'The table does not say whether starting or sliding.'
	},
	{
		key: 'nord-steel-polymer-dry',
		pair: 'steel on polymer',
		condition: 'dry',
		starting: [0.2, 0.45],
		sliding: null,
		source: ['nordTables'],
		status: 'seen',
		note: 'The table does not say whether starting or sliding.'
	}
];
