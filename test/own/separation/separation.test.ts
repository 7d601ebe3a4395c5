import { describe, test } from 'vitest';
import { normalCdf } from '#core/statistics/normal.ts';
import { seededRandom } from '#core/statistics/random.ts';
import { isSeparated } from '#core/statistics/separation.ts';
import { within } from '#test/within.ts';
import cases from './cases.json' with { type: 'json' };

// Own earlier simulation, not an outside check: how often few trials split cleanly.
describe('how often trials round the opening limit split cleanly', () => {
	test.each(cases.separation_frequency)(
		'$n trials, spread $spread',
		({ n, spread, separated, all_same }) => {
			const random = seededRandom(Math.round(1000 * spread) + n);
			const runs = 1000;
			let [clean, alike] = [0, 0];
			for (let run = 0; run < runs; run += 1) {
				const x = Array.from({ length: n }, () => Math.log(0.8 + 0.4 * random.uniform()));
				const held = x.map((value): number =>
					random.uniform() < normalCdf(-value / spread) ? 1 : 0
				);
				const sum = held.reduce((a, b) => a + b, 0);
				if (sum === 0 || sum === n) alike += 1;
				else if (
					isSeparated({
						successes: held,
						trials: held.map(() => 1),
						design: x.map((value) => [1, value]),
						link: 'probit'
					})
				)
					clean += 1;
			}
			within(clean / runs, separated, { absolute: 0.03 });
			within(alike / runs, all_same, { absolute: 0.02 });
		}
	);
});
