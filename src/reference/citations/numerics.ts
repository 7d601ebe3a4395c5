import type { Citation } from '../types.ts';

/** Handbooks and papers behind the numerical and statistical methods. */
export const numericsCitations = {
	abramowitzStegun1964: {
		authors: 'Abramowitz M, Stegun IA (editors)',
		year: 1964,
		title: 'Handbook of Mathematical Functions',
		where: 'National Bureau of Standards',
		how: 'memory'
	},
	trefethenWeideman2014: {
		authors: 'Trefethen LN, Weideman JAC',
		year: 2014,
		title: 'The exponentially convergent trapezoidal rule',
		where: 'SIAM Review',
		how: 'memory'
	},
	takahasiMori1974: {
		authors: 'Takahasi H, Mori M',
		year: 1974,
		title: 'Double exponential formulas for numerical integration',
		where: 'Publications of the Research Institute for Mathematical Sciences',
		how: 'memory'
	},
	golubVanLoan2013: {
		authors: 'Golub GH, Van Loan CF',
		year: 2013,
		title: 'Matrix Computations, fourth edition',
		where: 'Johns Hopkins University Press',
		how: 'memory'
	},
	nocedalWright2006: {
		authors: 'Nocedal J, Wright SJ',
		year: 2006,
		title: 'Numerical Optimization, second edition',
		where: 'Springer',
		how: 'memory'
	},
	shannon1948: {
		authors: 'Shannon CE',
		year: 1948,
		title: 'A mathematical theory of communication',
		where: 'Bell System Technical Journal',
		how: 'memory'
	},
	lindley1956: {
		authors: 'Lindley DV',
		year: 1956,
		title: 'On a measure of the information provided by an experiment',
		where: 'Annals of Mathematical Statistics',
		how: 'memory'
	},
	durstenfeld1964: {
		authors: 'Durstenfeld R',
		year: 1964,
		title: 'Algorithm 235: random permutation',
		where: 'Communications of the ACM',
		how: 'memory'
	},
	blackmanVigna2021: {
		authors: 'Blackman D, Vigna S',
		year: 2021,
		title: 'Scrambled linear pseudorandom number generators',
		where: 'ACM Transactions on Mathematical Software',
		how: 'memory'
	},
	blanchard2021: {
		authors: 'Blanchard P, Higham DJ, Higham NJ',
		year: 2021,
		title: 'Accurately computing the log-sum-exp and softmax functions',
		where: 'IMA Journal of Numerical Analysis',
		how: 'memory'
	},
	mcCullaghNelder1989: {
		authors: 'McCullagh P, Nelder JA',
		year: 1989,
		title: 'Generalized Linear Models, second edition',
		where: 'Chapman and Hall',
		how: 'memory'
	},
	kalbfleischPrentice2002: {
		authors: 'Kalbfleisch JD, Prentice RL',
		year: 2002,
		title: 'The Statistical Analysis of Failure Time Data, second edition',
		where: 'Wiley',
		how: 'memory'
	},
	pearson1895: {
		authors: 'Pearson K',
		year: 1895,
		title: 'Note on regression and inheritance in the case of two parents',
		where: 'Proceedings of the Royal Society of London',
		how: 'memory'
	}
} as const satisfies Record<string, Citation>;
