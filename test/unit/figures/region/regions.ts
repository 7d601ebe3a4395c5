import type { Interval } from '#core/types.ts';
import type { Region, RegionAxisView } from '#figures/region/types.ts';

type End = Interval['lowerLimit'];

/** Makes one interval: from, what ends it below, to, what ends it above. */
export const held = (from: number, lowerLimit: End, to: number, upperLimit: End): Interval => ({
	...{ from, to, lowerLimit, upperLimit }
});

/** A region made by hand from a window at each axis value, 0 to 10. */
export function byHand(
	windowAt: (value: number) => Interval[],
	breaks: number[] = [],
	crossings: Region['crossings'] = [],
	count = 101
): Region {
	const columns = Array.from({ length: count }, (_, i) => {
		const value = (10 * i) / (count - 1);
		return { value, intervals: windowAt(value) };
	});
	return { columns, breaks, crossings };
}

export const load = { from: 20, to: 130 };

export const axis: RegionAxisView = {
	...{ label: 'hold slope', unit: '°', step: 0.1, bigStep: 1 },
	toScreen: (value) => value * 3 - 5,
	fromScreen: (shown) => (shown + 5) / 3
};

const strength = (v: number) => 60 + v;
const slip = (v: number) => 25 + 6 * v;

/** Each shape of holding area that the core can hand over, invented numbers. */
export const shapes = {
	/** Slip edge below, strength edge above, meeting at v = 7. */
	wedge: byHand(
		(v) => (v < 7 ? [held(slip(v), 'slip', strength(v), 'strength')] : []),
		[7],
		[{ value: 7, netMass: 67 }]
	),
	/** A steady ratio: everything below the strength edge until v = 6.03, nothing beyond. */
	upright: byHand(
		(v) => (v < 6.03 ? [held(20, 'range', strength(v), 'strength')] : []),
		[6.03],
		[{ value: 6.03, netMass: strength(6.03) }]
	),
	/** As above, but beyond the upright edge light loads still hold. */
	step: byHand(
		(v) =>
			v < 6.03
				? [held(20, 'range', strength(v), 'strength')]
				: [held(20, 'range', 50 - 5 * (v - 6.03), 'slip')],
		[6.03]
	),
	/** A gap that opens as a rounded nose at v = 4.02 and leaves two intervals. */
	fork: byHand(
		(v) => {
			if (v < 4.02) return [held(20, 'range', 130, 'range')];
			const half = 15 * Math.sqrt(v - 4.02);
			return [held(20, 'range', 60 - half / 2, 'slip'), held(60 + half, 'slip', 130, 'range')];
		},
		[4.02]
	),
	/** Two intervals all the way. */
	two: byHand((v) => [held(20, 'range', 40 + v, 'slip'), held(70 + v, 'slip', 130, 'range')]),
	/** One interval dies as a far one is born at the same place. */
	swap: byHand(
		(v) => (v < 5.05 ? [held(25, 'slip', 40, 'slip')] : [held(80, 'slip', 100, 'strength')]),
		[5.05]
	),
	/** The upper end changes from slip to strength at v = 3.04. */
	roof: byHand(
		(v) => [
			held(
				20,
				'range',
				v < 3.04 ? 40 + 10 * v : 70.4 - 2 * (v - 3.04),
				v < 3.04 ? 'slip' : 'strength'
			)
		],
		[3.04],
		[{ value: 3.04, netMass: 70.4 }]
	),
	none: byHand(() => []),
	everything: byHand(() => [held(20, 'range', 130, 'range')])
};
