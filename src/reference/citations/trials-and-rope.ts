import type { Citation } from '../types.ts';

/** Ropes, pulleys and scales; test protocols and how well tests repeat. */
export const trialsAndRopeCitations = {
	overTheEdgeRescue: {
		authors: '[rope rescue trainers]',
		year: null,
		title: '[pulley and carabiner efficiency test]',
		where: 'overtheedgerescue.com',
		how: 'seen'
	},
	kiipeilytuomas: {
		authors: '[rope technician’s page]',
		year: null,
		title: '[measured pulley efficiencies, 11 mm rope]',
		where: 'kiipeilytuomas.fi',
		how: 'seen'
	},
	ropelab: {
		authors: '[rope laboratory page]',
		year: null,
		title: '[pulley efficiency from a raising and a lowering pull]',
		where: 'ropelab.com.au/pulley-efficiency',
		how: 'seen'
	},
	balas2014: {
		authors: 'Baláš J, et al.',
		year: 2014,
		title: '[hand–arm strength and endurance tests with scales]',
		where: 'Sports Technology 7:151',
		how: 'title seen'
	},
	jcgm100: {
		authors: 'Joint Committee for Guides in Metrology',
		year: 2008,
		title: 'Evaluation of measurement data: guide to the expression of uncertainty in measurement',
		where: 'JCGM 100:2008',
		how: 'memory',
		note: 'Used for: a reading rounded to a step has a spread of step over the square root of twelve; independent spreads add as squares.'
	},
	foamRolling: {
		authors: '[authors not recorded]',
		year: null,
		title: '[foam rolling, pre-exhaustion, stretching before hangs, n = 9]',
		where: 'doaj c11c0ebf',
		how: 'abstract seen'
	},
	parcell2002: {
		authors: 'Parcell AC, et al.',
		year: 2002,
		title: '[rest between isokinetic sets]',
		where: '[journal not recorded]',
		how: 'abstract seen',
		note: 'Authors from memory. Title only besides the result.'
	},
	mtsuThesis: {
		authors: '[author not recorded]',
		year: null,
		title: '[rest of 1, 3 and 5 minutes between isokinetic sets]',
		where: 'Middle Tennessee State University thesis',
		how: 'abstract seen'
	},
	isometricPulls: {
		authors: '[authors not recorded]',
		year: null,
		title: '[ten maximal isometric pulls with gaps of 12.5 to 200 s]',
		where: 'scilit d6328a54',
		how: 'abstract seen'
	},
	frontiers902521: {
		authors: '[authors not recorded]',
		year: 2022,
		title: '[accepting 5 to 7 % force deviation in an endurance task]',
		where: 'Frontiers 902521',
		how: 'abstract seen',
		note: 'Year from memory.'
	},
	pullDown2025: {
		authors: '[authors not recorded]',
		year: 2025,
		title: '[isometric finger pull-down in four body positions: repeatability]',
		where: 'Journal of Sports Sciences, lida.sport-iat.de 4092658',
		how: 'abstract seen'
	},
	nomos490031: {
		authors: '[authors not recorded]',
		year: null,
		title: '[finger strength in four arm positions: repeatability, n = 46]',
		where: 'nomos.is.cuni.cz 490031',
		how: 'abstract seen'
	},
	labott2022: {
		authors: 'Labott BK, et al.',
		year: 2022,
		title: '[one-hand rung sensor: repeatability]',
		where: 'Frontiers 838358',
		how: 'abstract seen'
	},
	edgeSloper2022: {
		authors: '[authors not recorded]',
		year: 2022,
		title: '[edge and sloping hold, two postures, two days]',
		where: 'doi 10.1080/02701367.2022.2035662',
		how: 'abstract seen'
	},
	bergua2018: {
		authors: 'Bergua P, et al.',
		year: 2018,
		title: '[hang time, smallest edge, added weight: repeatability]',
		where: 'doi 10.1080/24748668.2018.1486115',
		how: 'abstract seen'
	},
	mcclean2023: {
		authors: 'McClean ZJ, et al.',
		year: 2023,
		title: '[four-minute all-out finger test: repeatability]',
		where: 'PMC10449326',
		how: 'abstract seen'
	},
	perezCordero2025: {
		authors: 'Pérez-Cordero, et al.',
		year: 2025,
		title: '[systematic review of finger strength tests, 15 studies]',
		where: 'Frontiers 1650198',
		how: 'abstract seen'
	}
} as const satisfies Record<string, Citation>;
