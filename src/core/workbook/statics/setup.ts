import { parse, type Expression } from '../algebra/expression.ts';
import { namesIn } from '../algebra/tree.ts';
import type { Relation, Setup } from './types.ts';

/** One equation as written in a family's file: quantity, formula, reason. */
export type Line = [gives: string, formula: string | Expression, why: string];

/**
 * Builds a set-up from equations written as text, and checks that they fit its quantities.
 * @param plan the set-up with its equations as `[quantity, formula, why]`
 * @returns the set-up
 * Errors: RangeError when an equation names an unknown quantity, or two give the same one.
 * Source: derived
 * Example: buildSetup({ …, lines: [['weight', 'mass*gravity', 'Weight is mass times g.']] })
 */
export function buildSetup(plan: Omit<Setup, 'relations'> & { lines: Line[] }): Setup {
	const { lines, ...rest } = plan;
	const ids = new Set(plan.quantities.map((each) => each.id));
	const all = new Set(lines.map(([gives]) => gives));
	const given = new Set<string>();
	const relations = lines.map(([gives, text, why]): Relation => {
		const formula = typeof text === 'string' ? parse(text) : text;
		for (const name of [gives, ...namesIn(formula)])
			if (!ids.has(name)) throw new RangeError(`set-up ${plan.id}: "${name}" is no quantity of it`);
		if (given.has(gives)) throw new RangeError(`set-up ${plan.id}: two equations give "${gives}"`);
		for (const name of namesIn(formula))
			if (all.has(name) && !given.has(name))
				throw new RangeError(`set-up ${plan.id}: "${name}" is used before it is given`);
		given.add(gives);
		return { gives, formula, why };
	});
	return { ...rest, relations };
}
