import { expect, test } from 'vitest';
import { normalCdf } from '#core/statistics/normal.ts';
import { seededRandom } from '#core/statistics/random.ts';
import { openingLimit } from '#core/trials/opening-limit.ts';
import { slipLimit } from '#core/trials/slip-limit.ts';
import type { Trial } from '#core/trials/trial.ts';

const people = 1000;

test('nine-in-ten intervals of the opening limit hold the truth nine times in ten', () => {
	const random = seededRandom(20);
	let inside = 0;
	for (let person = 0; person < people; person += 1) {
		const limit = Math.log(80) + 0.3 * random.normal();
		const spread = Math.exp(Math.log(0.08) + 0.5 * random.normal());
		const trials = Array.from({ length: 10 }, (_, k): Trial => {
			const load = 80 * Math.exp(0.6 * (random.uniform() - 0.5));
			const held = random.uniform() < normalCdf((limit - Math.log(load)) / spread);
			return { load, outcome: held ? 'held' : 'opened', order: k / 10, ropeTerm: 0 };
		});
		const { q05, q95 } = openingLimit(trials, { referenceLoad: 60, bestGuess: 80 }).quantiles;
		if (q05 <= Math.exp(limit) && Math.exp(limit) <= q95) inside += 1;
	}
	expect(inside / people).toBeGreaterThan(0.86);
	expect(inside / people).toBeLessThan(0.94);
});

test('so do those of the load at which slipping is one in two', () => {
	const random = seededRandom(21);
	let inside = 0;
	for (let person = 0; person < people; person += 1) {
		const margin = 2 * random.normal();
		const effect = 2.5 * Math.abs(random.normal());
		const trials = Array.from({ length: 16 }, (_, k): Trial => {
			const load = 60 * Math.exp(1.2 * (random.uniform() - 0.5));
			const stuck = random.uniform() < normalCdf(margin + effect * Math.log(load / 60));
			return { load, outcome: stuck ? 'held' : 'slipped', order: k / 10, ropeTerm: 0 };
		});
		const limit = slipLimit(trials, { referenceLoad: 60 })!;
		const truth = 60 * Math.exp(-margin / effect);
		// An end off the tested stretch is left open, or starts where the stretch ends.
		const { q05, q95 } = limit.quantiles;
		const lower = q05 ?? (limit.chanceBelow >= 0.05 ? 0 : limit.to);
		const upper = q95 ?? (limit.chanceAbove >= 0.05 ? Infinity : limit.from);
		if (lower <= truth && truth <= upper) inside += 1;
	}
	expect(inside / people).toBeGreaterThan(0.86);
});
