/** Invented people on invented holds. Fields left out are those of first sight. */
export const scenarios = [
	{
		key: 'near-the-limit',
		name: 'Near the limit',
		story:
			'Invented: 70 kg on a slick slope, under a film that pressure breaks (assumed, not shown by experiments). Both limits slope: lighter slips, heavier opens the fingers.',
		setup: {},
		headline: [{ from: 64.78, to: 72.2, lowerLimit: 'slip', upperLimit: 'strength' }]
	},
	{
		key: 'leaning-rope',
		name: 'Only the rope leans',
		story:
			'Invented: the friction ratio is constant, yet the lighter hang slips. The assist rope leads 10° away from the wall, so less load means more lean.',
		setup: {
			change: -12,
			slope: 31,
			law: 'constant',
			mu: 0.64,
			area: 250,
			rope: 10,
			best: 80,
			axis: 'ropeAngle'
		},
		headline: [{ from: 60.33, to: 63.61, lowerLimit: 'slip', upperLimit: 'strength' }]
	},
	{
		key: 'film-lower-limit',
		name: 'A film gives a lower limit',
		story:
			'Invented: a dusty hold. With the assumed film law the hand needs a certain load before the film is through; a plumb rope, so nothing else does it.',
		setup: { change: -25, slope: 32, law: 'film', through: 150, area: 250, best: 80 },
		headline: [{ from: 37.1, to: 63.61, lowerLimit: 'slip', upperLimit: 'strength' }]
	},
	{
		key: 'open-grip-heavier',
		name: 'An open grip that wants more load',
		story:
			'Invented: 62 kg with three fingers open. The wide patch spreads the load so thin that, under the assumed film law, the grip holds only with mass added.',
		setup: {
			body: 62,
			change: 9,
			slope: 34.5,
			law: 'film',
			through: 170,
			area: 320,
			fingers: 3,
			best: 84,
			bestFingers: 3
		},
		headline: [{ from: 69.42, to: 77.66, lowerLimit: 'slip', upperLimit: 'strength' }]
	},
	{
		key: 'sticking-patch',
		name: 'A patch that sticks',
		story:
			'Invented: part of the friction goes with the patch, not with the load (adhesion law). The ordinary published direction: lighter is easier.',
		setup: { change: -20, slope: 34, law: 'adhesion', mu: 0.45, shear: 40, area: 250, best: 100 },
		headline: [{ from: 5, to: 43.83, lowerLimit: 'range', upperLimit: 'slip' }]
	},
	{
		key: 'incut-edge',
		name: 'An incut edge',
		story:
			'Invented: the ordinary case to compare with. The edge slopes the other way, so nothing slips and only finger strength ends it.',
		setup: { slope: -10, law: 'constant', mu: 0.64, area: 250, best: 80, axis: 'slope' },
		headline: [{ from: 5, to: 72.61, lowerLimit: 'range', upperLimit: 'strength' }]
	}
] as const;
