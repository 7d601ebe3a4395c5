import type { TabulatedRow } from '../types.ts';

/** Coefficients as textbooks print them. */
export const textbookTable: readonly TabulatedRow[] = [
	{
		key: 'up-rubber-on-dry-concrete-not-stated',
		pair: 'rubber on dry concrete',
		condition: 'not stated',
		starting: [1, 1],
		sliding: [0.7, 0.7],
		source: ['openstaxUniversityPhysics'],
		status: 'seen'
	},
	{
		key: 'up-rubber-on-wet-concrete-not-stated',
		pair: 'rubber on wet concrete',
		condition: 'not stated',
		starting: [0.5, 0.7],
		sliding: [0.3, 0.5],
		source: ['openstaxUniversityPhysics'],
		status: 'seen'
	},
	{
		key: 'up-wood-on-wood-not-stated',
		pair: 'wood on wood',
		condition: 'not stated',
		starting: [0.5, 0.5],
		sliding: [0.3, 0.3],
		source: ['openstaxUniversityPhysics'],
		status: 'seen'
	},
	{
		key: 'up-waxed-wood-on-wet-snow-not-stated',
		pair: 'waxed wood on wet snow',
		condition: 'not stated',
		starting: [0.14, 0.14],
		sliding: [0.1, 0.1],
		source: ['openstaxUniversityPhysics'],
		status: 'seen'
	},
	{
		key: 'up-metal-on-wood-not-stated',
		pair: 'metal on wood',
		condition: 'not stated',
		starting: [0.5, 0.5],
		sliding: [0.3, 0.3],
		source: ['openstaxUniversityPhysics'],
		status: 'seen'
	},
	{
		key: 'up-steel-on-steel-dry',
		pair: 'steel on steel',
		condition: 'dry',
		starting: [0.6, 0.6],
		sliding: [0.3, 0.3],
		source: ['openstaxUniversityPhysics'],
		status: 'seen'
	},
	{
		key: 'up-steel-on-steel-oiled',
		pair: 'steel on steel',
		condition: 'oiled',
		starting: [0.05, 0.05],
		sliding: [0.03, 0.03],
		source: ['openstaxUniversityPhysics'],
		status: 'seen'
	},
	{
		key: 'up-ptfe-on-steel-not-stated',
		pair: 'PTFE on steel',
		condition: 'not stated',
		starting: [0.04, 0.04],
		sliding: [0.04, 0.04],
		source: ['openstaxUniversityPhysics'],
		status: 'seen'
	},
	{
		key: 'up-bone-with-synovial-fluid-not-stated',
		pair: 'bone with synovial fluid',
		condition: 'not stated',
		starting: [0.016, 0.016],
		sliding: [0.015, 0.015],
		source: ['openstaxUniversityPhysics'],
		status: 'seen'
	},
	{
		key: 'up-shoes-on-wood-not-stated',
		pair: 'shoes on wood',
		condition: 'not stated',
		starting: [0.9, 0.9],
		sliding: [0.7, 0.7],
		source: ['openstaxUniversityPhysics'],
		status: 'seen'
	},
	{
		key: 'up-shoes-on-ice-not-stated',
		pair: 'shoes on ice',
		condition: 'not stated',
		starting: [0.1, 0.1],
		sliding: [0.05, 0.05],
		source: ['openstaxUniversityPhysics'],
		status: 'seen'
	},
	{
		key: 'up-ice-on-ice-not-stated',
		pair: 'ice on ice',
		condition: 'not stated',
		starting: [0.1, 0.1],
		sliding: [0.03, 0.03],
		source: ['openstaxUniversityPhysics'],
		status: 'seen'
	},
	{
		key: 'up-steel-on-ice-not-stated',
		pair: 'steel on ice',
		condition: 'not stated',
		starting: [0.04, 0.04],
		sliding: [0.02, 0.02],
		source: ['openstaxUniversityPhysics'],
		status: 'seen'
	},
	{
		key: 'cp-rubber-on-wet-concrete-not-stated',
		pair: 'rubber on wet concrete',
		condition: 'not stated',
		starting: [0.7, 0.7],
		sliding: [0.5, 0.5],
		source: ['openstaxCollegePhysics'],
		status: 'seen'
	},
	{
		key: 'hsp-steel-on-ice-not-stated',
		pair: 'steel on ice',
		condition: 'not stated',
		starting: [0.4, 0.4],
		sliding: null,
		source: ['openstaxPhysics'],
		status: 'seen',
		note: 'Ten times the figure of the same publisher’s two other books.'
	},
	{
		key: 'lm-climbing-shoe-rubber-on-rough-granite-slab-quoted',
		pair: 'climbing-shoe rubber on rough granite slab (table-top estimate credited to S. Won)',
		condition: 'quoted',
		starting: [1.17, 1.17],
		sliding: null,
		source: ['crowell'],
		status: 'seen'
	},
	{
		key: 'lm-granite-on-granite-quoted',
		pair: 'granite on granite (civil-engineering figure quoted)',
		condition: 'quoted',
		starting: [0.6, 0.6],
		sliding: null,
		source: ['crowell'],
		status: 'seen'
	},
	{
		key: 'lm-gecko-inspired-fibre-surface-quoted',
		pair: 'gecko-inspired fibre surface (roughly the highest quoted)',
		condition: 'quoted',
		starting: [5, 5],
		sliding: null,
		source: ['crowell'],
		status: 'seen'
	}
];
