import * as v from 'valibot';
import { above0, between, day, id, label, number, ropeSide, text } from './fields.ts';
import { plan } from './plan-record.ts';

/**
 * The notebook's records, version 1. Values are kept in the units in which they are read off at
 * the board (kg, degrees, mm²), so that no conversion ever changes what was written down; the
 * field names say so. null: not known, not measured.
 */

/** A person: a label, and nothing else that could tell who it is. */
export const person = v.object({
	id,
	label,
	/** In the clothes worn. */
	bodyMassKg: v.nullable(above0(400)),
	adult: v.boolean('is not yes or no')
});

export const hold = v.object({
	id,
	label,
	/** Surface below the horizontal, dipping toward the person. */
	slopeDegrees: v.nullable(between(-90, 90)),
	/** How the slope was measured. */
	slopeMethod: text,
	/** null: flat. */
	radiusMm: v.nullable(above0(10_000)),
	surface: text,
	condition: text
});

export const grip = v.object({
	id,
	label,
	/** Fingers of one hand on the hold. */
	fingers: v.picklist([1, 2, 3, 4, 5], 'is not 1 to 5'),
	hands: v.picklist([1, 2], 'is not 1 or 2'),
	/** Contact patch of one fingertip. */
	patchMm2: v.nullable(above0(2000))
});

export const session = v.object({
	id,
	personId: id,
	holdId: id,
	day,
	/** Body mass that day, in the clothes worn; null: as on the person’s record. */
	bodyMassKg: v.nullable(above0(400)),
	targetSeconds: v.nullable(above0(600)),
	restSeconds: v.nullable(between(0, 7200)),
	/** Routines and skin, in the person’s words. */
	brushing: text,
	chalk: text,
	skin: text,
	airCelsius: v.nullable(between(-60, 60)),
	humidityPercent: v.nullable(between(0, 100)),
	checkLoadKg: v.nullable(above0(500)),
	planId: v.nullable(id),
	/** Fixed when the plan is made: what order terms and rope terms are counted from. */
	plannedTrials: v.nullable(v.pipe(between(1, 500), v.integer('is not a whole number'))),
	meanRopeTerm: v.nullable(number),
	note: text
});

export const trial = v.object({
	id,
	sessionId: id,
	gripId: id,
	/** Number within the session, from 1; warm-ups stand at 0 and below. Odd ones are flagged only. */
	order: number,
	kind: v.picklist(['warm-up', 'check', 'test'], 'is not warm-up, check or test'),
	/** Net load as read on the scale. */
	loadKg: above0(500),
	/** How that load was reached. */
	reached: v.picklist(
		['scale', 'plates', 'counterweight', 'both', 'body', 'unknown'],
		'is not scale, plates, counterweight, both, body or unknown'
	),
	addedKg: v.nullable(between(0, 500)),
	counterweightKg: v.nullable(between(0, 500)),
	/** Lean of the rope from the vertical at the body, in the hang; never below 0: the side says where. */
	ropeDegrees: v.nullable(between(0, 89)),
	ropeSide: v.nullable(ropeSide),
	/** unknown: it failed, but the cause was not seen. */
	outcome: v.picklist(
		['held', 'slipped', 'opened', 'stopped', 'unknown'],
		'is not held, slipped, opened, stopped or unknown'
	),
	seconds: v.nullable(number),
	stopReason: v.nullable(
		v.picklist(['pain', 'opening', 'slipping', 'other'], 'is not pain, opening, slipping or other')
	),
	brushed: v.nullable(v.boolean('is not yes or no')),
	note: text,
	/** Why the trial is left out of the analysis; null: it counts. */
	leftOut: v.nullable(label),
	/** Clock of the device when logged, ms since 1970; years 0 to 9999, which need no sign in a table. */
	loggedAt: v.nullable(
		v.pipe(
			between(-62_167_219_200_000, 253_402_300_799_999),
			v.integer('is not a whole number of milliseconds')
		)
	)
});

export type Person = v.InferOutput<typeof person>;
export type Hold = v.InferOutput<typeof hold>;
export type Grip = v.InferOutput<typeof grip>;
export type Session = v.InferOutput<typeof session>;
export type Trial = v.InferOutput<typeof trial>;
export type PlanRecord = v.InferOutput<typeof plan>;

/** Schemas by the name of their list, in the order in which records lean on one another. */
export const schemas = {
	people: person,
	holds: hold,
	grips: grip,
	plans: plan,
	sessions: session,
	trials: trial
};

export type Records = {
	people: Person;
	holds: Hold;
	grips: Grip;
	plans: PlanRecord;
	sessions: Session;
	trials: Trial;
};
export type Kind = keyof Records;
export type AnyRecord = Records[Kind];
export type Notebook = { [K in Kind]: Records[K][] };

export const kinds = Object.keys(schemas) as Kind[];

/** Version of the records above; rises by one with every change of their shape. */
export const SCHEMA_VERSION = 1;

export const emptyNotebook = (): Notebook => ({
	people: [],
	holds: [],
	grips: [],
	plans: [],
	sessions: [],
	trials: []
});
