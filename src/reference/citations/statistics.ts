import type { Citation } from '../types.ts';

/** Models, starting guesses, adaptive choice of loads, worked data sets. */
export const statisticsCitations = {
	nistStrd: {
		authors: 'NIST Information Technology Laboratory',
		year: null,
		title: 'Statistical Reference Datasets (StRD)',
		where: 'itl.nist.gov/div898/strd; numbers read in public repositories named beside the tests',
		how: 'seen second-hand'
	},
	wichmannHill2001: {
		authors: 'Wichmann FA, Hill NJ',
		year: 2001,
		title: 'The psychometric function: I. Fitting, sampling, and goodness of fit',
		where: 'Perception and Psychophysics, docslib.org/doc/11357927',
		how: 'seen',
		note: 'Title from memory.'
	},
	prins2012: {
		authors: 'Prins N',
		year: 2012,
		title: '[lapse rates and bias in fitted thresholds and slopes]',
		where: 'Journal of Vision, article 2192299',
		how: 'abstract seen',
		note: 'Authors and year from memory.'
	},
	prins2013: {
		authors: 'Prins N',
		year: 2013,
		title: '[adaptive trials with a free lapse rate]',
		where: 'Journal of Vision, article 2140969',
		how: 'abstract seen',
		note: 'Authors and year from memory.'
	},
	tsiatis1975: {
		authors: 'Tsiatis A',
		year: 1975,
		title: 'A nonidentifiability aspect of the problem of competing risks',
		where: 'Proceedings of the National Academy of Sciences 72:20',
		how: 'abstract seen',
		note: 'Title from memory.'
	},
	gelman2008: {
		authors: 'Gelman A, et al.',
		year: 2008,
		title:
			'A weakly informative default prior distribution for logistic and other regression models',
		where: 'Annals of Applied Statistics, docslib.org/doc/958639',
		how: 'abstract seen',
		note: 'Title from memory.'
	},
	ghosh2018: {
		authors: 'Ghosh J, Li Y, Mitra R',
		year: 2018,
		title: 'On the use of Cauchy prior distributions for Bayesian logistic regression',
		where: 'Bayesian Analysis',
		how: 'abstract seen',
		note: 'Title, authors and year from memory.'
	},
	kontsevichTyler1999: {
		authors: 'Kontsevich LL, Tyler CW',
		year: 1999,
		title: 'Bayesian adaptive estimation of psychometric slope and threshold',
		where: 'Vision Research, christophertyler.org/CWTyler/Pubtopics/PsiMethod/Psi.html',
		how: 'abstract seen',
		note: 'Title and year from memory.'
	},
	minimumEntropy2008: {
		authors: '[authors not recorded]',
		year: 2008,
		title: '[choosing the next stimulus by least expected entropy]',
		where: 'arXiv 0809.0387',
		how: 'abstract seen',
		note: 'Year from memory.'
	},
	adaptiveVision: {
		authors: '[authors not recorded]',
		year: null,
		title: '[adaptive estimation by expected information]',
		where: 'Journal of Vision, article 2121942',
		how: 'abstract seen'
	},
	adaptiveHearing: {
		authors: '[authors not recorded]',
		year: null,
		title: '[one-step and two-step look-ahead; entropy against variance]',
		where: 'Imperial College London, natural and machine hearing 820237',
		how: 'abstract seen'
	},
	neyer1994: {
		authors: 'Neyer BT',
		year: 1994,
		title: '[a sensitivity test that places levels at 1.138 spreads either side]',
		where: '[secondary source]',
		how: 'seen second-hand',
		note: 'Year from memory.'
	},
	ewoc2017: {
		authors: '[authors not recorded]',
		year: 2017,
		title: '[dose escalation with overdose control: feasibility bound]',
		where: 'PMC5985932',
		how: 'abstract seen',
		note: 'Year from memory.'
	},
	ewoc2022: {
		authors: '[authors not recorded]',
		year: 2022,
		title: '[weaknesses of escalation with overdose control]',
		where: 'PMC8932137',
		how: 'abstract seen',
		note: 'Year from memory.'
	},
	looLimits2020: {
		authors: 'Sivula T, Magnusson M, Vehtari A',
		year: 2020,
		title: 'Uncertainty in Bayesian leave-one-out cross-validation based model comparison',
		where: 'arXiv 2008.10296',
		how: 'abstract seen',
		note: 'Title and authors from memory.'
	},
	firth1993: {
		authors: 'Firth D',
		year: 1993,
		title: 'Bias reduction of maximum likelihood estimates',
		where: 'Biometrika',
		how: 'memory'
	},
	heinzeSchemper2002: {
		authors: 'Heinze G, Schemper M',
		year: 2002,
		title: 'A solution to the problem of separation in logistic regression',
		where: 'Statistics in Medicine',
		how: 'seen second-hand',
		note: 'Title from memory. The endometrial data as shipped with the R package brglm2 0.9.'
	},
	bliss1935: {
		authors: 'Bliss CI',
		year: 1935,
		title: '[beetles and carbon disulphide]',
		where:
			'Data and the logit fit as printed at sci.usq.edu.au/staff/dunn/glmlab/glhtml/html/gli_30.html',
		how: 'seen second-hand',
		note: 'That page misprints the seventh count as 60; its results are those for 61.'
	},
	faraway2016: {
		authors: 'Faraway JJ',
		year: 2016,
		title: '[insects killed at five doses: three links]',
		where:
			'As printed at stat.nthu.edu.tw/~swcheng/Teaching/stat5230/lab/02.04_BinomialData_LinkFunction.html',
		how: 'seen second-hand',
		note: 'Year from memory.'
	},
	rSurvival: {
		authors: 'Therneau TM',
		year: 2022,
		title: 'R package survival 3.5-3 with its data sets',
		where: 'Debian r-cran-survival',
		how: 'seen'
	},
	rMass: {
		authors: 'Venables WN, Ripley BD',
		year: 2002,
		title: 'R package MASS 7.3-58.2 with its data sets',
		where: 'Debian r-cran-mass',
		how: 'seen'
	},
	doganaksoy2002: {
		authors: 'Doganaksoy N, Hahn GJ, Meeker WQ',
		year: 2002,
		title: '[two failure modes of a device under voltage]',
		where: 'Data as printed in SAS documentation, qcug 63964',
		how: 'seen second-hand'
	},
	meekerEscobar1998: {
		authors: 'Meeker WQ, Escobar LA',
		year: 1998,
		title: 'Statistical Methods for Reliability Data',
		where: 'Counts of cracks and turbine wheels as printed in SAS documentation, relgs4',
		how: 'seen second-hand',
		note: 'Title from memory.'
	},
	dixonMood1948: {
		authors: 'Dixon WJ, Mood AM',
		year: 1948,
		title: 'A method for obtaining and analyzing sensitivity data',
		where: 'Journal of the American Statistical Association',
		how: 'memory'
	},
	kassRaftery1995: {
		authors: 'Kass RE, Raftery AE',
		year: 1995,
		title: 'Bayes factors',
		where: 'Journal of the American Statistical Association',
		how: 'memory'
	},
	babb1998: {
		authors: 'Babb J, Rogatko A, Zacks S',
		year: 1998,
		title: 'Cancer phase I clinical trials: efficient dose escalation with overdose control',
		where: 'Statistics in Medicine',
		how: 'memory'
	},
	albertAnderson1984: {
		authors: 'Albert A, Anderson JA',
		year: 1984,
		title: 'On the existence of maximum likelihood estimates in logistic regression models',
		where: 'Biometrika',
		how: 'memory'
	},
	kosmidisFirth2021: {
		authors: 'Kosmidis I, Firth D',
		year: 2021,
		title:
			'Jeffreys-prior penalty, finiteness and shrinkage in binomial-response generalized linear models',
		where: 'Biometrika',
		how: 'memory'
	},
	hoeting1999: {
		authors: 'Hoeting JA, et al.',
		year: 1999,
		title: 'Bayesian model averaging: a tutorial',
		where: 'Statistical Science',
		how: 'memory'
	},
	gelman2013: {
		authors: 'Gelman A, et al.',
		year: 2013,
		title: 'Bayesian Data Analysis, third edition',
		where: 'Chapman and Hall/CRC; data seen in A. Vehtari’s public course demonstrations',
		how: 'seen second-hand',
		note: 'The printed estimates are from memory.'
	},
	gorla2017: {
		authors: 'Gorla',
		year: 2017,
		title: '[up-and-down dose data, tables 6 and 9]',
		where: 'As printed in the vignette of the R package upndown',
		how: 'seen second-hand'
	}
} as const satisfies Record<string, Citation>;
