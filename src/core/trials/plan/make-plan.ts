import { firstShare } from '../cap-values.ts';
import { abba } from './abba.ts';
import { shuffledBlocks } from './blocks.ts';
import type { Row } from './blocks.ts';
import { loadCap } from './caps.ts';
import { withChecks } from './check-load.ts';
import { checkChoice, loadsOf, planRefusals } from './check-choice.ts';
import { conditionsOf } from './conditions.ts';
import { sessionSeconds } from './duration.ts';
import { warmUpLadder } from './ladder.ts';
import { orderTerm } from './order-term.ts';
import { tangleOf } from './tangle.ts';
import { upAndDownRows } from './up-and-down.ts';
import type { Condition, Plan, PlanChoice, PlannedTrial } from './types.ts';

const MOST_TRIALS = 500;

/**
 * Makes a fair plan for a session: a warm-up ladder, then trials ordered by the chosen design.
 *
 * The ladder of each grip starts at half the best guess, or at the cap if that is lower, and climbs
 * in steps of at most 10 % to that grip's heaviest load. Order terms and the mean rope term are
 * fixed here. The same choice gives the same plan.
 *
 * @param choice seed, design, grips with loads in kg, rope sides, repeats, check, times in s
 * @param ropeTermOf rope term of a hang (no unit), or nothing where the slope is not known
 * @returns the plan, with how far load and side stay tangled with order, and its duration in s
 * @throws RangeError when the choice cannot be planned, or a load breaks a cap
 * Source: derived
 * Example: two loads, two sides, three blocks, no check → 12 trials after the warm-up
 */
export function makePlan(choice: PlanChoice, ropeTermOf?: (hang: Condition) => number): Plan {
	checkChoice(choice);
	const [refused] = planRefusals(choice);
	if (refused) {
		throw new RangeError(
			`load of ${refused.grip} is ${refused.load} kg; the cap (${refused.reason}) allows 0 to ${refused.limit} kg`
		);
	}
	const ordered = order(choice);
	const { rows } = ordered;
	if (rows.length > MOST_TRIALS) {
		throw new RangeError(`trials are ${rows.length}; a plan holds 1 to ${MOST_TRIALS}`);
	}
	const warmUp = choice.grips.flatMap((grip) => ladderOf(choice, grip));
	const trials = [
		...warmUp,
		...rows.map((row, i) => ({ ...row, number: i + 1, order: orderTerm(i + 1, rows.length) }))
	];
	return {
		choice,
		trials,
		plannedNumber: rows.length,
		meanRopeTerm: ropeTermOf ? meanRopeTerm(rows, ropeTermOf) : null,
		tangle: ordered.tangle,
		shuffles: ordered.shuffles,
		promised: ordered.promised,
		durationSeconds: sessionSeconds(trials.length, {
			target: choice.targetSeconds,
			rest: choice.restSeconds,
			setup: choice.setupSeconds
		})
	};
}

function order(choice: PlanChoice): Pick<Plan, 'tangle' | 'shuffles' | 'promised'> & {
	rows: Row[];
} {
	const conditions = conditionsOf(choice.grips, choice.ropeSides);
	if (choice.design === 'shuffled') {
		// Checked before the search: 200 shuffles of a far too long list would freeze the page.
		if (conditions.length * choice.repeats > MOST_TRIALS) {
			throw new RangeError(
				`trials are ${conditions.length * choice.repeats}; a plan holds 1 to ${MOST_TRIALS}`
			);
		}
		return shuffledBlocks(conditions, choice.repeats, choice.seed, choice.check);
	}
	const { grip, loads } = choice.grips[0]!;
	const tests =
		choice.design === 'abba'
			? abba(conditions, choice.repeats, choice.seed)
			: upAndDownRows(
					{ grip, load: loads[0]!, ropeSides: choice.ropeSides },
					choice.repeats,
					choice.seed
				);
	const rows = withChecks(tests, choice.check);
	return { rows, tangle: tangleOf(rows), shuffles: 0, promised: false };
}

function ladderOf(choice: PlanChoice, grip: PlanChoice['grips'][number]): PlannedTrial[] {
	const { limit } = loadCap(grip.history, {
		ownMaximum: grip.ownMaximum,
		bestGuess: grip.bestGuess,
		adult: choice.adult,
		targetSeconds: choice.targetSeconds,
		session: choice.session
	});
	const heaviest = Math.max(...loadsOf(choice, grip.grip, grip.loads));
	const from = Math.min(firstShare * grip.bestGuess, limit);
	// Not analysed, so the plainest pull; a rope fixed to one side stays there.
	const sides = new Set(choice.ropeSides);
	const ropeSide = sides.size === 1 ? choice.ropeSides[0]! : 'plumb';
	return warmUpLadder(heaviest, from, choice.increment).map((load) => ({
		kind: 'warm-up',
		number: null,
		block: null,
		grip: grip.grip,
		load,
		ropeSide,
		order: null
	}));
}

/** Where the load is decided on the day, the load of the first trial stands in. */
function meanRopeTerm(rows: readonly Row[], ropeTermOf: (hang: Condition) => number): number {
	const first = rows.find((row) => row.load !== null)!.load!;
	const terms = rows.map((row) => ropeTermOf({ ...row, load: row.load ?? first }));
	return terms.reduce((sum, term) => sum + term, 0) / terms.length;
}
