import type { Fact } from './types.ts';

/** Efficiency of a rope turned half round: pull gained over pull given. Measure your own. */
export const pulleys: readonly Fact[] = [
	{
		key: 'carabiner',
		what: 'bare carabiner, 9 mm static rope',
		value: 0.53,
		unit: '1',
		conditions: '10 kg',
		source: ['overTheEdgeRescue'],
		status: 'seen'
	},
	{
		key: 'mini-pulley',
		what: 'mini pulley with a 25 mm sheave, 9 mm static rope',
		value: 0.83,
		unit: '1',
		conditions: '10 kg',
		source: ['overTheEdgeRescue'],
		status: 'seen'
	},
	{
		key: 'small-pulley',
		what: 'small pulley, 11 mm rope',
		value: 0.8,
		unit: '1',
		conditions: 'about',
		source: ['kiipeilytuomas'],
		status: 'seen'
	},
	{
		key: 'large-pulley',
		what: 'larger good pulley, 11 mm rope',
		value: 0.9,
		unit: '1',
		conditions: 'about',
		source: ['kiipeilytuomas'],
		status: 'seen'
	},
	{
		key: 'two-carabiners',
		what: 'loss from a second carabiner beside the first',
		value: 0.13,
		unit: '1',
		conditions:
			'points of efficiency; a pure capstan law forbids it, so take efficiency as measured',
		source: ['kiipeilytuomas'],
		status: 'seen'
	},
	{
		key: 'two-pulls',
		what: 'root of lowering pull over raising pull',
		value: null,
		unit: '1',
		conditions: 'needs no knowledge of the weight',
		source: ['ropelab'],
		status: 'seen'
	}
];
