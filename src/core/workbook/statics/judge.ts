import type { Values } from '../algebra/evaluate.ts';
import { isWholeRange } from './grid.ts';
import type { Setup, Solution, Verdict } from './types.ts';
import { shown } from './units.ts';

/** Loads that a student may give; where one is given, the state is the one under that load. */
const ownLoads = ['force', 'push', 'speed'];

/** Bounds that hold in any state: they do not say that the body is at its limit. */
const isBound = (id: string) => id.endsWith('Limit') || id.startsWith('needed');

/**
 * Says what happens: any value fits, about to slip because a limiting value is asked or given, or
 * what the set-up makes of the values.
 * @param setup the arrangement
 * @param ask id of the asked quantity
 * @param used givens that the answer needed
 * @param solutions the answer's values
 * @param values all quantities, one record a solution
 * @returns regime and reason
 * Source: derived
 */
export function judge(
	setup: Setup,
	ask: string,
	used: string[],
	solutions: Solution[],
	values: Values[]
): Verdict {
	const stretch = solutions.find((each) => each.upTo !== undefined);
	if (stretch) {
		const from = shown(stretch.value, stretch.unit);
		const of = setup.quantities.find((each) => each.id === ask)!;
		if (isWholeRange(of, stretch.value, stretch.upTo!))
			return { regime: 'any', because: `${ask} cancels: any value of it fits these givens.` };
		const because = `${ask} cancels or does not matter between ${from} and ${shown(stretch.upTo!, stretch.unit)}: every value there fits.`;
		return { regime: 'any', because };
	}
	const edge = used.find((id) => setup.limits.includes(id) && !isBound(id));
	const underLoad = used.some((id) => ownLoads.includes(id));
	const limiting = setup.limits.includes(ask) && !isBound(ask) ? ask : underLoad ? undefined : edge;
	if (limiting !== undefined)
		return {
			regime: 'about to slip',
			because:
				limiting === ask
					? 'This is the value at which it is about to start.'
					: `The given ${limiting} is the value at which it is about to start.`
		};
	const seen = setup.regime(values[0]!);
	if (seen) return seen;
	if (setup.limits.includes(ask))
		return { regime: 'about to slip', because: 'This is the bound at which it would start.' };
	const because =
		'These givens settle the value; whether it holds would need a coefficient or a load as well.';
	return { regime: 'determined', because };
}
