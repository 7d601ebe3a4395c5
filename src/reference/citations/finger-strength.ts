import type { Citation } from '../types.ts';

/** Finger force, sharing among fingers, endurance. */
export const fingerStrengthCitations = {
	quaine2003: {
		authors: 'Quaine F, Vigouroux L, Martin L',
		year: 2003,
		title: 'Finger flexors fatigue in trained rock climbers and untrained sedentary subjects',
		where: 'International Journal of Sports Medicine 24:424, doi 10.1055/s-2003-41174',
		how: 'abstract seen',
		note: 'Title from memory.'
	},
	quaine2003postures: {
		authors: 'Quaine F, Vigouroux L, Martin L',
		year: 2003,
		title: 'Effect of simulated rock climbing finger postures on force sharing among the fingers',
		where: 'Clinical Biomechanics 18:385',
		how: 'memory'
	},
	quaine2011: {
		authors: 'Quaine F, et al.',
		year: 2011,
		title: '[the thumb on the index nail in climbing grips]',
		where: 'doi s-0030-1267230 (Thieme)',
		how: 'abstract seen'
	},
	amca2012depth: {
		authors: 'Amca AM, et al.',
		year: 2012,
		title: 'Effect of hold depth and grip technique on maximal finger forces in rock climbing',
		where: 'Journal of Sports Sciences 30:669',
		how: 'abstract seen',
		note: 'Title from memory. End points read; cell means and polynomials not.'
	},
	schweizerHudek2011: {
		authors: 'Schweizer A, Hudek R',
		year: 2011,
		title: 'Kinetics of crimp and slope grip in rock climbing',
		where: 'Journal of Applied Biomechanics 27:116',
		how: 'abstract seen',
		note: 'Title from memory.'
	},
	ciss2025: {
		authors: '[authors not recorded]',
		year: 2025,
		title: '[open hand against half crimp on a 23 mm rung, three levels]',
		where: 'Current Issues in Sport Science, doi 10.36950/2025.10ciss005',
		how: 'abstract seen'
	},
	stien2019: {
		authors: 'Stien N, et al.',
		year: 2019,
		title:
			'Comparison of climbing-specific strength and endurance between lead and boulder climbers',
		where: 'PLOS ONE 14:e0222529',
		how: 'abstract seen',
		note: 'Title from memory.'
	},
	buraas2025: {
		authors: 'Buraas, et al.',
		year: 2025,
		title: '[finger strength on a 22 mm edge and climbing level]',
		where: 'European Journal of Applied Physiology, PMC12479556',
		how: 'abstract seen'
	},
	normative2025: {
		authors: '[authors not recorded]',
		year: 2025,
		title: '[finger-hang strength and endurance, 307 climbers]',
		where: 'Journal of Sports Sciences 43:245',
		how: 'abstract seen'
	},
	levernier2017: {
		authors: 'Levernier G, Laffaye G',
		year: 2017,
		title:
			'Four weeks of finger grip training increases the rate of force development and the maximal force in elite and top world-ranking climbers',
		where: 'Journal of Strength and Conditioning Research',
		how: 'abstract seen',
		note: 'Title from memory.'
	},
	soderqvist2024: {
		authors: 'Söderqvist, et al.',
		year: 2024,
		title: '[finger force in six grips read from a force plate, and bouldering level]',
		where: 'International Journal of Sports Physiology and Performance',
		how: 'abstract seen'
	},
	macleod2007: {
		authors: 'MacLeod D, et al.',
		year: 2007,
		title:
			'Physiological determinants of climbing-specific finger endurance and sport rock climbing performance',
		where: 'Journal of Sports Sciences 25:1433',
		how: 'memory'
	},
	li2002: {
		authors: 'Li Z-M',
		year: 2002,
		title: 'The influence of wrist position on individual finger forces during forceful grip',
		where: 'Journal of Hand Surgery 27A:886',
		how: 'abstract seen',
		note: 'Title from memory.'
	},
	zatsiorsky1998: {
		authors: 'Zatsiorsky VM, Li Z-M, Latash ML',
		year: 1998,
		title:
			'Coordinated force production in multi-finger tasks: finger interaction and neural network modeling',
		where: 'Biological Cybernetics',
		how: 'abstract seen',
		note: 'Title from memory.'
	},
	rohmertBernard: {
		authors: 'Bernard TE (after Rohmert)',
		year: null,
		title: 'Design of Static Muscle Work',
		where: 'Handout, scribd 606249607',
		how: 'seen',
		note: 'The curve is Rohmert’s as printed in the handout; Rohmert’s own paper was not read.'
	},
	armFatigueReport: {
		authors: '[authors not recorded]',
		year: null,
		title: '[public report on arm fatigue: a smooth endurance curve]',
		where: '[public report]',
		how: 'seen'
	},
	nioshShoulder: {
		authors: '[authors not recorded]',
		year: null,
		title: '[static shoulder endurance against the Rohmert curve]',
		where: 'cdc.gov/niosh/nioshtic-2/20037558',
		how: 'abstract seen'
	},
	enduranceReview1994: {
		authors: '[authors not recorded]',
		year: 1994,
		title: '[review of endurance curves for static work]',
		where: 'PubMed 8119257',
		how: 'abstract seen'
	},
	freyLawAvin2010: {
		authors: 'Frey-Law LA, Avin KG',
		year: 2010,
		title: 'Endurance time is joint-specific: a modelling and meta-analysis investigation',
		where: 'Ergonomics, PMC2891087',
		how: 'abstract seen',
		note: 'Title from memory. The coefficients themselves were not seen.'
	},
	freyLaw2012: {
		authors: 'Frey-Law LA, Looft JM, Heitsman J',
		year: 2012,
		title:
			'A three-compartment muscle fatigue model accurately predicts joint-specific maximum endurance times for sustained isometric tasks',
		where: 'Journal of Biomechanics, PMC3397684',
		how: 'abstract seen',
		note: 'Title and authors from memory.'
	},
	xiaFreyLaw2008: {
		authors: 'Xia T, Frey-Law LA',
		year: 2008,
		title: 'A theoretical approach for modeling peripheral muscle fatigue and recovery',
		where: 'Journal of Biomechanics',
		how: 'memory'
	},
	rakshit2021: {
		authors: 'Rakshit R, et al.',
		year: 2021,
		title: '[three-compartment fatigue parameters by muscle group and sex]',
		where: 'Journal of Biomechanics, doi 10.1016/j.jbiomech.2021.110695',
		how: 'seen second-hand',
		note: 'Read as printed in public simulation code that cites it.'
	},
	balas2024: {
		authors: 'Baláš J, et al.',
		year: 2024,
		title: '[critical force of the finger flexors, all-out test]',
		where: 'European Journal of Applied Physiology, doi 10.1007/s00421-024-05490-7',
		how: 'abstract seen'
	},
	giles2021: {
		authors: 'Giles D, et al.',
		year: 2021,
		title: '[critical force and climbing grade, 129 climbers]',
		where: 'International Journal of Sports Physiology and Performance, ijspp.2020-0637',
		how: 'abstract seen'
	},
	giles2019: {
		authors: 'Giles D, et al.',
		year: 2019,
		title: '[two-arm critical force]',
		where: '[journal not recorded]',
		how: 'memory'
	},
	vigourouxQuaine2006: {
		authors: 'Vigouroux L, Quaine F',
		year: 2006,
		title:
			'Fingertip force and electromyography of finger flexor muscles during a prolonged intermittent exercise in elite climbers and sedentary individuals',
		where: 'Journal of Sports Sciences, hal-01781399',
		how: 'abstract seen',
		note: 'Title from memory.'
	}
} as const satisfies Record<string, Citation>;
