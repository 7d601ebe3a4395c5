import type { Citation } from '../types.ts';

/** Hands on holds, handles and balls; rock; powder; grip at body weight. */
export const holdFrictionCitations = {
	amca2012: {
		authors: 'Amca AM, et al.',
		year: 2012,
		title: 'The effect of chalk on the finger–hold friction coefficient in rock climbing',
		where: 'Sports Biomechanics 11:473, doi 10.1080/14763141.2012.724700',
		how: 'abstract seen',
		note: 'Title from memory. Eleven climbers, 42 sessions, tilting hold at body weight; percentages read, absolute ratios not.'
	},
	magazineRockFriction: {
		authors: '[climbing magazine]',
		year: null,
		title: 'Friction and perfect climbing conditions',
		where: 'lafabriqueverticale.com/en/friction-perfect-climbing-conditions',
		how: 'seen second-hand',
		note: 'A magazine summary that prints 0.64 for limestone and 0.74 for sandstone. Their quotient agrees with the percentage in Amca 2012, so they are very probably that study’s bare-hand means.'
	},
	li2001: {
		authors: 'Li F-X, Margetts S, Fowler I',
		year: 2001,
		title: 'Use of ‘chalk’ in rock climbing: sine qua non or myth?',
		where: 'Journal of Sports Sciences 19:427',
		how: 'abstract seen',
		note: 'Title from memory.'
	},
	fuss2012chalk: {
		authors: 'Fuss FK, Niegl G',
		year: 2012,
		title: 'The importance of friction between hand and hold in rock climbing',
		where: 'Sports Technology 5:90, doi 10.1080/19346182.2012.755539',
		how: 'abstract seen',
		note: 'Title and authors from memory. One author missing in the excerpt.'
	},
	fuss2012grips: {
		authors: 'Fuss FK, et al.',
		year: 2012,
		title: '[finger load distribution in different types of climbing grips]',
		where: 'Sports Technology 5:151, doi 10.1080/19346182.2012.755540',
		how: 'abstract seen',
		note: 'Authors from memory.'
	},
	gripDifficulty2012: {
		authors: '[authors not recorded]',
		year: 2012,
		title: '[grip difficulty of a climbing hold with increasing slope]',
		where: 'discovery.researcher.life 99116ac1',
		how: 'abstract seen'
	},
	fuss2020: {
		authors: 'Fuss FK, et al.',
		year: 2020,
		title: '[fourteen surfaces on an instrumented climbing hold]',
		where: 'Frontiers in Psychology 11:252, doi 10.3389/fpsyg.2020.00252',
		how: 'abstract seen',
		note: 'Ratios applied by climbers, not limits.'
	},
	carre2012: {
		authors: 'Carré MJ, et al.',
		year: 2012,
		title: '[grip agents on steel and sandstone, finger rig]',
		where: '[journal not recorded]',
		how: 'abstract seen',
		note: 'Title and authors from memory.'
	},
	clarke2024: {
		authors: 'Clarke A, et al.',
		year: 2024,
		title: '[chalk on four rocks at 5, 10 and 15 N]',
		where:
			'Proceedings of the Institution of Mechanical Engineers P, doi 10.1177/17543371241272903',
		how: 'abstract seen'
	},
	clarke2024poster: {
		authors: 'Clarke A, et al.',
		year: 2024,
		title: '[poster on the same rock tests]',
		where: 'Loughborough repository 27258000',
		how: 'abstract seen'
	},
	kilgas2016: {
		authors: 'Kilgas MA',
		year: 2016,
		title: '[chalk, hang time and friction]',
		where: 'MSc thesis, Northern Michigan University, commons.nmu.edu/theses/50',
		how: 'abstract seen',
		note: 'Authors and year from memory.'
	},
	yamaguchi2020: {
		authors: 'Yamaguchi T, et al.',
		year: 2020,
		title: '[powder of rosin and magnesium carbonate between finger and leather]',
		where: 'Frontiers in Sports and Active Living 2:30, doi 10.3389/fspor.2020.00030',
		how: 'abstract seen'
	},
	yamaguchi2022: {
		authors: 'Yamaguchi T, Nasu D, Masani K',
		year: 2022,
		title: 'Effect of grip-enhancing agents on sliding friction between a fingertip and a baseball',
		where: 'Communications Materials 3:92, nature.com s43246-022-00317-4',
		how: 'abstract seen',
		note: 'Title from memory. Figure 1 caption.'
	},
	softballFriction: {
		authors: '[authors not recorded]',
		year: null,
		title: '[finger friction with softballs]',
		where: 'discovery.researcher.life 5f5b3f7c',
		how: 'abstract seen'
	},
	bourne2011: {
		authors: 'Bourne R, et al.',
		year: 2011,
		title: 'Measuring lifting forces in rock climbing: effect of hold size and fingertip structure',
		where: 'Journal of Applied Biomechanics 27:40',
		how: 'abstract seen',
		note: 'Title from memory.'
	},
	young2009: {
		authors: 'Young JG, et al.',
		year: 2009,
		title:
			'Hand–handhold coupling: effect of handle shape, orientation, and friction on breakaway strength',
		where: 'Human Factors 51:705',
		how: 'abstract seen',
		note: 'Title from memory.'
	},
	handBreakaway2022: {
		authors: '[authors not recorded]',
		year: 2022,
		title: '[models of hand breakaway from handles]',
		where: 'PMC8887815',
		how: 'abstract seen',
		note: 'Year from memory.'
	}
} as const satisfies Record<string, Citation>;
