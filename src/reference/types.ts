import type { CitationKey } from './citations.ts';

/** How a work was read: whole or the part used; its abstract, caption or excerpt; through another; its title; not at all. */
export const readings = [
	'seen',
	'abstract seen',
	'seen second-hand',
	'title seen',
	'memory'
] as const;
export type Reading = (typeof readings)[number];

/** One work. A title in square brackets is our description, where the exact title was not recorded. */
export type Citation = {
	authors: string;
	year: number | null;
	title: string;
	/** Journal, publisher, doi or the address that was read. */
	where: string;
	how: Reading;
	note?: string;
};

/**
 * How a value is known: read in its source (mostly in an abstract: the citation says so);
 * worked out from values with their own marks; recalled; set by us; usual in the trade without a source.
 */
export const statuses = ['seen', 'derived', 'memory', 'assumed', 'common practice'] as const;
export type Status = (typeof statuses)[number];

/** What every row carries: its name in the table, where it comes from and how it is known. */
export type Row = {
	key: string;
	source: readonly CitationKey[];
	status: Status;
	note?: string;
};

/** A number of its own, or, with value null, the honest statement that none was found. */
export type Fact = Row & {
	what: string;
	value: number | null;
	/** One standard deviation between people or repeats, same unit. */
	spread?: number;
	range?: readonly [number, number];
	/** SI, or as stated; '1' for a ratio. */
	unit: string;
	conditions: string;
};

/** What a heavier hang does, everything else as the column says. */
export const loadSigns = ['lighter is easier', 'no change', 'heavier is easier', 'either'] as const;
export type LoadSign = (typeof loadSigns)[number];

/** A friction law in SI units; the same shape as the core's FrictionLaw, which a test holds it to. */
export type PresetLaw =
	| { kind: 'constant'; coefficient: number }
	| { kind: 'adhesion'; coefficient: number; shearStrength: number }
	| { kind: 'power'; coefficient: number; referencePressure: number; exponent: number }
	| {
			kind: 'deformation';
			coefficient: number;
			shearStrength: number;
			deformation: number;
			referencePressure: number;
	  }
	| {
			kind: 'film';
			filmCoefficient: number;
			coefficient: number;
			breakthroughPressure: number;
			sharpness: number;
	  };

/** A number a person may change: its unit, starting value and the range worth trying. */
export type Parameter = {
	field: string;
	what: string;
	unit: string;
	start: number;
	range: readonly [number, number];
	status: Status;
	source: readonly CitationKey[];
};

/** One measured friction ratio of skin, with what it was measured on and how. */
export type CoefficientRow = Row & {
	surface: string;
	/** State of skin and surface. */
	state: string;
	/** The ratio of tangential to normal force; null where none was found. */
	value: number | null;
	spread?: number;
	range?: readonly [number, number];
	kind: 'static' | 'dynamic' | 'tilt to slip' | 'applied, not a limit' | 'not stated';
	/** Normal force of the test, N, or in words where it was not stated as force. */
	load: string;
	people: number | null;
};
