// Not from the public surface: through it every page would load the whole of core.
import { loadAtNetMass } from '#core/mechanics/load-at-net-mass.ts';
import { evaluateHang } from '#core/strength/evaluate-hang.ts';
import type { Hang } from '#core/types.ts';
import type { MarginSeries } from './types.ts';

type Margins = { slipMargin: number; strengthMargin: number };
type Range = { from: number; to: number };
type Curves = [slip: MarginSeries, strength: MarginSeries];

/**
 * Both margin curves of a hang over a range of net load, ends included, with one more sample at the
 * hanging mass, where a leaning rope goes slack and the slip margin bends.
 */
export function marginSamples(hang: Hang, range: Range, count: number): Curves {
	const marginsAt = (netMass: number) => evaluateHang(hang, loadAtNetMass(netMass, hang));
	return samplesOf(marginsAt, range, count, [hang.hangingMass]);
}

/**
 * Both margin curves of anything that gives two margins at a net mass (kg): `count` even samples
 * (at least 2), and one at each of the `corners` within the range.
 */
export function samplesOf(
	marginsAt: (netMass: number) => Margins,
	range: Range,
	count: number,
	corners: readonly number[] = []
): Curves {
	const { from, to } = range;
	const even = Array.from({ length: count }, (_, i) => from + ((to - from) * i) / (count - 1));
	const inside = corners.filter((corner) => corner > from && corner < to);
	const loads = [...even, ...inside].sort((a, b) => a - b);
	const slip: { netMass: number; margin: number }[] = [];
	const strength: typeof slip = [];
	for (const netMass of loads) {
		const { slipMargin, strengthMargin } = marginsAt(netMass);
		slip.push({ netMass, margin: slipMargin });
		strength.push({ netMass, margin: strengthMargin });
	}
	return [
		{ label: 'slip margin', kind: 'slip', points: slip },
		{ label: 'strength margin', kind: 'strength', points: strength }
	];
}
