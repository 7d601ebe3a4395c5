/**
 * A set-up as people enter it and as links carry it: kilograms, degrees, mm², kPa, mm, seconds.
 * It becomes SI in one place, `state/setup/to-hang.ts`.
 */
export type Setup = {
	/** Body mass in the clothes worn, kg. */
	body: number;
	/** Net load less body mass, kg: negative is assist, positive is added mass. */
	change: number;
	/** How assist is known: read from a scale, or reckoned from a counterweight over a pulley. */
	reach: 'scale' | 'counterweight';
	/** Pulley efficiency, 0 to 1. */
	efficiency: number;
	/** Slope of the hold, degrees below horizontal. */
	slope: number;
	/** Radius of a rounded hold, mm; 0 is a flat one. */
	radius: number;
	law: LawKind;
	/** Friction coefficient of the law. */
	mu: number;
	/** Adhesion and deformation laws: shear strength, kPa. */
	shear: number;
	/** Power and deformation laws: reference pressure, kPa. */
	pressure: number;
	/** Power law: exponent of force. */
	exponent: number;
	/** Deformation law: deformation coefficient. */
	deformation: number;
	/** Film law: ratio while the film is whole. */
	film: number;
	/** Film law: pressure at which the film gives way, kPa. */
	through: number;
	/** Film law: how sharply it gives way. */
	sharpness: number;
	patch: 'fixed' | 'growing';
	/** Contact area of one fingertip, mm²: of a growing patch, at 100 N of its normal force. */
	area: number;
	/** Growing patch: exponent of the normal force. */
	growth: number;
	/** Growing patch: largest area, mm². */
	largest: number;
	/** Rope angle from plumb, degrees; positive leads away from the wall. */
	rope: number;
	/** Steady push away from the wall, N; negative is toward it. */
	push: number;
	fingers: number;
	hands: number;
	/** Best hang on a flat edge, total kg. */
	best: number;
	/** Fingers and hands in that hang. */
	bestFingers: number;
	bestHands: number;
	/** Depth of that edge, mm, and how long the hang was held, s. */
	edge: number;
	bestTime: number;
	/** Hold time wanted, s. */
	hold: number;
	padWidth: number;
	padLength: number;
	padDepth: number;
	/** What lies across the holding region. */
	axis: AxisKind;
	/** What is laid over the region: the constant law, a leaning rope. */
	overConstant: boolean;
	overRope: boolean;
};

export type LawKind = 'constant' | 'adhesion' | 'power' | 'deformation' | 'film';
export type AxisKind = 'slope' | 'coefficient' | 'padArea' | 'ropeAngle' | 'holdTime';

type NumberKey = { [K in keyof Setup]: Setup[K] extends number ? K : never }[keyof Setup];
type FlagKey = { [K in keyof Setup]: Setup[K] extends boolean ? K : never }[keyof Setup];
type ChoiceKey = Exclude<keyof Setup, NumberKey | FlagKey>;

/** Allowed range, arrow-key step and larger step of each number. */
export type NumberSpec = {
	min: number;
	max: number;
	step: number;
	big: number;
	whole?: true;
	/** A value below min that stands for "none": a flat hold's radius. */
	none?: number;
};

