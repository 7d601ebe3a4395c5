import * as v from 'valibot';
import type { Plan } from '#core/trials/plan/types.ts';
import { above0, between, day, id, label, number, ropeSide } from './fields.ts';

const condition = v.object({ grip: id, load: above0(500), ropeSide });

const outcome = v.picklist(['held', 'slipped', 'opened', 'stopped', 'unknown']);

const choice = v.object({
	seed: v.pipe(number, v.safeInteger('is not a whole number')),
	design: v.picklist(['shuffled', 'abba', 'up-and-down']),
	grips: v.array(
		v.object({
			grip: id,
			loads: v.array(above0(500)),
			ownMaximum: above0(500),
			bestGuess: above0(500),
			history: v.array(
				v.object({
					load: above0(500),
					outcome,
					seconds: v.optional(number),
					reason: v.optional(v.picklist(['pain', 'other'])),
					session: v.optional(number)
				})
			)
		})
	),
	ropeSides: v.array(ropeSide),
	repeats: between(1, 500),
	check: v.nullable(condition),
	step: number,
	increment: between(0, 500),
	targetSeconds: above0(600),
	restSeconds: between(0, 7200),
	setupSeconds: between(0, 7200),
	session: number,
	adult: v.boolean()
});

const plannedTrial = v.object({
	number: v.nullable(number),
	kind: v.picklist(['warm-up', 'check', 'test']),
	block: v.nullable(number),
	grip: id,
	load: v.nullable(above0(500)),
	ropeSide,
	order: v.nullable(number)
});

const tangle = { load: number, ropeSide: number };

/** The plan as the planner made it; `grip` holds grip ids. */
const made = v.object({
	choice,
	trials: v.array(plannedTrial),
	plannedNumber: between(1, 500),
	meanRopeTerm: v.nullable(number),
	tangle: v.object({ ...tangle, grips: v.array(v.object({ grip: id, ...tangle })) }),
	shuffles: number,
	promised: v.boolean(),
	durationSeconds: number
});

/** A plan as kept: when, under which label, and everything it was made from, the seed included. */
export const plan = v.object({ id, label, day, personId: id, plan: made });

// Fails to compile when the planner's type and the kept shape drift apart.
type Same<A, B> = [A] extends [B] ? ([B] extends [A] ? true : never) : never;
export const planShapeMatches: Same<v.InferOutput<typeof made>, Plan> = true;
