import fc from 'fast-check';
import type { Outcome, Trial } from '#core/trials/trial.ts';

/** One made-up trial; its order term is set by its place. */
const go = (outcomes: Outcome[]) =>
	fc.record({
		load: fc.integer({ min: 60, max: 220 }).map((halves) => halves / 2),
		outcome: fc.constantFrom(...outcomes),
		ropeTerm: fc.integer({ min: -20, max: 20 }).map((hundredths) => hundredths / 100)
	});

/** Made-up notebooks of one session. */
export const notebooks = (outcomes: Outcome[], most = 20) =>
	fc
		.array(go(outcomes), { maxLength: most })
		.map((goes) =>
			goes.map((one, k): Trial => ({ ...one, order: (k - (goes.length - 1) / 2) / 10 }))
		);
