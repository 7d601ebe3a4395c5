import { describe, expect, test } from 'vitest';
import { fitBinary } from '#core/statistics/fit-binary.ts';
import { fitSurvival } from '#core/statistics/fit-survival.ts';
import { covarianceOf } from '#core/statistics/lattice-sum.ts';
import { jointEvidence } from '#core/trials/joint-evidence.ts';
import { nextTrial } from '#core/trials/next-trial.ts';
import { openingLimit } from '#core/trials/opening-limit.ts';
import { defaultPriors } from '#core/trials/priors.ts';
import { settingsOf } from '#core/trials/settings.ts';
import { binaryEntropy } from '#core/statistics/information.ts';
import { fitOpen, fitSlip, forPredictions } from '#core/trials/stage-fit.ts';
import { openRows } from '#core/trials/open-rows.ts';
import { storyEvidence } from '#core/trials/story-evidence.ts';
import type { Outcome, Story, Trial } from '#core/trials/trial.ts';
import { rowsFor } from '#core/trials/two-stages.ts';
import { within } from '#test/within.ts';
import cases from './cases.json' with { type: 'json' };

// Own second implementation on made-up trials, not an outside check; see README.md.
const relative = 1e-6;
const options = { referenceLoad: 60, bestGuess: 80 };
const source = cases.hang_synthetic_trials;
const trialsWith = (outcomes: string[]): Trial[] =>
	source.load_kg.map((load, k) => ({
		load,
		outcome: (outcomes[k] === 'failed_unknown' ? 'unknown' : outcomes[k]) as Outcome,
		order: source.order_centred_per10[k]!,
		ropeTerm: source.rope_covariate[k]!,
		seconds: source.time_s[k]!
	}));
const trials = trialsWith(source.outcome);
const named: Record<string, Story> = {
	constant: 'constant',
	plus: 'rises',
	minus: 'falls',
	rope: 'rope'
};

test('starting guesses are the ones the answers were computed with', () => {
	expect(defaultPriors.margin).toEqual({ mean: 0, sd: 2 });
	expect(defaultPriors.loadEffectSd).toBe(2.5);
	expect(defaultPriors.lnRopeEffect).toEqual({ mean: Math.log(8), sd: 0.5 });
	expect(defaultPriors.orderEffectSd).toBe(1);
	expect(defaultPriors.lnLimitSd).toBe(0.3);
	expect(defaultPriors.lnSpread).toEqual({ mean: Math.log(0.08), sd: 0.5 });
});

describe('plain fits of the made-up trials, R agreeing', () => {
	test('slip, probit', () => {
		const used = trials.filter(({ outcome }) => outcome !== 'stopped');
		const fit = fitBinary({
			successes: used.map(({ outcome }) => (outcome === 'slipped' ? 0 : 1)),
			trials: used.map(() => 1),
			design: used.map(({ load }) => [1, Math.log(load / 60)]),
			link: 'probit',
			penalty: 'none'
		});
		const answer = cases.hang_ml_binary_slip_probit;
		within(fit.coefficients[0]!, answer.a, { relative });
		within(fit.coefficients[1]!, answer.c, { relative });
		within(fit.logLikelihood, answer.loglik, { relative });
		const limit = 60 * Math.exp(-fit.coefficients[0]! / fit.coefficients[1]!);
		within(limit, answer.lower_limit_50_kg, { relative });
	});

	test('opening, probit', () => {
		const used = trials.filter(({ outcome }) => outcome === 'held' || outcome === 'opened');
		const fit = fitBinary({
			successes: used.map(({ outcome }) => (outcome === 'held' ? 1 : 0)),
			trials: used.map(() => 1),
			design: used.map(({ load }) => [1, Math.log(load / 60)]),
			link: 'probit',
			penalty: 'none'
		});
		const answer = cases.hang_ml_binary_open_probit;
		const spread = -1 / fit.coefficients[1]!;
		within(spread, answer.s, { relative });
		within(fit.coefficients[0]! * spread, answer.u, { relative });
		within(fit.logLikelihood, answer.loglik, { relative });
	});

	test.each(['opened', 'slipped'] as const)('time until %s, log-normal', (cause) => {
		const fit = fitSurvival({
			lower: trials.map(({ seconds }) => seconds!),
			upper: trials.map(({ seconds, outcome }) => (outcome === cause ? seconds! : Infinity)),
			design: trials.map(({ load }) => [1, Math.log(load / 60)]),
			distribution: 'log-normal'
		});
		const answer = cases[`hang_ml_lognormal_aft_${cause}`];
		within(fit.coefficients[0]!, answer.intercept, { relative });
		within(fit.coefficients[1]!, answer.slope, { relative });
		within(fit.scale, answer.sigma, { relative });
		within(fit.logLikelihood, answer.loglik, { relative });
		if (!('spread_s' in answer)) return;
		const [intercept, slope] = fit.coefficients as [number, number];
		within(60 * Math.exp((Math.log(10) - intercept) / slope), answer.upper_limit_50_at_10s_kg, {
			relative
		});
		within(-fit.scale / slope, answer.spread_s, { relative });
	});
});

