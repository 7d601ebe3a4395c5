import type { Values } from '../algebra/evaluate.ts';
import { assumedFor } from './defaults.ts';
import { checkGivens } from './givens.ts';
import { judge } from './judge.ts';
import { missingSentence } from './missing.ts';
import { namesUsed, planSteps, trialWays } from './plan.ts';
import { refusalSentence } from './refusal.ts';
import { completed, runSteps, type Outcome, type Refusal } from './run.ts';
import { stretchOf } from './stretch.ts';
import { contradictions } from './surplus.ts';
import type { Answer, Setup, Solution, Step, Verdict } from './types.ts';

/** Finds a way without, then with, assumed values. */
function findWay(setup: Setup, known: Values, ask: string) {
	const ids = new Set(Object.keys(known));
	const direct = planSteps(setup, ids, ask, false);
	if (direct) return { steps: direct, start: known, assumed: {} };
	const attempt = (inputsOnly: boolean) => {
		const assumed = assumedFor(setup, known, ask, inputsOnly);
		const start = { ...known, ...assumed };
		return { assumed, start, steps: planSteps(setup, new Set(Object.keys(start)), ask) };
	};
	const plain = attempt(true);
	const { assumed, start, steps } = plain.steps ? plain : attempt(false);
	if (!steps) return undefined;
	const used = namesUsed(steps);
	const needed = Object.entries(assumed).filter(([id]) => used.has(id));
	return { steps, start, assumed: Object.fromEntries(needed) };
}

/**
 * Takes the steps; where they leave a whole stretch open, the asked quantity itself is tried in
 * every equation that can close, so that neither a solution inside the stretch nor an equation
 * that says more is lost.
 */
function takeWay(setup: Setup, steps: Step[], start: Values, ask: string, refused: Refusal[]) {
	const outcomes = runSteps(setup, steps, start, refused);
	const isOpen = (outcome: Outcome) => Object.keys(outcome.along).length > 0;
	const settled = outcomes.length > 0 || !refused.some((each) => each.open);
	if (!outcomes.some(isOpen) && settled) return { steps, outcomes };
	const tried = trialWays(setup, new Set(Object.keys(start)), ask).map((way) => {
		const refusals: Refusal[] = [];
		return { steps: way, outcomes: runSteps(setup, way, start, refusals), refusals };
	});
	const best = tried.find((each) => !each.outcomes.some(isOpen)) ?? tried[0];
	if (!best) return { steps, outcomes };
	refused.splice(0, refused.length, ...best.refusals);
	return best;
}

/** Fills in what follows from one outcome, with the remaining assumed values where they help. */
function filled(setup: Setup, outcome: Outcome): Values {
	const values = completed(setup, outcome.values);
	return completed(setup, { ...values, ...assumedFor(setup, values) });
}

/** Chooses the verdict when no value is left. */
function verdictWithout(setup: Setup, ask: string, start: Values, refused: Refusal[]): Verdict {
	const values = completed(setup, { ...start, ...(refused[0]?.values ?? {}) });
	const physics = setup.noLimit?.(values, ask);
	if (physics) return physics;
	const judged = setup.regime(values);
	if (judged?.regime === 'lifts off') return judged;
	const because = refused[0]
		? refusalSentence(setup, refused[0])
		: 'No value in the allowed range fits these givens.';
	return { regime: 'impossible', because };
}

/**
 * Solves one arrangement for any of its quantities.
 * @param setup the arrangement
 * @param given known values by id, SI and radians
 * @param ask id of the wanted quantity
 * @returns regime, every solution, warnings, and the way there
 * Errors: RangeError when `ask` is no quantity of the arrangement.
 * Source: derived
 */
export function solveSetup(setup: Setup, given: Values, ask: string): Answer {
	const of = setup.quantities.find((each) => each.id === ask);
	if (!of) throw new RangeError(`ask = "${ask}" is no quantity of "${setup.title}"`);
	const { known, warnings } = checkGivens(setup, given);
	const own = Object.keys(known);
	const answer = (verdict: Verdict, more: Partial<Answer>): Answer => ({
		...{ solutions: [], values: [], steps: [], assumed: {}, setup: setup.id },
		...verdict,
		...more,
		warnings: [...warnings, ...(more.warnings ?? [])]
	});
	if (known[ask] !== undefined)
		warnings.push(`${ask} is asked and given: the given value is used as a check only.`);
	const free = Object.fromEntries(Object.entries(known).filter(([id]) => id !== ask));
	const way = findWay(setup, free, ask);
	if (!way) {
		const stretch = stretchOf(setup, free, ask);
		if (stretch) return answer(stretch, stretch);
		const missing = missingSentence(setup, free, ask);
		return answer(
			{ regime: 'undetermined', because: missing },
			{
				warnings: [missing],
				values: [completed(setup, free)]
			}
		);
	}
	const { start, assumed } = way;
	const refused: Refusal[] = [];
	const { steps, outcomes } = takeWay(setup, way.steps, start, ask, refused);
	const extra = contradictions(setup, { ...start, ...known }, own, steps);
	if (outcomes.length === 0) {
		const verdict = verdictWithout(setup, ask, start, refused);
		return answer(verdict, { warnings: [...extra, verdict.because], steps, assumed });
	}
	const solutions = outcomes.map(({ values, along }): Solution => {
		const upTo = along[ask];
		return { value: values[ask]!, unit: of.unit, ...(upTo === undefined ? {} : { upTo }) };
	});
	const values = outcomes.map((outcome) => filled(setup, outcome));
	const used = namesUsed(steps);
	const verdict = judge(
		setup,
		ask,
		own.filter((id) => used.has(id)),
		solutions,
		values
	);
	return answer(verdict, { solutions, values, steps, assumed, warnings: extra });
}
