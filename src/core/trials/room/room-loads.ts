import { requireAllowed } from '../../units/allowed-range.ts';
import { largestStep } from '../cap-values.ts';

/** How a go ended. */
export type RoomOutcome = 'held' | 'slipped' | 'opened' | 'stopped' | 'pain';

/** One load of the room's experiment for one person, and whether the caps let it be hung. */
export type RoomLoad = {
	/** Net load, kg. */
	load: number;
	allowed: boolean;
	/** The heaviest load was lowered to the cap. */
	lowered: boolean;
};

/** A lowered heaviest load must still stand this factor above the one below it. */
export const leastStep = 1.03;
/** Forgives rounding where a load stands exactly on the cap. */
const tolerance = 1 + 1e-12;

/**
 * Finds one person's three loads as shares of body mass, under the planner's caps.
 * load = share · body mass; cap = 1.10 · heaviest load held; a heaviest load past the cap comes
 * down to the cap where that leaves a step of 3 %, and is left out otherwise
 * @param o.bodyMass kg, above 0
 * @param o.heldMass heaviest net load held in this grip so far, kg, above 0
 * @param o.shares light, plain and heavy as shares of body mass, rising, each above 0 and at most 1.5
 * @returns the three loads, kg; one that is not allowed must not be hung
 * Valid for: adults, unhurt, warmed up. The factors 1.10 and 1.03 are judgement, not measurement.
 * @throws RangeError for a field outside its range, or shares that do not rise
 * Source: derived.
 * Example: 70 kg who held 70 kg, shares 0.8, 1, 1.1: 56, 70 and 77 kg, all allowed.
 */
export function roomLoads(o: {
	bodyMass: number;
	heldMass: number;
	shares: readonly [number, number, number];
}): [RoomLoad, RoomLoad, RoomLoad] {
	requireAllowed('bodyMass', o.bodyMass, { above: 0, unit: 'kg' });
	requireAllowed('heldMass', o.heldMass, { above: 0, unit: 'kg' });
	o.shares.forEach((share, at) =>
		requireAllowed(`shares[${at}]`, share, { above: at === 0 ? 0 : o.shares[at - 1]!, max: 1.5 })
	);
	const cap = largestStep * o.heldMass;
	const [light, plain, heavy] = o.shares.map((share) => share * o.bodyMass) as [
		number,
		number,
		number
	];
	const whole = (load: number): RoomLoad => ({
		load,
		allowed: load <= cap * tolerance,
		lowered: false
	});
	const lowered: RoomLoad = { load: cap, allowed: cap >= plain * leastStep, lowered: true };
	const top = whole(heavy);
	return [whole(light), whole(plain), top.allowed || !lowered.allowed ? top : lowered];
}

/**
 * Says whether a load may still be hung after what this person's earlier goes did.
 * Pain ends it; a load at or above one at which the fingers opened, or the go was stopped, is blocked
 * @param load net load asked for, kg
 * @param done this person's goes so far: load in kg and outcome
 * @returns true when no earlier go blocks it
 * Valid for: one session and one grip. A slip blocks nothing.
 * Source: derived.
 * Example: after opening at 70 kg, 77 kg is blocked and 56 kg is not.
 */
export function stillAllowed(
	load: number,
	done: readonly { load: number; outcome: RoomOutcome }[]
): boolean {
	return done.every(
		({ outcome, load: before }) =>
			outcome !== 'pain' && !((outcome === 'opened' || outcome === 'stopped') && load >= before)
	);
}
