import { describe, expect, test } from 'vitest';
import { dixonMood } from '#core/statistics/dixon-mood.ts';
import { fitBinary } from '#core/statistics/fit-binary.ts';
import { within } from '#test/within.ts';
import cases from './cases.json' with { type: 'json' };

// Published series; sources and tolerances in README.md.
const blocks = cases.dixon_mood;
const relative = 1e-6;

describe('the tally method', () => {
	test.each(['gorla_751_table6', 'gorla_951_table9'] as const)('%s', (name) => {
		const { load_kN: levels, failed, dixon_mood: answer } = blocks[name];
		const result = dixonMood(
			levels,
			failed.map((f) => f === 1),
			answer.d
		);
		within(result.mean, answer.mean, { relative });
		within(result.sd, answer.sd, { relative });
		expect(result.countedFailures).toBe(answer.chosen_outcome === 1);
		expect(result.formulaValid).toBe(answer.sd_formula_valid);
	});

	test('a long series, where the tally misses the published answer', () => {
		const { dose_mg_kg: levels, response, dixon_mood: answer } = blocks.van_elstraete_2008;
		const result = dixonMood(
			levels,
			response.map((r) => r === 1),
			answer.d
		);
		within(result.mean, answer.mean, { relative });
		within(result.sd, answer.sd, { relative });
		expect(Math.abs(result.mean - blocks.van_elstraete_2008.published_ED50)).toBeGreaterThan(0.5);
	});

	test('maximum likelihood on the same trials', () => {
		for (const name of ['gorla_751_table6', 'gorla_951_table9'] as const) {
			const { load_kN: levels, failed, probit_ml: answer } = blocks[name];
			const fit = fitBinary({
				successes: failed,
				trials: failed.map(() => 1),
				design: levels.map((level) => [1, level]),
				link: 'probit',
				penalty: 'none'
			});
			const [a, b] = fit.coefficients as [number, number];
			within(-a / b, answer.mu, { relative });
			within(1 / b, answer.sigma, { relative });
			within(fit.logLikelihood, answer.loglik, { relative });
		}
	});
});
