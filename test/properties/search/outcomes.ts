import { evaluateHang } from '#core/index.ts';
import type { FoundSetup, Observation } from '#core/search/types.ts';

/**
 * Which goes do not come out as seen, by evaluateHang and thresholds written out again here.
 * Gives their order numbers.
 */
export function unmetGoes(setup: FoundSetup, observations: readonly Observation[]): number[] {
	const results = new Map(
		setup.trials.map(({ order, hang, load }) => [order, evaluateHang(hang, load)])
	);
	return observations
		.filter(({ order, outcome }) => {
			const { slipMargin, strengthMargin } = results.get(order)!;
			const margin = Math.min(slipMargin, strengthMargin);
			switch (outcome.kind) {
				case 'slipped':
					return !(slipMargin < 0.98);
				case 'held':
					return !(margin >= 1);
				case 'barely':
					return !(margin >= 1 && margin <= 1.1);
				case 'opened':
					return !(strengthMargin < 0.98 && slipMargin >= 1);
				case 'easier':
					return !(
						slipMargin >= 1.02 * results.get(outcome.than)!.slipMargin && strengthMargin >= 1
					);
			}
		})
		.map(({ order }) => order);
}
