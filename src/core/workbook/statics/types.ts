import type { Values } from '../algebra/evaluate.ts';
import type { Expression } from '../algebra/expression.ts';
import type { Diagram } from './diagram.ts';

/** SI units and radians; '1' is a number without unit. */
export type Unit =
	| 'kg'
	| 'N'
	| 'rad'
	| 'm'
	| 's'
	| 'm/s'
	| 'm/s²'
	| 'N·m'
	| 'W'
	| 'rad/s'
	| 'kg/m'
	| 'Pa'
	| 'm²'
	| '1';

/** One named quantity of a set-up, with the range in which it makes sense. */
export type Quantity = {
	id: string;
	/** Plain words, as they follow "the". */
	name: string;
	/** TeX. */
	symbol: string;
	unit: Unit;
	min: number;
	max: number;
	/** True where `min` itself is not allowed. */
	open?: boolean;
	/** Taken, and said so, when not given and needed: a number, or the id of a quantity that was given. */
	default?: number | string;
	/** True where only whole numbers make sense (hands, fingers). */
	whole?: boolean;
	/** Marks lengths that are easily doubled or halved. */
	round?: 'radius' | 'diameter';
};

/** One equation of a set-up: what it gives, the formula, and why it holds. */
export type Relation = { gives: string; formula: Expression; why: string };

/** What happens, and the reason, in a short sentence. */
export type Verdict = { regime: string; because: string };

/** One arrangement of bodies with its equations. Every relation gives a quantity of its own. */
export type Setup = {
	id: string;
	/** Value of `arrangement` that picks it. */
	number: number;
	title: string;
	/** Opening sentence of a problem, in our own words. */
	scene: string;
	/** Sign conventions and what the model leaves out. */
	notes: string[];
	quantities: Quantity[];
	relations: Relation[];
	/** Quantities that describe the state on the point of slipping (or tipping). */
	limits: string[];
	/** What happens with these values; undefined when they do not settle it. */
	regime: (values: Values) => Verdict | undefined;
	/** Why a limiting quantity has no value, when that is physics and not a bad given. */
	noLimit?: (values: Values, ask: string) => Verdict | undefined;
	/** Quantities that rest leaves open between two others: friction takes up the difference. */
	stretches?: Record<string, { from: string; to?: string; because: string }>;
	/** Free-body diagram; undefined when a value is missing. */
	diagram: (values: Values) => Diagram | undefined;
	/** Sensible numbers for practice: lowest, highest and step of each given, and what may be asked. */
	practice: { given: Record<string, [number, number, number]>; ask: string[] };
};

/** One step of a way to the answer. */
export type Step =
	| { kind: 'forward'; relation: Relation; gives: string }
	| { kind: 'isolate'; relation: Relation; gives: string; formulas: Expression[] | undefined }
	| { kind: 'trial'; relation: Relation; gives: string; inner: Step[] };

/** One value of the asked quantity; `upTo` (perhaps Infinity) where every value from `value` to it will do. */
export type Solution = { value: number; unit: Unit; upTo?: number };

/** What `solve` returns. The first three members are the public promise; the rest serves pages. */
export type Answer = {
	regime: string;
	solutions: Solution[];
	warnings: string[];
	/** Why the regime is what it is. */
	because: string;
	/** Values taken because they were not given. */
	assumed: Values;
	/** All quantities that the givens settle, one record a solution. */
	values: Values[];
	/** The way to the answer. */
	steps: Step[];
	/** Id of the arrangement used. */
	setup: string;
};
