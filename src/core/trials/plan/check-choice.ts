import { largestStep } from '../cap-values.ts';
import { loadCap, overCap } from './caps.ts';
import type { CapReason } from './caps.ts';
import type { PlanChoice } from './types.ts';

const MOST_TRIALS = 500;

/** A load the plan may not hold, and the rule that forbids it. Loads in kg. */
export type Refusal = { grip: string; load: number; reason: CapReason; limit: number };

/**
 * Checks that a plan can be made from a choice at all.
 *
 * @param choice everything the plan is made from
 * @throws RangeError naming the field, its value and the allowed range
 * Source: derived
 * Example: repeats 0 → RangeError "repeats is 0; it must be a whole number from 1 to 500"
 */
export function checkChoice(choice: PlanChoice): void {
	whole('seed', choice.seed, Number.MIN_SAFE_INTEGER, Number.MAX_SAFE_INTEGER);
	whole('repeats', choice.repeats, 1, MOST_TRIALS);
	whole('grips', choice.grips.length, 1, 20);
	whole('ropeSides', choice.ropeSides.length, 1, 3);
	for (const { grip, loads } of choice.grips) {
		whole(`loads of ${grip}`, loads.length, 1, 20);
		for (const load of loads) above0(`load of ${grip}`, load);
	}
	if (new Set(choice.grips.map(({ grip }) => grip)).size < choice.grips.length) {
		throw new RangeError('grips name one grip twice; each grip may stand once');
	}
	if (choice.check) {
		above0('check load', choice.check.load);
		if (!choice.grips.some(({ grip }) => grip === choice.check!.grip)) {
			throw new RangeError(`check grip is ${choice.check.grip}; it must be a grip of the plan`);
		}
	}
	above0('targetSeconds', choice.targetSeconds);
	for (const field of ['restSeconds', 'setupSeconds', 'increment'] as const) {
		if (!(choice[field] >= 0) || !Number.isFinite(choice[field])) {
			throw new RangeError(`${field} is ${choice[field]}; it must be 0 or more`);
		}
	}
	if (choice.design === 'up-and-down') {
		if (choice.grips.length !== 1 || choice.grips[0]!.loads.length !== 1) {
			throw new RangeError('loads are several; up-and-down starts from 1 load with 1 grip');
		}
		if (!(choice.step > 0 && choice.step <= largestStep - 1)) {
			throw new RangeError(`step is ${choice.step}; it must be above 0 and at most 0.1`);
		}
	}
}

/**
 * Lists the loads of a choice that a cap forbids; a plan is made only when there is none.
 *
 * The step and first-trial rules forbid no planned load, since the warm-up ladder climbs to it;
 * they set where the ladder starts, and are asked again before each hang.
 *
 * @param choice everything the plan is made from
 * @returns refusals in the order of the grips; empty when the plan may be made
 * @throws RangeError as `checkChoice` and `loadCap`
 * Source: derived
 * Example: a person not marked adult → every load refused, reason 'adult', limit 0
 */
export function planRefusals(choice: PlanChoice): Refusal[] {
	checkChoice(choice);
	// Pain with one grip ends suggestions for every grip of the session.
	const pain = choice.grips.some(({ history }) =>
		history.some((trial) => trial.session === choice.session && trial.reason === 'pain')
	);
	return choice.grips.flatMap(({ grip, loads, ownMaximum, bestGuess, history }) => {
		const rules = { ownMaximum, bestGuess, adult: choice.adult, session: choice.session };
		// A hang at any weight held stands in for the ladder, which lifts the two climbing rules.
		const climbed = { load: Number.MAX_VALUE, outcome: 'held', session: choice.session } as const;
		const found = loadCap([...history, climbed], rules);
		const cap = pain && choice.adult ? { limit: 0, reason: 'pain' as const } : found;
		return loadsOf(choice, grip, loads)
			.filter((load) => overCap(load, cap) !== null)
			.map((load) => ({ grip, load, ...cap }));
	});
}

/** Loads of a grip, the check load with them. */
export function loadsOf(choice: PlanChoice, grip: string, loads: readonly number[]): number[] {
	const check = choice.check?.grip === grip ? [choice.check.load] : [];
	return [...new Set([...loads, ...check])];
}

function whole(field: string, value: number, from: number, to: number): void {
	if (!Number.isInteger(value) || value < from || value > to) {
		throw new RangeError(`${field} is ${value}; it must be a whole number from ${from} to ${to}`);
	}
}

function above0(field: string, value: number): void {
	if (!(value > 0) || !Number.isFinite(value)) {
		throw new RangeError(`${field} is ${value}; it must be above 0`);
	}
}
