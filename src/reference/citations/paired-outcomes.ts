import type { Citation } from '../types.ts';

/** Paired yes-or-no outcomes, and how people misjudge small samples. */
export const pairedOutcomeCitations = {
	fagerland2013: {
		authors: 'Fagerland MW, Lydersen S, Laake P',
		year: 2013,
		title:
			'The McNemar test for binary matched-pairs data: mid-p and asymptotic are better than exact conditional',
		where: 'BMC Medical Research Methodology 13:91, doi 10.1186/1471-2288-13-91; supplement',
		how: 'abstract seen',
		note: 'Of the supplement the formulas were read.'
	},
	fagerlandBook2017: {
		authors: 'Fagerland MW, Lydersen S, Laake P',
		year: 2017,
		title: 'Statistical Analysis of Contingency Tables',
		where: 'CRC Press; its examples as printed by the public R package contingencytables',
		how: 'seen second-hand',
		note: 'Title and year from memory.'
	},
	laneHyperstat: {
		authors: 'Lane DM',
		year: null,
		title: 'HyperStat Online: sign test',
		where: 'davidmlane.com/hyperstat/B168076.html',
		how: 'seen'
	},
	conover1999: {
		authors: 'Conover WJ',
		year: 1999,
		title: 'Practical Nonparametric Statistics, third edition',
		where: 'Wiley',
		how: 'memory'
	},
	tverskyKahneman1971: {
		authors: 'Tversky A, Kahneman D',
		year: 1971,
		title: 'Belief in the law of small numbers',
		where: 'Psychological Bulletin 76:105',
		how: 'memory'
	}
} as const satisfies Record<string, Citation>;
