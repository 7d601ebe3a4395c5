import { compile, type Evaluator, type Values } from '../algebra/evaluate.ts';
import type { Expression } from '../algebra/expression.ts';
import { roots } from '../algebra/roots.ts';
import { isInRange, trialValues } from './grid.ts';
import type { Quantity, Relation, Setup, Step } from './types.ts';

/** One way through the steps: all values, and the stretch of the last one where it may vary. */
export type Outcome = { values: Values; along: Record<string, number> };

/**
 * A value that came out but cannot be, and which quantity it was; or, with `reach`, a given that
 * no value of that quantity can bring about, and what its equation can give instead.
 */
export type Refusal = {
	id: string;
	value: number;
	values: Values;
	reach?: { id: string; low: number; high: number };
	/** True where an earlier quantity had been left open along a stretch. */
	open?: boolean;
};

const ready = new WeakMap<Expression, Evaluator>();
function evaluatorOf(formula: Expression): Evaluator {
	let found = ready.get(formula);
	if (!found) ready.set(formula, (found = compile(formula)));
	return found;
}

/** How far an equation is from holding, as a share of its left side. */
export function mismatch(relation: Relation, values: Values): number {
	const left = values[relation.gives]!;
	const difference = evaluatorOf(relation.formula)(values) - left;
	return left === 0 ? difference : difference / Math.abs(left);
}

/**
 * Takes the steps one after the other with numbers, following every branch.
 * @param setup the set-up, for the ranges
 * @param steps a way found by `planSteps`
 * @param start the givens
 * @param refused collects values that fell outside their range
 * @returns every outcome that stays in range
 * Source: derived
 */
export function runSteps(
	setup: Setup,
	steps: Step[],
	start: Values,
	refused: Refusal[] = []
): Outcome[] {
	const quantities = new Map(setup.quantities.map((each) => [each.id, each]));
	let outcomes: Outcome[] = [{ values: start, along: {} }];
	for (const step of steps) {
		const of = quantities.get(step.gives)!;
		outcomes = outcomes.flatMap((outcome) => {
			const kept: Outcome[] = [];
			const { at, along } = valuesOf(setup, step, of, outcome.values);
			for (const value of at) {
				const values = { ...outcome.values, [of.id]: value };
				if (isInRange(of, value)) kept.push({ ...outcome, values });
				else refused.push({ id: of.id, value, values });
			}
			for (const [from, to] of along)
				kept.push({
					values: { ...outcome.values, [of.id]: from },
					along: { ...outcome.along, [of.id]: to }
				});
			if (kept.length === 0 && step.kind !== 'forward')
				refused.unshift({
					...outOfReach(setup, step, of, outcome.values),
					open: Object.keys(outcome.along).length > 0
				});
			return kept;
		});
	}
	return outcomes;
}

/** What an equation can give as its unknown runs through its range. */
function outOfReach(setup: Setup, step: Step, of: Quantity, values: Values): Refusal {
	const { relation } = step;
	const reached = trialValues(of).flatMap((x) => {
		const trial = { ...values, [of.id]: x };
		const inner = step.kind === 'trial' ? runSteps(setup, step.inner, trial)[0]?.values : trial;
		const value = inner ? evaluatorOf(relation.formula)(inner) : NaN;
		return Number.isFinite(value) ? [value] : [];
	});
	const reach = {
		id: relation.gives,
		low: reached.reduce((a, b) => Math.min(a, b), Infinity),
		high: reached.reduce((a, b) => Math.max(a, b), -Infinity)
	};
	return { id: of.id, value: NaN, values, reach };
}

type Found = { at: number[]; along: [number, number][] };

function valuesOf(setup: Setup, step: Step, of: Quantity, values: Values): Found {
	if (step.kind === 'forward')
		return { at: [evaluatorOf(step.relation.formula)(values)], along: [] };
	const trial = (x: number) => ({ ...values, [of.id]: x });
	if (step.kind === 'isolate') {
		const f = (x: number) => mismatch(step.relation, trial(x));
		if (!step.formulas) return roots(f, trialValues(of), 1e-9);
		const candidates = step.formulas.map((formula) => evaluatorOf(formula)(values));
		if (candidates.every(Number.isNaN)) return roots(f, trialValues(of), 1e-9);
		const fits = candidates.filter((x) => Math.abs(f(x)) <= 1e-9 || !isInRange(of, x));
		return { at: distinct(fits), along: [] };
	}
	const plain = step.inner.every((each) => each.kind === 'forward');
	const closing = (x: number) => {
		if (!plain) {
			const inner = runSteps(setup, step.inner, trial(x))[0];
			return inner ? mismatch(step.relation, inner.values) : NaN;
		}
		const inner = trial(x);
		for (const each of step.inner) inner[each.gives] = evaluatorOf(each.relation.formula)(inner);
		return mismatch(step.relation, inner);
	};
	return roots(closing, trialValues(of), 1e-9);
}

function distinct(values: number[]): number[] {
	const kept: number[] = [];
	for (const value of values) {
		const scale = Math.max(Math.abs(value), 1e-12);
		if (!kept.some((other) => Math.abs(other - value) <= 1e-9 * scale)) kept.push(value);
	}
	const finite = kept.filter(Number.isFinite);
	return finite.length > 0 ? finite : kept;
}

/** All quantities that follow forwards from known values; those without a value are left out. */
export function completed(setup: Setup, known: Values): Values {
	const values: Values = { ...known };
	for (const relation of setup.relations) {
		if (values[relation.gives] !== undefined) continue;
		const value = evaluatorOf(relation.formula)(values);
		if (!Number.isNaN(value)) values[relation.gives] = value;
	}
	return values;
}
