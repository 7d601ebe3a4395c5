import { describe, expect, test } from 'vitest';
import { gaussLegendre } from '#core/statistics/gauss-legendre.ts';
import { expectedInformation } from '#core/statistics/information.ts';
import { integrate } from '#core/statistics/integrate.ts';
import { covarianceOf } from '#core/statistics/lattice-sum.ts';
import type { LineDensity } from '#core/statistics/line-density.ts';
import { linkPoint } from '#core/statistics/links.ts';
import { logChance } from '#core/statistics/log-chance-table.ts';
import { logChoose } from '#core/statistics/log-factorial.ts';
import { normalCdf } from '#core/statistics/normal.ts';
import { within } from '#test/within.ts';
import cases from './cases.json' with { type: 'json' };

// Closed forms, and the published bioassay (sources and tolerances in README.md).
const halfLogTwoPi = 0.5 * Math.log(2 * Math.PI);

/** ln ∫ θ^a (1 − θ)^b dθ over 0 to 1 through θ = sin²(v), where half powers are smooth too. */
function logBetaIntegral(a: number, b: number): number {
	const rule = gaussLegendre(120, 0, Math.PI / 2);
	const sum = rule.points.reduce(
		(total, v, k) =>
			total + rule.weights[k]! * 2 * Math.sin(v) ** (2 * a + 1) * Math.cos(v) ** (2 * b + 1),
		0
	);
	return Math.log(sum);
}

describe('evidence against conjugate closed forms', () => {
	test.each(cases.beta_binomial)('$k of $n', (c) => {
		const [a, b] = c.prior as [number, number];
		const prior = logBetaIntegral(a - 1, b - 1);
		const sequence = logBetaIntegral(a - 1 + c.k, b - 1 + c.n - c.k) - prior;
		within(sequence, c.log_evidence_sequence, { relative: 1e-10 });
		within(sequence + logChoose(c.n, c.k), c.log_evidence_count, { relative: 1e-9 });
		const mean = logBetaIntegral(a + c.k, b - 1 + c.n - c.k) - prior - sequence;
		within(Math.exp(mean), c.mean, { relative: 1e-10 });
		const square = logBetaIntegral(a + 1 + c.k, b - 1 + c.n - c.k) - prior - sequence;
		within(Math.sqrt(Math.exp(square) - c.mean ** 2), c.sd, { relative: 1e-8 });
	});

	test('evidence of a fair coin against any coin', () => {
		const { k, n, log_m0, log_m1, log_bf10 } = cases.bayes_factor_closed_form;
		within(n * Math.log(0.5), log_m0, { relative: 1e-12 });
		within(logBetaIntegral(k, n - k), log_m1, { relative: 1e-10 });
		within(logBetaIntegral(k, n - k) - n * Math.log(0.5), log_bf10, { relative: 1e-9 });
	});

	test('evidence of two chances against one', () => {
		for (const c of cases.bayes_factor_closed_form.two_proportions) {
			const [f1, f2] = [c.n1 - c.k1, c.n2 - c.k2];
			const apart = logBetaIntegral(c.k1, f1) + logBetaIntegral(c.k2, f2);
			const same = logBetaIntegral(c.k1 + c.k2, f1 + f2);
			within(apart - same, c.log_bf_different, { relative: 1e-9 });
		}
	});
});

describe('expected information against closed forms', () => {
	test.each(cases.eig_closed_forms.cases)('a step at $x, flipped with $eps', ({ x, eps, eig }) => {
		const below = gaussLegendre(4, 0, x);
		const above = gaussLegendre(4, x, 1);
		const information = expectedInformation(
			[...below.weights, ...above.weights],
			[...below.points.map(() => 1 - eps), ...above.points.map(() => eps)]
		);
		within(information, eig, { relative: 1e-10 });
	});

	test.each(cases.eig_closed_forms.beta_cases)('a coin with Beta($a, $b)', ({ a, b, eig }) => {
		const rule = gaussLegendre(200, 0, Math.PI / 2);
		const heights = rule.points.map(
			(v, k) => rule.weights[k]! * Math.sin(v) ** (2 * a - 1) * Math.cos(v) ** (2 * b - 1)
		);
		const total = heights.reduce((sum, height) => sum + height, 0);
		const chances = rule.points.map((v) => Math.sin(v) ** 2);
		within(
			expectedInformation(
				heights.map((h) => h / total),
				chances
			),
			eig,
			{ relative: 1e-8 }
		);
	});
});

describe('one probit trial on a normal threshold', () => {
	test.each(cases.probit_threshold_normal_prior_closed_form.cases)('x = $x', (c) => {
		const update = (yes: boolean) => {
			const { lattice, sum } = integrate({
				start: [c.prior_mean],
				scale: [c.prior_sd],
				enter: () => undefined,
				at: (mu) => {
					const z = (c.x - mu) / c.spread;
					const d = (mu - c.prior_mean) / c.prior_sd;
					return logChance(yes ? z : -z, 0) - (d * d) / 2 - halfLogTwoPi - Math.log(c.prior_sd);
				}
			} satisfies LineDensity);
			return { ...sum, covariance: covarianceOf(lattice, sum) };
		};
		const one = update(true);
		within(Math.exp(one.logEvidence), c.predictive, { relative: 1e-6 });
		within(one.mean[0]!, c.post_mean_if_1, { relative: 1e-6 });
		within(one.covariance[0]![0]!, c.post_var_if_1, { relative: 1e-6 });
		within(update(false).mean[0]!, c.post_mean_if_0, { relative: 1e-6 });
	});
});

