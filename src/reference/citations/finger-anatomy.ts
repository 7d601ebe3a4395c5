import type { Citation } from '../types.ts';

/** Bones, joints, tendons and pulleys of the fingers; hand sizes and their scaling. */
export const fingerAnatomyCitations = {
	buryanovKotiuk2010: {
		authors: 'Buryanov A, Kotiuk V',
		year: 2010,
		title: 'Proportions of hand segments',
		where: 'International Journal of Morphology 28(3)',
		how: 'seen second-hand',
		note: 'Read as transcribed in a public file.'
	},
	chatzioglou2024: {
		authors: 'Chatzıoglou, et al.',
		year: 2024,
		title: '[finger lengths from photographs, n = 51]',
		where: '[journal not recorded]',
		how: 'abstract seen'
	},
	buchholz1992: {
		authors: 'Buchholz B, Armstrong TJ, Goldstein SA',
		year: 1992,
		title: 'Anthropometric data for describing the kinematics of the human hand',
		where: 'Ergonomics',
		how: 'abstract seen',
		note: 'Title from memory. The percentages of hand length are from memory.'
	},
	buchholz1991: {
		authors: 'Buchholz B, Armstrong TJ',
		year: 1991,
		title: '[an ellipsoidal representation of human hand anthropometry]',
		where: 'Human Factors',
		how: 'abstract seen',
		note: 'Title from memory.'
	},
	fischer2024: {
		authors: 'Fischer G, et al.',
		year: 2024,
		title: '[finger joint angles of moving climbers]',
		where: 'Bioengineering 11:370',
		how: 'abstract seen'
	},
	diagnostics2020: {
		authors: '[authors not recorded]',
		year: 2020,
		title: '[pulley injuries of climbers: mechanism and diagnosis]',
		where: 'Diagnostics 10:206, mdpi.com/2075-4418/10/4/206',
		how: 'seen'
	},
	ketchum1978: {
		authors: 'Ketchum LD, et al.',
		year: 1978,
		title: '[moment arms of the finger flexors]',
		where: '[journal not recorded]',
		how: 'seen second-hand',
		note: 'Read as tabulated in a hand-biomechanics tutorial page.'
	},
	brandHollister1993: {
		authors: 'Brand PW, Hollister AM',
		year: 1993,
		title: 'Clinical Mechanics of the Hand',
		where: 'Mosby',
		how: 'seen second-hand',
		note: 'Relative forces read as tabulated beside the Ketchum arms.'
	},
	an1983: {
		authors: 'An KN, et al.',
		year: 1983,
		title: 'Tendon excursion and moment arm of index finger muscles',
		where: 'Journal of Biomechanics 16:419',
		how: 'memory'
	},
	fingerMomentArms: {
		authors: '[authors not recorded]',
		year: null,
		title: '[moment arms and leverage of the human finger muscles]',
		where: 'discovery.researcher.life',
		how: 'abstract seen',
		note: 'Nine cadaver forearms.'
	},
	lee2015: {
		authors: 'Lee, et al.',
		year: 2015,
		title: '[spread of measured tendon moment arms between people]',
		where: 'PLOS ONE e0121712',
		how: 'abstract seen'
	},
	vigouroux2006: {
		authors: 'Vigouroux L, et al.',
		year: 2006,
		title:
			'Estimation of finger muscle tendon tensions and pulley forces during specific sport-climbing grip techniques',
		where: 'Journal of Biomechanics 39:2583',
		how: 'abstract seen',
		note: 'Title from memory. The tables (angles, tensions, pulley loads) were not reached; the 0.88 ratio and the 36 and 4 times figures are from memory.'
	},
	schoffl2009: {
		authors: 'Schöffl I, et al.',
		year: 2009,
		title: 'The influence of the crimp and slope grip position on the finger pulley system',
		where: 'Journal of Biomechanics 42:2183',
		how: 'abstract seen',
		note: 'Title from memory.'
	},
	schweizer2001: {
		authors: 'Schweizer A',
		year: 2001,
		title: 'Biomechanical properties of the crimp grip position in rock climbers',
		where: 'Journal of Biomechanics',
		how: 'abstract seen',
		note: 'Title from memory.'
	},
	marco1998: {
		authors: 'Marco RAW, et al.',
		year: 1998,
		title: 'Pathomechanics of closed rupture of the flexor tendon pulleys in rock climbers',
		where: 'Journal of Bone and Joint Surgery',
		how: 'abstract seen',
		note: 'Title from memory.'
	},
	lin1990: {
		authors: 'Lin GT, et al.',
		year: 1990,
		title: 'Mechanical properties of human pulleys',
		where: 'Journal of Hand Surgery',
		how: 'abstract seen',
		note: 'Title from memory. No newtons in the abstract; failure figures are from memory.'
	},
	mallo2008: {
		authors: 'Mallo GC, et al.',
		year: 2008,
		title: '[strength of the A2 and A4 pulleys by digit and sex]',
		where: '[journal not recorded]',
		how: 'abstract seen'
	},
	tendonFriction2014: {
		authors: '[authors not recorded]',
		year: 2014,
		title: '[friction between flexor tendon and pulley]',
		where: 'arXiv 1401.5232',
		how: 'abstract seen'
	},
	ansur2: {
		authors: 'United States Army',
		year: 2012,
		title: 'Anthropometric Survey (ANSUR II), public release',
		where:
			'4082 men, 1986 women; files at github.com/coleharlow12/ANSURDataAnalysis, commit c313806694ded58195024eb34dcafc8cefb26eb2',
		how: 'seen',
		note: 'Year from memory. Percentiles and exponents computed from the raw files.'
	},
	peters2009: {
		authors: 'Peters RM, et al.',
		year: 2009,
		title: '[small fingers feel finer detail, n = 100]',
		where: '[journal not recorded]',
		how: 'seen second-hand',
		note: 'News reports read.'
	},
	nevill2021: {
		authors: 'Nevill AM, et al.',
		year: 2021,
		title: '[scaling handgrip strength for body size, n = 8690]',
		where: 'wlv.openrepository.com 624298',
		how: 'abstract seen'
	},
	judoScaling2020: {
		authors: '[authors not recorded]',
		year: 2020,
		title: '[mass exponents of strength in judo athletes and others]',
		where: 'e-jer.org',
		how: 'abstract seen'
	},
	handSizeGrip: {
		authors: '[authors not recorded]',
		year: null,
		title: '[hand size and grip strength, n = 100]',
		where: 'hal-02358790',
		how: 'abstract seen'
	},
	fransson1991: {
		authors: 'Fransson C, Winkel J',
		year: 1991,
		title: '[hand strength, grip span and sex]',
		where: 'Ergonomics',
		how: 'abstract seen'
	}
} as const satisfies Record<string, Citation>;