describe('stories of the 24 trials', () => {
	const { models, equal_prior_weights_8_models: weights } = cases.hang_slip_model_comparison;
	const rows = storyEvidence(trials, options);
	const row = (story: Story, withOrder: boolean) =>
		rows.find((r) => r.story === story && r.withOrder === withOrder)!;

	test.each(Object.entries(models))('%s', (name, answer) => {
		const [short, order] = name.split('+order') as [string, string | undefined];
		const version = { story: named[short]!, withOrder: order !== undefined };
		within(row(version.story, version.withOrder).logEvidence, answer.log_evidence, { relative });

		const settings = settingsOf(options);
		const fit = fitSlip(rowsFor(trials, version, 60), version, settings);
		const { mean } = fit.sum;
		const covariance = covarianceOf(fit.lattice, fit.sum);
		within(mean[mean.length - 1]!, answer.a_mean_sd[0]!, { relative });
		within(Math.sqrt(covariance[mean.length - 1]![mean.length - 1]!), answer.a_mean_sd[1]!, {
			relative
		});
		if ('P_no_slip_by_load_mid_session' in answer) {
			for (const [load, chance] of answer.P_no_slip_by_load_mid_session!) {
				const place = { lnLoad: Math.log(load! / 60), ropeTerm: 0, order: 0 };
				const average = fit.chances(place).reduce((sum, p, k) => sum + p * fit.sum.weights[k]!, 0);
				within(average, chance!, { relative });
			}
		}
	});

	test('shares of the eight that the answers were computed for', () => {
		const eight = rows.filter(({ story }) => Object.values(named).includes(story));
		const total = eight.reduce((sum, { weight }) => sum + weight, 0);
		for (const [name, weight] of Object.entries(weights)) {
			const [short, order] = name.split('+order') as [string, string | undefined];
			const { weight: own } = row(named[short]!, order !== undefined);
			within(own / total, weight, { relative });
		}
	});

	test.each(Object.entries(cases.hang_pair_stories.log_evidence))('%s', (name, answer) => {
		const [story, order] = name.split(' with ') as [Story, string | undefined];
		within(row(story, order !== undefined).logEvidence, answer, { absolute: 5e-6 });
	});
});

describe('stories of the 60 trials', () => {
	const { load, y, order, ropeTerm, log_evidence: answers } = cases.reference_60;
	const sixty: Trial[] = load.map((kg, k) => ({
		load: kg,
		outcome: y[k] ? 'held' : 'slipped',
		order: order[k]!,
		ropeTerm: ropeTerm[k]!
	}));
	const rows = storyEvidence(sixty, { referenceLoad: 60 });
	test.each(Object.entries(answers))('%s', (name, answer) => {
		const [short, withOrder] = name.split('+order') as [string, string | undefined];
		const found = rows.find(
			(r) => r.story === named[short] && r.withOrder === (withOrder !== undefined)
		)!;
		within(found.logEvidence, answer, { relative });
	});
});

describe('the opening limit', () => {
	const answer = cases.hang_upper_limit_binary_posterior;
	test('mean, spread, evidence and quantiles', () => {
		const limit = openingLimit(trials, options);
		within(limit.lnLimitMean - Math.log(60), answer.u_mean, { relative });
		within(limit.lnLimitSd, answer.u_sd, { relative });
		within(limit.logEvidence, answer.log_evidence, { relative });
		const [q05, q50, q95] = answer.upper50_kg_q05_q50_q95 as [number, number, number];
		within(limit.quantiles.q05, q05, { relative: 1e-5 });
		within(limit.quantiles.q50, q50, { relative: 1e-5 });
		within(limit.quantiles.q95, q95, { relative: 1e-5 });
	});

	const settings = settingsOf(options);
	const fit = fitOpen(openRows(trials, 60, 'left-out'), settings, undefined, forPredictions);
	const average = (values: Float64Array): number =>
		values.reduce((sum, value, k) => sum + value * fit.sum.weights[k]!, 0);
	const chancesAt = (load: number) =>
		fit.chances({ lnLoad: Math.log(load / 60), ropeTerm: 0, order: 0 });

	test('spread and chances', () => {
		const { lattice, sum } = fit;
		let spread = 0;
		lattice.inner.forEach((lnSpread, k) => (spread += sum.weights[k]! * Math.exp(lnSpread)));
		within(spread, answer.s_mean, { relative });
		for (const [load, chance] of Object.entries(answer.P_hold_given_no_slip))
			within(average(chancesAt(Number(load))), chance, { relative });
	});

	test('information', () => {
		for (const [load, information] of answer.eig_nats_open_stage_by_load) {
			const chances = chancesAt(load!);
			const own = binaryEntropy(average(chances)) - average(chances.map(binaryEntropy));
			within(own, information!, { relative });
		}
	});
});

test.each(cases.hang_joint_eig_plus_model)('next trial at $load kg', (answer) => {
	const [row] = nextTrial(trials, {
		...options,
		candidates: [{ load: answer.load }],
		ownMaximum: 200,
		adult: true
	});
	within(row!.chanceHeld, answer.P_held, { relative });
	within(row!.chanceSlipped, answer.P_slip, { relative });
	within(row!.chanceOpened, answer.P_open, { relative });
	within(row!.information, answer.eig_total, { relative });
});

describe('two trials of unseen cause', () => {
	const { outcome, log_evidence, u_mean, assignment_posterior: shares } = cases.unknown_cause;
	test('evidence and limit', () => {
		const unseen = trialsWith(outcome);
		within(jointEvidence(unseen, options), log_evidence, { relative });
		within(openingLimit(unseen, options).lnLimitMean - Math.log(60), u_mean, { relative });
	});

	test('each way of naming the causes adds its part', () => {
		const places = outcome.flatMap((o, k) => (o === 'failed_unknown' ? [k] : []));
		for (const [letters, share] of Object.entries(shares)) {
			const told = [...outcome];
			places.forEach((k, j) => (told[k] = letters[j] === 's' ? 'slipped' : 'opened'));
			const part = jointEvidence(trialsWith(told), options) - log_evidence;
			within(Math.exp(part), share, { relative });
		}
	});
});
