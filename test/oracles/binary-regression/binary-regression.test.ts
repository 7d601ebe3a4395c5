import { describe, expect, test } from 'vitest';
import { profileLimits } from '#core/statistics/binary-profile.ts';
import { fitBinary } from '#core/statistics/fit-binary.ts';
import type { LinkName } from '#core/statistics/links.ts';
import { linkPoint } from '#core/statistics/links.ts';
import { within } from '#test/within.ts';
import cases from './cases.json' with { type: 'json' };

// Published data sets; answers from R (sources and tolerances in README.md).
const relative = 1e-6;
const line = (x: number[]): number[][] => x.map((value) => [1, value]);
const ones = (n: number): number[] => new Array<number>(n).fill(1);

const grouped = {
	bliss: {
		successes: cases.bliss1935_beetles.data.killed,
		trials: cases.bliss1935_beetles.data.n,
		design: line(cases.bliss1935_beetles.data.log10dose),
		answers: cases.bliss1935_beetles
	},
	insects: {
		successes: cases.bliss_insects_faraway.data.dead,
		trials: cases.bliss_insects_faraway.data.dead.map(
			(dead, k) => dead + cases.bliss_insects_faraway.data.alive[k]!
		),
		design: line(cases.bliss_insects_faraway.data.conc),
		answers: cases.bliss_insects_faraway
	},
	menarche: {
		successes: cases.menarche_MASS.data.Menarche,
		trials: cases.menarche_MASS.data.Total,
		design: line(cases.menarche_MASS.data.Age),
		answers: cases.menarche_MASS
	}
};

type Answer = {
	coef: number[];
	vcov: number[][];
	deviance: number;
	loglik: number;
	fitted?: number[];
};

describe.each(Object.entries(grouped))('%s against R’s glm', (_, { answers, ...data }) => {
	const links = (['logit', 'probit', 'cloglog'] as const).filter((link) => link in answers);
	test.each(links)('%s', (link) => {
		const answer = (answers as unknown as Record<LinkName, Answer>)[link];
		const fit = fitBinary({ ...data, link, penalty: 'none' });
		expect(fit.converged).toBe(true);
		expect(fit.separated).toBe(false);
		answer.coef.forEach((value, k) => within(fit.coefficients[k]!, value, { relative }));
		answer.vcov.forEach((row, i) =>
			row.forEach((value, j) => within(fit.covariance[i]![j]!, value, { relative }))
		);
		within(fit.deviance, answer.deviance, { relative });
		within(fit.logLikelihood, answer.loglik, { relative });
		answer.fitted?.forEach((value, i) => {
			const eta =
				data.design[i]![0]! * fit.coefficients[0]! + data.design[i]![1]! * fit.coefficients[1]!;
			within(Math.exp(linkPoint(link, eta).logYes), value, { relative });
		});
	});
});

test('the beetles with the misprinted count give the other fit', () => {
	const { data, logit_glmlab_variant_r7_60: answer } = cases.bliss1935_beetles;
	const killed = data.killed.map((count, k) => (k === 6 ? 60 : count));
	const fit = fitBinary({
		successes: killed,
		trials: data.n,
		design: line(data.log10dose),
		link: 'logit',
		penalty: 'none'
	});
	answer.coef.forEach((value, k) => within(fit.coefficients[k]!, value, { relative }));
	answer.se.forEach((value, k) => within(Math.sqrt(fit.covariance[k]![k]!), value, { relative }));
	within(fit.deviance, answer.deviance, { relative });
});

const endometrial = {
	successes: cases.endometrial.data.HG,
	trials: ones(cases.endometrial.data.HG.length),
	design: cases.endometrial.data.HG.map((_, k) => [
		1,
		cases.endometrial.data.NV[k]!,
		cases.endometrial.data.PI[k]!,
		cases.endometrial.data.EH[k]!
	])
};
const separated6 = {
	successes: cases.separated6.data.y,
	trials: ones(6),
	design: line(cases.separated6.data.x_ln_load_over_55)
};

