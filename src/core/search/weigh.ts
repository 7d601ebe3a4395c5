import { loadPath, type LoadPath } from '../strength/along-load.ts';
import { contactAt, emptyContact, type Contact } from '../strength/contact-at.ts';
import { prepareHang, tiltHold, type PreparedHang } from '../strength/prepare-hang.ts';
import { clearanceOf } from './clearance.ts';
import { additionOf, hangsOf } from './hangs-of.ts';
import type { Plan, Trial } from './plan.ts';
import { solveForces } from './solve-forces.ts';
import { solveSlope } from './solve-slope.ts';
import { roundingClearance } from './thresholds.ts';

/** Margins of every go under one candidate, and how clearly each is as it was seen. */
export type Weighing = {
	slip: number[];
	/** Strength margin; while forces are not known, for each newton of reference force. */
	strength: number[];
	clearance: number[];
	/** The smallest clearance. */
	least: number;
	/** How many goes are met. */
	met: number;
	contact: Contact;
};

/** A record for weighCandidate to fill. */
export function emptyWeighing(): Weighing {
	return { slip: [], strength: [], clearance: [], least: 0, met: 0, contact: emptyContact() };
}

/**
 * Solves a candidate's slope and forces from what was seen, and weighs every go.
 * @param plan the law with its addition
 * @param values the candidate's numbers; slope and forces are written into it
 * @param barelyMargin slip margin wanted for the barely held go; where none was seen the slope stays
 * as drawn
 * @param weighing the record to fill
 * @returns false when no slope in the range gives that margin
 * Source: derived.
 * Example: a plumb constant ratio gives every go the slip margin of the barely held one.
 */
export function weighCandidate(
	plan: Plan,
	values: number[],
	barelyMargin: number,
	weighing: Weighing
): boolean {
	const { anchor, forcesAt, slopeAt, trials, request } = plan;
	for (let grip = 0; grip < request.grips.length; grip++) values[forcesAt + grip] = 1;
	const candidate = prepareCandidate(plan, values);
	if (anchor >= 0) {
		const trial = trials[anchor]!;
		const slope = solveSlope(
			candidate.hangs[trial.grip]!,
			trial.vertical,
			sideways(candidate, trial),
			barelyMargin,
			driftFactor(candidate.drift, trial.later),
			request.ranges.slope,
			weighing.contact
		);
		if (Number.isNaN(slope)) return false;
		values[slopeAt] = slope;
		for (const prepared of candidate.hangs) tiltHold(prepared, slope);
	}
	fillMargins(plan, candidate, weighing);
	solveForces(plan, values, weighing);
	for (let go = 0; go < trials.length; go++) {
		weighing.strength[go]! *= values[forcesAt + trials[go]!.grip]!;
	}
	judge(plan, weighing);
	return true;
}

/**
 * Weighs every go with all numbers as they are, slope and forces too.
 * @param plan the law with its addition
 * @param values all numbers of a set-up
 * @param weighing the record to fill
 * @returns the same record
 * Source: derived.
 * Example: after weighCandidate it gives the same clearances again.
 */
export function weighAsIs(plan: Plan, values: readonly number[], weighing: Weighing): Weighing {
	fillMargins(plan, prepareCandidate(plan, values), weighing);
	judge(plan, weighing);
	return weighing;
}

/**
 * Gives the factor by which a drift has changed the ratio some goes after the first.
 * exp(drift · later)
 * @param drift change of the ratio's logarithm from one go to the next, about its share a go
 * @param later goes after the first
 * @returns the factor, above 0
 * Valid for: a steady drift of the ratio with the number of goes; an assumed form.
 * Source: derived.
 * Example: driftFactor(0.02, 2) is 1.0408.
 */
export function driftFactor(drift: number, later: number): number {
	return Math.exp(drift * later);
}

/** What does not change from go to go: each grip's hang, and the way from light to heavy. */
type Candidate = { hangs: PreparedHang[]; light: LoadPath; heavy: LoadPath; drift: number };

function prepareCandidate(plan: Plan, values: readonly number[]): Candidate {
	const hangs = hangsOf(plan, values).map(prepareHang);
	return {
		hangs,
		light: loadPath(hangs[0]!, true),
		heavy: loadPath(hangs[0]!, false),
		drift: additionOf(plan, values).drift
	};
}

/** Horizontal load on all hands, N. */
function sideways({ light, heavy }: Candidate, { netMass, roped }: Trial): number {
	return roped ? light.start + light.rate * netMass : heavy.start;
}

function fillMargins(plan: Plan, candidate: Candidate, weighing: Weighing): void {
	const { contact, slip, strength } = weighing;
	const { hangs, drift } = candidate;
	for (let go = 0; go < plan.trials.length; go++) {
		const trial = plan.trials[go]!;
		const prepared = hangs[trial.grip]!;
		contactAt(prepared, trial.vertical, sideways(candidate, trial), contact);
		const { tangential, moment } = contact;
		const limit =
			drift === 0 ? contact.frictionLimit : contact.frictionLimit * driftFactor(drift, trial.later);
		slip[go] = contact.leadsOff ? 0 : tangential > 0 ? limit / tangential : Infinity;
		strength[go] = moment > 0 ? prepared.strongestMoment / moment : Infinity;
	}
}

function judge(plan: Plan, weighing: Weighing): void {
	weighing.least = Infinity;
	weighing.met = 0;
	for (let go = 0; go < plan.trials.length; go++) {
		const clearance = clearanceOf(plan.trials[go]!, go, weighing);
		weighing.clearance[go] = clearance;
		if (clearance > roundingClearance) weighing.met++;
		if (clearance < weighing.least) weighing.least = clearance;
	}
}
