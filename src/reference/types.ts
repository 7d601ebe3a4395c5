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

/** Sign of an effect on the friction ratio (or, for geometry, on the slip margin). */
export const effects = ['better', 'no change', 'worse', 'either', 'not defined'] as const;
export type Effect = (typeof effects)[number];

/** Strength of published support for a mechanism on skin, in words fit for the page. */
export const grades = ['strong', 'fair', 'weak', 'exact', 'assumed'] as const;
export type Grade = (typeof grades)[number];

/** One reason why load may matter. */
export type MechanismRow = Row & {
	/** Its line in the published-signs table that the rows were drawn up from. */
	line: number;
	name: string;
	family: 'none' | 'adhesion' | 'deformation' | 'film' | 'time' | 'geometry' | 'order' | 'strength';
	/** More load on the same patch. */
	constantArea: Effect;
	/** More load and more patch together: the same pressure. */
	constantPressure: Effect;
	/** More patch under the same load. */
	biggerPatch: Effect;
	loadEffect: LoadSign;
	grade: Grade;
	support: string;
	range: string;
	tellTale: string;
	/** The one cheapest test that would show it. */
	test: string;
	/** True where the hang of Explore can hold it; otherwise the board alone shows it. */
	expressibleInHang: boolean;
	/** The core curve that draws it; null where no formula is honest. */
	boardKey: string | null;
	/** The numbers its curve takes beyond the set-up, SI and radians. */
	parameters: readonly Parameter[];
};

/** A coefficient as a table prints it: low and high of starting (static) and of sliding (kinetic). */
export type TabulatedRow = Row & {
	pair: string;
	condition: string;
	starting: readonly [number, number] | null;
	sliding: readonly [number, number] | null;
};