describe('Jeffreys’ penalty against brglm2', () => {
	const modes: [string, LinkName, typeof endometrial, { coef: number[]; se: number[] }][] = [
		['endometrial', 'logit', endometrial, cases.mpl_jeffreys.endometrial_logit],
		['endometrial', 'probit', endometrial, cases.mpl_jeffreys.endometrial_probit],
		['separated six', 'logit', separated6, cases.mpl_jeffreys.separated6_logit],
		['separated six', 'probit', separated6, cases.mpl_jeffreys.separated6_probit],
		['separated six', 'cloglog', separated6, cases.mpl_jeffreys.separated6_cloglog]
	];
	test.each(modes)('%s, %s', (_, link, data, answer) => {
		const fit = fitBinary({ ...data, link, penalty: 'jeffreys' });
		expect(fit.converged).toBe(true);
		expect(fit.separated).toBe(true);
		answer.coef.forEach((value, k) => within(fit.coefficients[k]!, value, { relative }));
		answer.se.forEach((value, k) => within(Math.sqrt(fit.covariance[k]![k]!), value, { relative }));
	});

	test('log likelihood of the penalised logit fits', () => {
		const first = fitBinary({ ...endometrial, link: 'logit', penalty: 'jeffreys' });
		within(first.logLikelihood, cases.endometrial.firth_logit.loglik, { relative });
		const second = fitBinary({ ...separated6, link: 'logit', penalty: 'jeffreys' });
		within(second.logLikelihood, cases.separated6.firth_logit.loglik, { relative });
	});

	test('without a penalty separated data are named, not answered', () => {
		for (const data of [endometrial, separated6]) {
			for (const link of ['logit', 'probit', 'cloglog'] as const) {
				const fit = fitBinary({ ...data, link, penalty: 'none' });
				expect(fit.separated).toBe(true);
				expect(fit.converged).toBe(false);
				expect(fit.coefficients.every(Number.isFinite)).toBe(true);
			}
		}
	});
});

describe('profile limits', () => {
	test('endometrial', () => {
		const answers = Object.values(cases.endometrial.profile_penalised_95);
		answers.forEach(([lower, upper], index) => {
			const limits = profileLimits({ ...endometrial, link: 'logit' }, 'jeffreys', index);
			within(limits[0], lower!, { relative: 1e-5 });
			within(limits[1], upper!, { relative: 1e-5 });
		});
	});

	test('separated six', () => {
		const answers = Object.values(cases.separated6.profile_penalised_95);
		answers.forEach(([lower, upper], index) => {
			const limits = profileLimits({ ...separated6, link: 'logit' }, 'jeffreys', index);
			within(limits[0], lower!, { relative: 1e-5 });
			within(limits[1], upper!, { relative: 1e-5 });
		});
	});
});

describe('closed forms of Jeffreys’ penalty', () => {
	test('a two-by-two table gains half in each cell', () => {
		const { data, closed } = cases.firth_2x2;
		const w = data.w;
		const fit = fitBinary({
			successes: [w[1]!, w[3]!],
			trials: [w[0]! + w[1]!, w[2]! + w[3]!],
			design: [
				[1, 0],
				[1, 1]
			],
			link: 'logit',
			penalty: 'jeffreys'
		});
		closed.forEach((value, k) => within(fit.coefficients[k]!, value, { relative: 1e-9 }));
		// brglm2 worked on 0/1 rows, so its log likelihood leaves out ln C(8, 3).
		within(fit.logLikelihood - Math.log(56), cases.firth_2x2.firth_logit.loglik, {
			relative: 1e-9
		});
	});

	test('one chance alone is (k + ½)/(n + 1)', () => {
		const fit = fitBinary({
			successes: cases.firth_intercept_only.data.y,
			trials: ones(6),
			design: ones(6).map(() => [1]),
			link: 'logit',
			penalty: 'jeffreys'
		});
		within(fit.coefficients[0]!, cases.firth_intercept_only.value, { relative: 1e-9 });
	});
});
