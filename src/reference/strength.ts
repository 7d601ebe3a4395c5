import type { Fact } from './types.ts';

/** Published finger forces. A sanity band, not a target. */
export const strengthTotals: readonly Fact[] = [
	{
		key: 'climbers-four-fingers',
		what: 'four-finger fingertip force, one hand',
		value: 420,
		spread: 46,
		unit: 'N',
		conditions: 'ten elite climbers, climbing-type grip',
		source: ['quaine2003'],
		status: 'seen'
	},
	{
		key: 'untrained-four-fingers',
		what: 'four-finger fingertip force, one hand',
		value: 342,
		spread: 56,
		unit: 'N',
		conditions: 'ten untrained people',
		source: ['quaine2003'],
		status: 'seen'
	},
	{
		key: 'by-depth-vertical',
		what: 'vertical force over grips and hold depths',
		value: null,
		range: [350.8, 575.7],
		unit: 'N',
		conditions:
			'ten advanced climbers; slope, half crimp, full crimp on 1, 2, 3, 4 cm; rises with depth',
		source: ['amca2012depth'],
		status: 'seen'
	},
	{
		key: 'by-depth-outward',
		what: 'force away from the wall over grips and hold depths',
		value: null,
		range: [69.9, 138],
		unit: 'N',
		conditions: 'the same tests',
		source: ['amca2012depth'],
		status: 'seen'
	},
	{
		key: 'shallow-and-deep-edges',
		what: 'correlation of force on 2.8 or 4.3 mm with force on 12.5 mm',
		value: 0.1,
		range: [0, 0.1],
		unit: '1',
		conditions: 'under 0.1; fifteen climbers, one hand, sandstone edges',
		source: ['bourne2011'],
		status: 'seen'
	},
	{
		key: 'pulp-and-shallow-edge',
		what: 'correlation of force on a 2.8 mm edge with bone-tip-to-pulp-tip length',
		value: 0.65,
		unit: '1',
		conditions: 'under 0.37 at the other depths',
		source: ['bourne2011'],
		status: 'seen'
	},
	{
		key: 'half-crimp-overestimate',
		what: 'share by which people overestimate their half crimp',
		value: 0.098,
		unit: '1',
		conditions:
			'36 advanced, 23 mm rung; intermediate 0.056, elite 0.063 (not clear of chance); open hand slightly stronger',
		source: ['ciss2025'],
		status: 'seen'
	},
	{
		key: 'ledge-to-large-hold',
		what: 'ledge force over large-hold force',
		value: null,
		range: [0.57, 0.69],
		unit: '1',
		conditions: 'isometric pull-up, 16 boulder and 15 lead climbers',
		source: ['stien2019'],
		status: 'seen'
	},
	{
		key: 'strength-and-grade',
		what: 'correlation of edge strength with boulder grade',
		value: 0.89,
		unit: '1',
		conditions: '19 men, 22 mm edge; body mass against grade −0.49',
		source: ['buraas2025'],
		status: 'seen'
	},
	{
		key: 'strength-explains',
		what: 'share of ability explained by finger strength',
		value: 0.68,
		unit: '1',
		conditions:
			'185 men; 122 women 0.64; no difference of sex once divided by body mass; hang time is mostly strength',
		source: ['normative2025'],
		status: 'seen'
	},
	{
		key: 'half-crimp-explains',
		what: 'share of bouldering grade explained by half-crimp force',
		value: null,
		range: [0.48, 0.58],
		unit: '1',
		conditions:
			'32 men; a 35° sloping hold was among the grips; force read from a plate under the feet',
		source: ['soderqvist2024'],
		status: 'seen'
	},
	{
		key: 'training-gain',
		what: 'gain of slope-grip force in four weeks',
		value: 0.08,
		unit: '1',
		conditions: '14 elite men',
		source: ['levernier2017'],
		status: 'seen'
	},
	{
		key: 'climbers-macleod',
		what: 'greatest finger force',
		value: 485,
		spread: 65,
		unit: 'N',
		conditions: 'eleven climbers; nine others 375 ± 91 N',
		source: ['macleod2007'],
		status: 'memory'
	},
	{
		key: 'body-mass-recreational',
		what: 'one-hand force on an edge of some 20 mm over body weight',
		value: null,
		range: [0.4, 0.6],
		unit: '1',
		conditions: 'recreational',
		source: [],
		status: 'memory'
	},
	{
		key: 'body-mass-advanced',
		what: 'one-hand force on an edge of some 20 mm over body weight',
		value: null,
		range: [0.65, 0.85],
		unit: '1',
		conditions: 'advanced',
		source: [],
		status: 'memory'
	},
	{
		key: 'body-mass-elite',
		what: 'one-hand force on an edge of some 20 mm over body weight',
		value: null,
		range: [0.85, 1.15],
		unit: '1',
		conditions: 'elite',
		source: [],
		status: 'memory'
	},
	{
		key: 'breakaway-high',
		what: 'one-hand breakaway force from an overhead cylinder',
		value: 668,
		spread: 40,
		unit: 'N',
		conditions: 'high friction',
		source: ['young2009'],
		status: 'seen'
	},
	{
		key: 'breakaway-low',
		what: 'one-hand breakaway force from an overhead cylinder',
		value: 552,
		spread: 104,
		unit: 'N',
		conditions: 'simulated low friction; 1.26 times grip strength against 1.58',
		source: ['young2009'],
		status: 'seen'
	}
];
