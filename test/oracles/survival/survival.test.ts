import { describe, expect, test } from 'vitest';
import { fitBinary } from '#core/statistics/fit-binary.ts';
import { fitSurvival, type SurvivalFit } from '#core/statistics/fit-survival.ts';
import { gaussLegendre } from '#core/statistics/gauss-legendre.ts';
import type { SurvivalName } from '#core/statistics/survival-shapes.ts';
import { within } from '#test/within.ts';
import cases from './cases.json' with { type: 'json' };

// Published data sets; answers from R's survival package (sources and tolerances in README.md).
const relative = 1e-6;
type Answer = { coef: number | number[]; scale: number; loglik: number; var: number[][] };

function compare(fit: SurvivalFit, answer: Answer): void {
	expect(fit.converged).toBe(true);
	[answer.coef].flat().forEach((value, k) => within(fit.coefficients[k]!, value, { relative }));
	within(fit.scale, answer.scale, { relative });
	within(fit.logLikelihood, answer.loglik, { relative });
	expect(fit.covariance.length).toBe(answer.var.length);
	answer.var.forEach((row, i) =>
		row.forEach((value, j) => within(fit.covariance[i]![j]!, value, { relative }))
	);
}

function rightCensored(times: number[], events: boolean[], columns: number[][]) {
	return {
		lower: times,
		upper: times.map((time, k) => (events[k] ? time : Infinity)),
		design: times.map((_, k) => [1, ...columns.map((column) => column[k]!)])
	};
}

const names: Record<string, SurvivalName> = {
	weibull: 'weibull',
	lognormal: 'log-normal',
	loglogistic: 'log-logistic',
	exponential: 'exponential',
	weibull_intercept_only: 'weibull',
	lognormal_intercept_only: 'log-normal',
	weibull_temp_volt: 'weibull',
	lognormal_temp_volt: 'log-normal'
};

function fitsIn(block: object): [string, Answer][] {
	return Object.entries(block).filter(([name]) => name in names) as [string, Answer][];
}

describe('right-censored times', () => {
	const { ovarian, aml_leukemia: aml, gehan_6mp: gehan, capacitor } = cases;
	const events = (status: number[]): boolean[] => status.map((s) => s === 1);
	test.each(fitsIn(ovarian))('ovarian, %s', (name, answer) => {
		const { futime, fustat, rx } = ovarian.data;
		const columns = name.endsWith('intercept_only') ? [] : [ovarian.data['ecog.ps'], rx];
		compare(
			fitSurvival({
				...rightCensored(futime, events(fustat), columns),
				distribution: names[name]!
			}),
			answer
		);
	});
	test.each(fitsIn(aml))('leukaemia, %s', (name, answer) => {
		const x = aml.data.x.map((group) => (group === 'Nonmaintained' ? 1 : 0));
		compare(
			fitSurvival({
				...rightCensored(aml.data.time, events(aml.data.status), [x]),
				distribution: names[name]!
			}),
			answer
		);
	});
	test.each(fitsIn(gehan))('remission, %s', (name, answer) => {
		compare(
			fitSurvival({
				...rightCensored(gehan.data.time, events(gehan.data.event), []),
				distribution: names[name]!
			}),
			answer
		);
	});
	test('remission: the exponential rate is events over total time', () => {
		const fit = fitSurvival({
			...rightCensored(gehan.data.time, events(gehan.data.event), []),
			distribution: 'exponential'
		});
		within(Math.exp(-fit.coefficients[0]!), 9 / 359, { relative: 1e-9 });
		within(fit.logLikelihood, gehan.closed_form_exponential.loglik, { relative: 1e-9 });
	});
	test.each(fitsIn(capacitor))('capacitors, %s', (name, answer) => {
		const { time, status, temperature, voltage } = capacitor.data;
		compare(
			fitSurvival({
				...rightCensored(time, events(status), [temperature, voltage]),
				distribution: names[name]!
			}),
			answer
		);
	});
});

