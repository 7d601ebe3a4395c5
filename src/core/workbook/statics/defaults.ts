import type { Values } from '../algebra/evaluate.ts';
import { follow } from './plan.ts';
import type { Quantity, Setup } from './types.ts';

/**
 * Values to take where something was not given; a default may point to another given.
 * Givens come first, then what follows from them; quantities that an equation could still give
 * are assumed last, so that a mass that was given is never overruled by an assumed weight.
 * @param setup the set-up
 * @param known usable givens
 * @param ask id of the wanted quantity, never assumed
 * @param inputsOnly true: assume nothing that an equation could give
 * @returns assumed values by id
 * Source: derived
 * Example: without a gravity among the givens, { gravity: 9.80665 }.
 */
export function assumedFor(setup: Setup, known: Values, ask?: string, inputsOnly = false): Values {
	const derived = new Set(setup.relations.map((relation) => relation.gives));
	const taken: Values = {};
	const round = (wanted: (of: Quantity) => boolean) => {
		const have = new Set([...Object.keys(known), ...Object.keys(taken)]);
		const steps = follow(setup, have, undefined, false);
		const reached = new Set([...have, ...steps.map((step) => step.gives)]);
		for (const each of setup.quantities) {
			if (each.default === undefined || each.id === ask || reached.has(each.id)) continue;
			if (!wanted(each)) continue;
			const value = typeof each.default === 'number' ? each.default : known[each.default];
			if (value !== undefined) taken[each.id] = value;
		}
	};
	round((of) => !derived.has(of.id));
	if (!inputsOnly) round((of) => derived.has(of.id));
	return taken;
}