describe('the bioassay of Bayesian Data Analysis, section 3.7', () => {
	const { data, mle } = cases.bda3_bioassay;
	const logLikelihood = (alpha: number, beta: number): number =>
		data.log_dose.reduce((sum, dose, k) => {
			const at = linkPoint('logit', alpha + beta * dose);
			const [n, y] = [data.n[k]!, data.deaths[k]!];
			return sum + (y ? y * at.logYes : 0) + (n - y ? (n - y) * at.logNo : 0);
		}, 0);
	const withPrior = (logPrior: (alpha: number, beta: number) => number) => {
		let beta = 0;
		const { lattice, sum } = integrate({
			start: [mle.beta, mle.alpha],
			scale: [mle.se[1]!, mle.se[0]!],
			enter: ([b]) => (beta = b!),
			at: (alpha) => logLikelihood(alpha, beta) + logPrior(alpha, beta)
		});
		return { ...sum, lattice, covariance: covarianceOf(lattice, sum) };
	};
	type Answer = {
		mean_alpha: number;
		mean_beta: number;
		sd_alpha: number;
		sd_beta: number;
		corr: number;
		log_evidence: number;
	};
	const compare = (sum: ReturnType<typeof withPrior>, answer: Answer): void => {
		const [[bb, ba], [, aa]] = sum.covariance as [[number, number], [number, number]];
		within(sum.mean[1]!, answer.mean_alpha, { relative: 1e-6 });
		within(sum.mean[0]!, answer.mean_beta, { relative: 1e-6 });
		within(Math.sqrt(aa), answer.sd_alpha, { relative: 1e-6 });
		within(Math.sqrt(bb), answer.sd_beta, { relative: 1e-6 });
		within(ba / Math.sqrt(aa * bb), answer.corr, { relative: 1e-6 });
		within(sum.logEvidence, answer.log_evidence, { relative: 1e-6 });
	};
	const bell = (x: number, mean: number, sd: number): number =>
		-(((x - mean) / sd) ** 2) / 2 - halfLogTwoPi - Math.log(sd);

	test('flat starting guess', () => {
		compare(
			withPrior(() => 0),
			cases.bda3_bioassay.flat_prior_wide_box
		);
	});
	test('independent normal starting guesses', () => {
		compare(
			withPrior((alpha, beta) => bell(alpha, 0, 2) + bell(beta, 10, 10)),
			cases.bda3_bioassay.normal_prior_a0sd2_b10sd10_independent
		);
	});
	test('the correlated starting guess of exercise 3.11', () => {
		// α ~ N(0, 2²), β ~ N(10, 10²), covariance 12, so correlation 0.6.
		const given = (alpha: number, beta: number): number =>
			bell(alpha, 0, 2) + bell(beta, 10 + 0.6 * 10 * (alpha / 2), 10 * Math.sqrt(1 - 0.6 ** 2));
		compare(withPrior(given), cases.bda3_bioassay.bda3_ex3_11_bivariate_normal_prior);
	});
	test('the sign of the slope is as sure as printed', () => {
		const { lattice, weights } = withPrior((a, b) => bell(a, 0, 2) + bell(b, 10, 10));
		let below = 0;
		for (let line = 0; line + 1 < lattice.starts.length; line += 1)
			if (lattice.outerValues[line]! <= 0)
				for (let k = lattice.starts[line]!; k < lattice.starts[line + 1]!; k += 1)
					below += weights[k]!;
		expect(below).toBeLessThan(2e-5);
	});
});

describe('two-point designs from the information of one trial', () => {
	const best = (link: 'logit' | 'probit', power: number, squared: boolean): number => {
		const value = (z: number): number => {
			const w = linkPoint(link, z).information;
			return (squared ? w * w : w) * z ** power;
		};
		let [low, high] = [0.2, 5];
		for (let round = 0; round < 200; round += 1) {
			const [a, b] = [low + (high - low) / 3, high - (high - low) / 3];
			if (value(a) < value(b)) low = a;
			else high = b;
		}
		return (low + high) / 2;
	};
	const d = cases.optimal_designs;
	test.each([
		['probit', 'D', d.probit_D],
		['probit', 'slope', d.probit_slope],
		['logit', 'D', d.logit_D],
		['logit', 'slope', d.logit_slope]
	] as const)('%s, %s', (link, kind, answer) => {
		// A flat top: places are found to the square root of rounding.
		within(best(link, 2, kind === 'D'), answer, { relative: 1e-6 });
	});
	test('chances at those places', () => {
		within(normalCdf(d.probit_D), d.probit_D_p, { relative: 1e-9 });
		within(normalCdf(d.probit_slope), d.probit_slope_p, { relative: 1e-9 });
		within(Math.exp(linkPoint('logit', d.logit_D).logYes), d.logit_D_p, { relative: 1e-9 });
		within(Math.exp(linkPoint('logit', d.logit_slope).logYes), d.logit_slope_p, { relative: 1e-9 });
	});
});
