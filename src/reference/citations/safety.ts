import type { Citation } from '../types.ts';

/** Injuries, growth plates, anchors. */
export const safetyCitations = {
	schoffl2003: {
		authors: 'Schöffl V, et al.',
		year: 2003,
		title: 'Pulley injuries in rock climbers',
		where: 'Wilderness and Environmental Medicine, S1080-6032(03)70539-0',
		how: 'abstract seen',
		note: 'Title from memory.'
	},
	crowley2012: {
		authors: 'Crowley TP',
		year: 2012,
		title: 'The flexor tendon pulley system and rock climbing',
		where: 'PMC3371120',
		how: 'abstract seen',
		note: 'Title and authors from memory.'
	},
	warmeBrooks2000: {
		authors: 'Warme WJ, Brooks D',
		year: 2000,
		title: 'The effect of circumferential taping on flexor tendon pulley failure in rock climbers',
		where: 'American Journal of Sports Medicine',
		how: 'abstract seen',
		note: 'Title from memory.'
	},
	hTaping2022: {
		authors: '[authors not recorded]',
		year: 2022,
		title: '[H-taping of pulleys, 112 tests]',
		where: 'Journal of Hand Surgery',
		how: 'abstract seen'
	},
	hochholzer2005: {
		authors: 'Hochholzer T, Schöffl VR',
		year: 2005,
		title: 'Epiphyseal fractures of the finger middle joints in young sport climbers',
		where: 'Wilderness and Environmental Medicine',
		how: 'abstract seen',
		note: 'Title from memory.'
	},
	bartschi2019: {
		authors: 'Bärtschi N, et al.',
		year: 2019,
		title: '[growth-plate injuries of the fingers in 28 climbers]',
		where: 'qxmd 31103479',
		how: 'abstract seen',
		note: 'Authors from memory.'
	},
	jones2022: {
		authors: 'Jones G, et al.',
		year: 2022,
		title: '[finger growth-plate injury in adolescent climbers]',
		where: '[journal not recorded]',
		how: 'abstract seen'
	},
	morrison2007: {
		authors: 'Morrison AB, Schöffl VR',
		year: 2007,
		title: 'Physiological responses to rock climbing in young climbers',
		where: 'British Journal of Sports Medicine 41:852',
		how: 'abstract seen',
		note: 'Title from memory.'
	},
	uiaaYouth: {
		authors: 'International Climbing and Mountaineering Federation, medical commission',
		year: null,
		title: '[advice on finger growth and training of young climbers]',
		where: '[quoted text]',
		how: 'seen second-hand'
	},
	meyersYouth: {
		authors: 'Meyers RN, et al.',
		year: null,
		title: '[what 267 youth climbers knew about growth-plate injury]',
		where: '[journal not recorded]',
		how: 'seen second-hand'
	},
	saeterbakken2024: {
		authors: 'Saeterbakken AH, et al.',
		year: 2024,
		title: '[strength training for climbers: review]',
		where: '[journal not recorded]',
		how: 'abstract seen',
		note: 'Says that the effect of strength training on injury prevention remains to be fully elucidated.'
	},
	oshaAnchors: {
		authors: '[paraphrase of United States fall-arrest rules]',
		year: null,
		title: '[anchor strength for fall arrest]',
		where: 'govur.com',
		how: 'seen second-hand',
		note: 'A fall-arrest rule, not a design rule for hanging from holds.'
	}
} as const satisfies Record<string, Citation>;
