import type { Citation } from '../types.ts';

/** Tables of coefficients, standards for measuring friction, and studies of how friction is misunderstood. */
export const frictionStandardCitations = {
	lblFriction: {
		authors: 'Lawrence Berkeley National Laboratory, engineering page',
		year: null,
		title: '[coefficients of friction]',
		where: 'www-eng.lbl.gov/~ajdemell/coefficients_of_friction.html',
		how: 'abstract seen'
	},
	ecampusOntario: {
		authors: 'eCampusOntario',
		year: null,
		title: 'Physics Fundamentals, appendix A, table A.1',
		where: 'ecampusontario.pressbooks.pub/physicsfundamentals/back-matter/appendix',
		how: 'abstract seen',
		note: 'Merged cells were read from a text excerpt: check the column before use.'
	},
	tradeChart: {
		authors: '[trade chart]',
		year: null,
		title: 'Coefficient of friction reference chart',
		where: 'schneider-company.com/coefficient-of-friction-reference-chart',
		how: 'abstract seen'
	},
	nordTables: {
		authors: '[engineering tables]',
		year: null,
		title: 'Sliding and rolling resistance',
		where: 'nordengineeringdatabase.com',
		how: 'abstract seen'
	},
	blau2001: {
		authors: 'Blau PJ',
		year: 2001,
		title: 'The significance and use of the friction coefficient',
		where: 'Tribology International 34:585',
		how: 'abstract seen',
		note: 'Title from memory.'
	},
	astmG219: {
		authors: 'ASTM',
		year: 2023,
		title: 'ASTM G219: static coefficient of friction with an inclined plane',
		where: 'ASTM G219-18, G219-23',
		how: 'abstract seen',
		note: 'Scope read, not the standard.'
	},
	astmG115: {
		authors: 'ASTM',
		year: 2018,
		title: 'ASTM G115: choosing a friction test and reporting coefficients',
		where: 'ASTM G115',
		how: 'abstract seen',
		note: 'Scope read, not the standard.'
	},
	tappiT815: {
		authors: 'TAPPI',
		year: null,
		title: 'TAPPI T 815: slide angle of packaging materials',
		where: 'ipstesting.com',
		how: 'abstract seen',
		note: 'Test-house summary read.'
	},
	astmD4918: {
		authors: 'ASTM',
		year: null,
		title: 'ASTM D4918: static coefficient of writing and printing paper, inclined plane',
		where: 'ASTM D4918',
		how: 'abstract seen'
	},
	astmD4521: {
		authors: 'ASTM',
		year: null,
		title: 'ASTM D4521 and D3247: static friction of fibreboard',
		where: 'ASTM D4521, D3247',
		how: 'seen second-hand',
		note: 'Named in the D4918 abstract; which is inclined and which horizontal is from memory.'
	},
	astmD1894: {
		authors: 'ASTM',
		year: 2024,
		title: 'ASTM D1894: plastic film and sheeting, horizontal sled',
		where: 'ASTM D1894',
		how: 'abstract seen',
		note: 'Sled mass and speed from memory.'
	},
	iso8295: {
		authors: 'ISO',
		year: 1995,
		title: 'ISO 8295: plastics film and sheeting, friction',
		where: 'ISO 8295:1995',
		how: 'abstract seen',
		note: 'Sled mass and speed from memory.'
	},
	astmG143: {
		authors: 'ASTM',
		year: 2023,
		title: 'ASTM G143: web on roller friction',
		where: 'ASTM G143',
		how: 'abstract seen',
		note: 'Scope read, not the standard.'
	},
	astmD3108: {
		authors: 'ASTM',
		year: null,
		title: 'ASTM D3108: yarn on a solid',
		where: 'ASTM D3108',
		how: 'title seen'
	},
	iso15113: {
		authors: 'ISO',
		year: null,
		title: 'ISO 15113: frictional properties of rubber',
		where: 'ISO 15113',
		how: 'memory'
	},
	iso15359: {
		authors: 'ISO',
		year: null,
		title: 'ISO 15359: paper and board, friction',
		where: 'ISO 15359',
		how: 'abstract seen'
	},
	tappiT816: {
		authors: 'TAPPI',
		year: null,
		title: 'TAPPI T 816 and T 549: board and paper, horizontal plane',
		where: 'TAPPI T 816, T 549',
		how: 'abstract seen',
		note: 'Test-house summary read.'
	},
	en16165: {
		authors: 'CEN',
		year: 2021,
		title: 'EN 16165: slip resistance of pedestrian surfaces',
		where: 'EN 16165:2021, formerly DIN 51097 and DIN 51130',
		how: 'seen second-hand',
		note: 'Read in trade and insurers’ pages.'
	},
	astmD2047: {
		authors: 'ASTM',
		year: null,
		title: 'ASTM D2047 and C1028: polished floors and tiles',
		where: 'ASTM D2047, C1028 (withdrawn 2014)',
		how: 'seen second-hand'
	},
	kizilcik2021: {
		authors: 'Kızılcık HŞ, et al.',
		year: 2021,
		title: '[review of 42 papers on friction in teaching]',
		where: 'Physical Review Physics Education Research 17, 023107',
		how: 'abstract seen'
	},
	carvalhoSousa2005: {
		authors: 'Carvalho PS, Sousa AS',
		year: 2005,
		title: 'Rotation in secondary school: teaching the effects of frictional force',
		where: 'Physics Education',
		how: 'abstract seen',
		note: 'Year from memory.'
	},
	salazar1990: {
		authors: 'Salazar A, Sánchez-Lavega A, Arriandiaga MA',
		year: 1990,
		title: '[is the frictional force always opposed to the motion?]',
		where: 'Physics Education 25:82',
		how: 'seen second-hand',
		note: 'Details from memory.'
	},
	iopSpark: {
		authors: 'Institute of Physics',
		year: null,
		title: '[some students think friction arises only when there is motion]',
		where: 'spark.iop.org',
		how: 'seen',
		note: 'Cites Clement 1982 and Osborne 1985, which were not read.'
	},
	umassA2L: {
		authors: 'UMass Physics Education Research Group',
		year: null,
		title: 'A2L item 130',
		where: 'new.clickercentral.net/item_0130',
		how: 'seen'
	},
	besson2007: {
		authors: 'Besson U, et al.',
		year: 2007,
		title: '[how to teach friction: experiments and models]',
		where: 'American Journal of Physics 75:1106, doi 10.1119/1.2779881',
		how: 'abstract seen',
		note: 'Page number from memory.'
	},
	rissFriction: {
		authors: '[Korean study, 145 middle-school students]',
		year: null,
		title: '[what students think friction depends on]',
		where: 'riss.kr, control no. 5b1d856b70bea15dffe0bdc3ef48d419',
		how: 'abstract seen'
	},
	corpuz2011: {
		authors: 'Corpuz ED, Rebello NS',
		year: 2011,
		title: '[students’ models of friction at the atomic scale]',
		where: 'Physical Review Special Topics PER 7, 020102',
		how: 'abstract seen',
		note: 'Year from memory.'
	},
	kurnaz2015: {
		authors: 'Kurnaz MA, Ekşi C',
		year: 2015,
		title: '[high-school students’ models of solid friction]',
		where: 'Educational Sciences: Theory and Practice 15(3):787, doi 10.12738/estp.2015.3.2526',
		how: 'abstract seen'
	},
	wangFriction: {
		authors: 'Wang, et al.',
		year: null,
		title: '[598 grade-10 students and the idea of friction as a passive force]',
		where: 'Journal of Baltic Science Education',
		how: 'abstract seen'
	}
} as const satisfies Record<string, Citation>;
