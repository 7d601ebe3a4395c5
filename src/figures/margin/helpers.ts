import type { MarginSeries } from './types.ts';

type Margins = { slipMargin: number; strengthMargin: number };

/**
 * Samples both margins over a range of net load, ends included, as the two curves of the figure.
 * `marginsAt` is the core's evaluation of one set-up at a net mass (kg); `count` is at least 2.
 * Where the set-up changes its law at a load (the hanging mass under a leaning rope) give it in
 * `corners`, so that the curve bends there and not beside it.
 */
export function marginSamples(
	marginsAt: (netMass: number) => Margins,
	range: { from: number; to: number },
	count: number,
	corners: readonly number[] = []
): [slip: MarginSeries, strength: MarginSeries] {
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
