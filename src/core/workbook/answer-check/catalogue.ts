import type { Values } from '../algebra/evaluate.ts';
import { isolate } from '../algebra/isolate.ts';
import { assumedFor } from '../statics/defaults.ts';
import { checkGivens } from '../statics/givens.ts';
import { namesUsed } from '../statics/plan.ts';
import { completed, runSteps } from '../statics/run.ts';
import { solveSetup } from '../statics/solve-setup.ts';
import type { Answer, Relation, Setup, Step } from '../statics/types.ts';
import { givenSlips } from './given-slips.ts';
import { functionSlips } from './function-slips.ts';
import { nameSlips } from './name-slips.ts';
import { resultSlips } from './result-slips.ts';
import { roundingSlips } from './rounding-slips.ts';
import type { Slip } from './slip.ts';
import { sumSlips } from './sum-slips.ts';

/** The most different numbers looked for in one problem: more would match wrong answers by chance. */
export const catalogueSize = 60;

function relationsIn(steps: Step[]): Relation[] {
	return steps.flatMap((step) => [
		...(step.kind === 'trial' ? relationsIn(step.inner) : []),
		step.relation
	]);
}

/** The same steps with one equation replaced. */
function withRelation(steps: Step[], from: Relation, to: Relation): Step[] {
	return steps.map((step): Step => {
		const relation = step.relation === from ? to : step.relation;
		if (step.kind === 'trial')
			return { ...step, relation, inner: withRelation(step.inner, from, to) };
		if (step.kind === 'isolate' && step.relation === from)
			return { ...step, relation, formulas: isolate(to.formula, to.gives, step.gives) };
		return { ...step, relation };
	});
}

/** The arrangement with no limits on what an equation gives: a slip may well lead outside them. */
function withoutRanges(setup: Setup, steps: Step[]): Setup {
	const derived = new Set(
		steps
			.filter((step) => step.kind !== 'trial' && !(step.kind === 'isolate' && !step.formulas))
			.map((step) => step.gives)
	);
	const quantities = setup.quantities.map((each) =>
		derived.has(each.id) ? { ...each, min: -Infinity, max: Infinity, open: false } : each
	);
	return { ...setup, quantities };
}

/**
 * The slips of one problem: each common error is made once, and its answer worked out by the same
 * equations and the same way as the right one.
 * @param setup the arrangement
 * @param given known values by id, SI and radians
 * @param ask id of the asked quantity
 * @param answer the right answer, if already at hand
 * @returns slips whose answer differs from every right one, the plainest first
 * Source: derived (the kinds of slip are those seen in printed solutions, see the oracle's README)
 */
export function slipCatalogue(
	setup: Setup,
	given: Values,
	ask: string,
	answer: Answer = solveSetup(setup, given, ask)
): Slip[] {
	const first = answer.solutions[0];
	if (!first) return [];
	const { known } = checkGivens(setup, given);
	const own = Object.fromEntries(Object.entries(known).filter(([id]) => id !== ask));
	const start = { ...own, ...assumedFor(setup, own, ask) };
	const all = answer.values[0] ?? start;
	const { steps } = answer;
	const slips: Slip[] = resultSlips(setup, all, ask, first.value);
	const loose = withoutRanges(setup, steps);
	const take = (slip: Omit<Slip, 'value'>, from: Values, way: Step[]) => {
		for (const { values } of runSteps(loose, way, from)) {
			const value = values[ask]!;
			slips.push({ ...slip, value });
			// A size that comes out negative is mostly written without its sign.
			if (value * first.value < 0) slips.push({ ...slip, value: -value, rank: slip.rank + 1 });
		}
	};
	const has = (id: string) => all[id] !== undefined;
	for (const relation of relationsIn(steps)) {
		const mutations = [
			...functionSlips(relation.formula),
			...nameSlips(relation.formula, has),
			...sumSlips(relation.formula),
			...roundingSlips(relation.formula)
		];
		for (const { formula, slip, words, rank } of mutations) {
			const wrong = { ...relation, formula };
			take({ slip, words, rank, step: relation.gives }, all, withRelation(steps, relation, wrong));
		}
	}
	for (const { start: wrong, ...slip } of givenSlips(setup, start, namesUsed(steps)))
		take(slip, { ...all, ...completed(setup, wrong) }, steps);
	return distinct(slips, answer);
}

function distinct(slips: Slip[], answer: Answer): Slip[] {
	const near = (a: number, b: number) =>
		Math.abs(a - b) <= 1e-6 * Math.max(Math.abs(a), Math.abs(b));
	const right = (value: number) =>
		answer.solutions.some((each) =>
			each.upTo === undefined ? near(value, each.value) : each.value <= value && value <= each.upTo
		);
	const kept: Slip[] = [];
	let values = 0;
	for (const slip of slips.sort((a, b) => a.rank - b.rank)) {
		if (!Number.isFinite(slip.value) || right(slip.value)) continue;
		const same = kept.filter((other) => near(other.value, slip.value));
		// Two slips may lead to one number: both are named, but no third.
		if (same.length > 1 || same.some((other) => other.slip === slip.slip)) continue;
		if (same.length === 0 && (values += 1) > catalogueSize) break;
		kept.push(slip);
	}
	return kept;
}
