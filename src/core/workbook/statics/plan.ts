import type { Expression } from '../algebra/expression.ts';
import { isolate } from '../algebra/isolate.ts';
import { isBranched, namesIn } from '../algebra/tree.ts';
import type { Relation, Setup, Step } from './types.ts';

const names = new WeakMap<Relation, string[]>();
function namesOf(relation: Relation): string[] {
	let found = names.get(relation);
	if (!found) names.set(relation, (found = [relation.gives, ...namesIn(relation.formula)]));
	return found;
}

const turned = new WeakMap<Relation, Map<string, Expression[] | undefined>>();
/** `isolate`, worked out once for each equation and quantity. */
function formulasFor(relation: Relation, unknown: string): Expression[] | undefined {
	let found = turned.get(relation);
	if (!found) turned.set(relation, (found = new Map()));
	if (!found.has(unknown)) found.set(unknown, isolate(relation.formula, relation.gives, unknown));
	return found.get(unknown);
}

/** Names a step needs before it can be taken. */
function needsOf(step: Step): string[] {
	return namesOf(step.relation).filter((name) => name !== step.gives);
}

/**
 * Goes from known quantities to all that follow from them, one equation at a time.
 * Equations are used forwards first, and turned round when a single quantity of one is missing.
 * @param setup the set-up
 * @param known ids of known quantities
 * @param ask stop when this is known; undefined to go on to the end
 * @param turnable false: turn an equation round only where the quantity can be taken out by algebra
 * @returns the steps taken
 * Source: derived
 */
export function follow(
	setup: Setup,
	known: ReadonlySet<string>,
	ask?: string,
	turnable = true
): Step[] {
	const have = new Set(known);
	const used = new Set<Relation>();
	const steps: Step[] = [];
	const next = (): Step | undefined => {
		let turnedStep: Step | undefined;
		for (const relation of setup.relations) {
			if (used.has(relation)) continue;
			const missing = namesOf(relation).filter((name) => !have.has(name));
			const gives = missing[0];
			if (missing.length !== 1 || gives === undefined) continue;
			if (gives === relation.gives) return { kind: 'forward', relation, gives };
			if (turnedStep && gives !== ask) continue;
			const formulas = formulasFor(relation, gives);
			// A formula with branches may fit a whole stretch; only the asked quantity may be one.
			if (gives !== ask && isBranched(relation.formula)) continue;
			if (formulas || turnable) turnedStep = { kind: 'isolate', relation, gives, formulas };
		}
		return turnedStep;
	};
	while (ask === undefined || !have.has(ask)) {
		const step = next();
		if (!step) break;
		used.add(step.relation);
		have.add(step.gives);
		steps.push(step);
	}
	return steps;
}

/** Only the steps that lead to the wanted quantities. */
export function needed(steps: Step[], wanted: string[]): Step[] {
	const want = new Set(wanted);
	const kept: Step[] = [];
	for (const step of [...steps].reverse()) {
		if (!want.has(step.gives)) continue;
		needsOf(step).forEach((name) => want.add(name));
		kept.unshift(step);
	}
	return kept;
}

/** Every quantity that a way to an answer touches. */
export function namesUsed(steps: Step[]): Set<string> {
	return new Set(
		steps.flatMap((step) => [
			...namesOf(step.relation),
			step.gives,
			...(step.kind === 'trial' ? namesUsed(step.inner) : [])
		])
	);
}

/** Ways that suppose one unknown known, each with an equation that then closes on itself. */
function waysSupposing(
	setup: Setup,
	known: ReadonlySet<string>,
	ask: string,
	supposed: string
): Step[][] {
	const have = new Set([...known, supposed]);
	const inner = follow(setup, have, undefined, false);
	inner.forEach((step) => have.add(step.gives));
	if (!have.has(ask)) return [];
	const used = new Set(inner.map((step) => step.relation));
	return setup.relations.flatMap((relation): Step[][] => {
		if (used.has(relation) || !namesOf(relation).every((name) => have.has(name))) return [];
		const path = needed(inner, namesOf(relation));
		if (![...namesOf(relation), ...path.flatMap(needsOf)].includes(supposed)) return [];
		const trial: Step = { kind: 'trial', relation, gives: supposed, inner: path };
		return [supposed === ask ? [trial] : [trial, ...needed(inner, [ask])]];
	});
}

/**
 * Every way that tries values of the asked quantity itself until an equation closes.
 * @param setup the set-up
 * @param known ids of the givens
 * @param ask id of the wanted quantity
 * @returns one way for each equation that can close
 * Source: derived
 */
export function trialWays(setup: Setup, known: ReadonlySet<string>, ask: string): Step[][] {
	return waysSupposing(setup, known, ask, ask);
}

/** The first way by supposing: the asked quantity, then plain inputs, then the rest. */
function supposing(setup: Setup, known: ReadonlySet<string>, ask: string): Step[] | undefined {
	const derived = new Set(setup.relations.map((relation) => relation.gives));
	const unknown = setup.quantities.map((each) => each.id).filter((id) => !known.has(id));
	const rank = (id: string) => (id === ask ? 0 : derived.has(id) ? 2 : 1);
	for (const supposed of unknown.sort((a, b) => rank(a) - rank(b))) {
		const [way] = waysSupposing(setup, known, ask, supposed);
		if (way) return way;
	}
	return undefined;
}

/**
 * Finds a way from the givens to the asked quantity.
 * @param setup the set-up
 * @param known ids of the givens
 * @param ask id of the wanted quantity
 * @param suppose false: leave out ways that need two equations at once
 * @returns the steps, in order; undefined when the givens do not settle it
 * Valid for one equation at a time, or two that share one unknown.
 * Source: derived
 */
export function planSteps(
	setup: Setup,
	known: ReadonlySet<string>,
	ask: string,
	suppose = true
): Step[] | undefined {
	const steps = follow(setup, known, ask);
	if (known.has(ask) || steps.some((step) => step.gives === ask)) return needed(steps, [ask]);
	return suppose ? supposing(setup, known, ask) : undefined;
}
