import { marginSamples } from '#figures/margin/helpers.ts';
import type { MarginSeries } from '#figures/margin/types.ts';
import type { Results } from '#state/setup/results.ts';

/** Points of each margin curve. */
const samples = 100;

/** The margin curves of a set-up: its own two, and the slip margin of each case laid over. */
export function marginSeries({ hang, range, overlays }: Results): MarginSeries[] {
	return [
		...marginSamples(hang, range, samples),
		...overlays.map(({ label, hang: other }) => ({
			...marginSamples(other, range, samples)[0],
			label: `slip, ${label}`,
			kind: 'other' as const
		}))
	];
}