export const numberSpecs: Record<NumberKey, NumberSpec> = {
	body: { min: 30, max: 150, step: 1, big: 10 },
	change: { min: -145, max: 60, step: 1, big: 10 },
	efficiency: { min: 0.4, max: 1, step: 0.01, big: 0.1 },
	slope: { min: -15, max: 60, step: 0.5, big: 5 },
	radius: { min: 20, max: 500, step: 5, big: 50, none: 0 },
	mu: { min: 0.1, max: 1.5, step: 0.01, big: 0.1 },
	shear: { min: 0, max: 60, step: 0.5, big: 5 },
	pressure: { min: 20, max: 600, step: 5, big: 50 },
	exponent: { min: 0.5, max: 1.6, step: 0.01, big: 0.1 },
	deformation: { min: 0, max: 0.3, step: 0.01, big: 0.05 },
	film: { min: 0.05, max: 1.2, step: 0.01, big: 0.1 },
	through: { min: 20, max: 500, step: 5, big: 50 },
	sharpness: { min: 0.3, max: 5, step: 0.1, big: 0.5 },
	area: { min: 80, max: 330, step: 5, big: 50 },
	growth: { min: 0, max: 0.67, step: 0.01, big: 0.1 },
	largest: { min: 80, max: 330, step: 5, big: 50 },
	rope: { min: -20, max: 30, step: 0.5, big: 5 },
	push: { min: -150, max: 150, step: 5, big: 25 },
	fingers: { min: 1, max: 4, step: 1, big: 1, whole: true },
	hands: { min: 1, max: 2, step: 1, big: 1, whole: true },
	best: { min: 20, max: 250, step: 1, big: 10 },
	bestFingers: { min: 1, max: 4, step: 1, big: 1, whole: true },
	bestHands: { min: 1, max: 2, step: 1, big: 1, whole: true },
	edge: { min: 5, max: 21, step: 1, big: 5 },
	bestTime: { min: 3, max: 60, step: 1, big: 5 },
	hold: { min: 3, max: 60, step: 1, big: 10 },
	padWidth: { min: 10, max: 24, step: 0.5, big: 2 },
	padLength: { min: 15, max: 32, step: 0.5, big: 2 },
	padDepth: { min: 0, max: 10, step: 0.5, big: 2 }
};

export const choices: { [K in ChoiceKey]: readonly Setup[K][] } = {
	reach: ['scale', 'counterweight'],
	law: ['constant', 'adhesion', 'power', 'deformation', 'film'],
	patch: ['fixed', 'growing'],
	axis: ['padArea', 'slope', 'coefficient', 'ropeAngle', 'holdTime']
};

export const flags: readonly FlagKey[] = ['overConstant', 'overRope'];

/** The lightest net load that a set-up may have, kg. */
export const lightestNet = 5;

/**
 * First sight: an invented person near the limit on a slick slope, under the film law.
 * Version 1 links leave out what equals these values, so they never change within version 1.
 */
export const firstSight: Readonly<Setup> = Object.freeze({
	body: 70,
	change: 0,
	reach: 'scale',
	efficiency: 0.8,
	slope: 33.5,
	radius: 0,
	law: 'film',
	mu: 0.75,
	shear: 4,
	pressure: 250,
	exponent: 0.8,
	deformation: 0.05,
	film: 0.4,
	through: 200,
	sharpness: 1,
	patch: 'fixed',
	area: 240,
	growth: 0.32,
	largest: 330,
	rope: 0,
	push: 0,
	fingers: 4,
	hands: 2,
	best: 92,
	bestFingers: 4,
	bestHands: 2,
	edge: 20,
	bestTime: 5,
	hold: 5,
	padWidth: 16,
	padLength: 21,
	padDepth: 5,
	axis: 'padArea',
	overConstant: false,
	overRope: false
});

export const numberKeys = Object.keys(numberSpecs) as NumberKey[];
export const choiceKeys = Object.keys(choices) as ChoiceKey[];
export type { ChoiceKey, FlagKey, NumberKey };

/** Says whether a number is allowed in a field. */
export function isAllowed(key: NumberKey, value: number): boolean {
	const { min, max, whole, none } = numberSpecs[key];
	if (none !== undefined && value === none) return true;
	return value >= min && value <= max && (!whole || Number.isInteger(value));
}

/** The nearest allowed number. */
export function nearestAllowed(key: NumberKey, value: number): number {
	const { min, max, whole, none } = numberSpecs[key];
	if (none !== undefined && value <= (none + min) / 2) return none;
	const clamped = Math.min(max, Math.max(min, value));
	return whole ? Math.round(clamped) : clamped;
}

/** Keeps a set-up whole where one field bears on another: something must hang from the hands. */
export function mended(setup: Setup): Setup {
	const lightest = lightestNet - setup.body;
	return setup.change >= lightest ? setup : { ...setup, change: lightest };
}