describe('two competing causes', () => {
	const { voltage_two_modes: block } = cases;
	const byMode = (mode: string) =>
		rightCensored(
			block.data.hours,
			block.data.mode.map((m) => m === mode),
			[]
		);
	const fits = {
		D: fitSurvival({ ...byMode('D'), distribution: 'weibull' }),
		E: fitSurvival({ ...byMode('E'), distribution: 'weibull' })
	};
	test('each cause alone, the other censored', () => {
		compare(fits.D, block.weibull_D);
		compare(fits.E, block.weibull_E);
		compare(fitSurvival({ ...byMode('D'), distribution: 'log-normal' }), block.lognormal_D);
		compare(fitSurvival({ ...byMode('E'), distribution: 'log-normal' }), block.lognormal_E);
	});

	const survival = (cause: 'D' | 'E', t: number): number =>
		Math.exp(-Math.exp((Math.log(t) - fits[cause].coefficients[0]!) / fits[cause].scale));
	test('survival of both together', () => {
		block.combined_survival.t.forEach((t, k) => {
			within(survival('D', t) * survival('E', t), block.combined_survival.S[k]!, {
				relative: 1e-5
			});
		});
	});
	test('cumulative incidence of each cause', () => {
		const rule = gaussLegendre(200, 0, 1);
		block.cumulative_incidence.t.forEach((t, k) => {
			for (const cause of ['D', 'E'] as const) {
				// With t = v⁶ the density near 0 is smooth enough for the rule.
				const incidence = rule.points.reduce((sum, x, j) => {
					const v = x * t ** (1 / 6);
					const time = v ** 6;
					const { coefficients, scale } = fits[cause];
					const hazard = Math.exp((Math.log(time) - coefficients[0]!) / scale) / (scale * time);
					const density = hazard * survival('D', time) * survival('E', time) * 6 * v ** 5;
					return sum + rule.weights[j]! * t ** (1 / 6) * density;
				}, 0);
				within(incidence, block.cumulative_incidence[cause][k]!, { relative: 1e-6 });
			}
		});
	});
});

describe('times known only as between two looks', () => {
	test.each(['weibull', 'lognormal'] as const)('cracks, %s', (name) => {
		const { data } = cases.nelson_cracks_interval;
		compare(
			fitSurvival({
				lower: data.lower,
				upper: data.upper.map((u) => (u === -1 ? Infinity : u)),
				weights: data.count,
				design: data.lower.map(() => [1]),
				distribution: names[name]!
			}),
			cases.nelson_cracks_interval[name]
		);
	});

	const { data, ...answers } = cases.turbine_current_status;
	const looks = {
		lower: [...data.hours.map(() => 0), ...data.hours],
		upper: [...data.hours, ...data.hours.map(() => Infinity)],
		weights: [...data.failed, ...data.failed.map((f, k) => data.inspected[k]! - f)],
		design: [...data.hours, ...data.hours].map(() => [1])
	};
	const counts = {
		successes: data.failed,
		trials: data.inspected,
		design: data.hours.map((h) => [1, Math.log(h)])
	};
	test('turbine wheels seen once: Weibull is cloglog, log-normal is probit', () => {
		const weibull = fitSurvival({ ...looks, distribution: 'weibull' });
		const cloglog = fitBinary({ ...counts, link: 'cloglog', penalty: 'none' });
		compare(weibull, answers.weibull_survreg);
		within(cloglog.coefficients[1]!, 1 / weibull.scale, { relative });
		within(cloglog.coefficients[0]!, -weibull.coefficients[0]! / weibull.scale, { relative });
		const normal = fitSurvival({ ...looks, distribution: 'log-normal' });
		const probit = fitBinary({ ...counts, link: 'probit', penalty: 'none' });
		compare(normal, answers.lognormal_survreg);
		within(probit.coefficients[1]!, 1 / normal.scale, { relative });
		const binary = { cloglog, probit };
		for (const link of ['cloglog', 'probit'] as const) {
			const answer = answers[`${link}_log_hours`];
			answer.coef.forEach((v, k) => within(binary[link].coefficients[k]!, v, { relative }));
			answer.se.forEach((v, k) =>
				within(Math.sqrt(binary[link].covariance[k]![k]!), v, { relative })
			);
			within(binary[link].deviance, answer.deviance, { relative });
		}
	});
});
