/**
 * What the lessons are given: invented people, holds and counts, in the units of the page
 * (kg, degrees, mm², kPa, N, mm). Fields left out are those of first sight. No result stands here.
 */
export const lessonGivens = {
	/** Load cancels: one hold, one ratio, more weight. */
	cancels: {
		minutes: 6,
		fields: { law: 'constant', mu: 0.64, slope: 31, area: 250, best: 150, axis: 'slope' },
		added: 10,
		board: { slipAngle: 27, block: 2, second: 3 },
		other: { slope: 25, body: 80 }
	},
	/** Not quite plumb: the same hold, and a rope that leads away from the wall. */
	rope: {
		minutes: 7,
		fields: {
			law: 'constant',
			mu: 0.64,
			slope: 31,
			area: 250,
			best: 115,
			rope: 10,
			change: -15,
			axis: 'ropeAngle'
		},
		smallLean: 5,
		other: { body: 80, assist: 150, lean: 5, slope: 25 },
		plumbLine: { offset: 50, length: 1000 }
	},
	/** Pressure and patch: skin that sticks, and other laws through the same point. */
	pressure: {
		minutes: 7,
		fields: {
			law: 'adhesion',
			mu: 0.45,
			shear: 48,
			slope: 31,
			area: 250,
			best: 180,
			axis: 'padArea'
		},
		light: 50,
		heavy: 90,
		film: { film: 0.4, through: 150, sharpness: 1 },
		pressures: [150, 300],
		patchShare: 0.5
	},
	/** The holding window: two limits that cross, and an opened grip. */
	window: {
		minutes: 7,
		fields: { slope: 33, area: 200, change: -10, axis: 'padArea' },
		openArea: 290,
		longHold: 20,
		wrongAim: 75
	},
	/** A fair test: loads in rising order, and ten people. */
	fair: {
		minutes: 6,
		fields: { law: 'constant', mu: 0.64, slope: 31, area: 250, best: 150, axis: 'slope' },
		goes: [56, 63, 70, 77],
		drift: 0.03,
		split: { more: 8, fewer: 2 },
		splits: [
			{ more: 3, fewer: 0 },
			{ more: 6, fewer: 0 },
			{ more: 12, fewer: 8 }
		],
		rare: 0.05
	}
} as const;

/** The session around the lessons, minutes. */
export const sessionGivens = { opening: 2, experiment: 8, close: 2 } as const;

/** What the room's experiment starts from: shares of body mass, blocks in kg, a tilt in degrees. */
export const roomGivens = {
	shares: [0.8, 1, 1.1],
	blocks: [0.5, 1, 2],
	tilt: 25,
	people: 12,
	seed: 1,
	most: 30
} as const;

/** Points of each margin curve in a lesson's picture. */
export const curvePoints = 90;
