import type { Values } from '../algebra/evaluate.ts';
import { namesUsed, planSteps } from './plan.ts';
import { runSteps } from './run.ts';
import type { Setup, Step } from './types.ts';
import { shown } from './units.ts';

/**
 * Looks at givens that the answer did not need: do the others agree with them?
 * @param setup the set-up
 * @param known usable givens with what was assumed
 * @param own ids that the student gave
 * @param steps the way to the answer
 * @returns a sentence for each given that contradicts the others
 * Source: derived
 */
export function contradictions(
	setup: Setup,
	known: Values,
	own: string[],
	steps: Step[]
): string[] {
	const used = namesUsed(steps);
	const said: string[] = [];
	for (const id of own) {
		if (used.has(id)) continue;
		const rest = Object.fromEntries(Object.entries(known).filter(([other]) => other !== id));
		const way = planSteps(setup, new Set(Object.keys(rest)), id);
		if (!way) continue;
		const outcomes = runSteps(setup, way, rest).filter((each) => each.along[id] === undefined);
		const { unit, name } = setup.quantities.find((each) => each.id === id)!;
		const agree = outcomes.some(
			({ values }) => Math.abs(values[id]! - known[id]!) <= 5e-3 * Math.abs(known[id]!) + 1e-12
		);
		const first = outcomes[0]?.values[id];
		if (agree || first === undefined) continue;
		said.push(
			`One given too many: the others make ${id} (${name}) ${shown(first, unit)}, but ${shown(known[id]!, unit)} was given. The answer leaves it out.`
		);
	}
	return said;
}
