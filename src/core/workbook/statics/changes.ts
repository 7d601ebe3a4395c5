import type { Values } from '../algebra/evaluate.ts';
import { assumedFor } from './defaults.ts';
import { checkGivens } from './givens.ts';
import { trialValues } from './grid.ts';
import { completed } from './run.ts';
import type { Setup } from './types.ts';
import { shown } from './units.ts';

/** Where moving one given turns one regime into another. */
export type Change = { id: string; at: number; from: string; to: string; sentence: string };

/** The nearest change of regime on one side of a value, walking the trial values outwards. */
function nearest(
	regimeAt: (x: number) => string | undefined,
	from: number,
	walk: number[]
): { at: number; to: string } | undefined {
	const now = regimeAt(from);
	let before = from;
	for (const x of walk) {
		const next = regimeAt(x);
		if (next === undefined || next === now) {
			before = x;
			continue;
		}
		let [same, other] = [before, x];
		for (let turn = 0; turn < 100; turn += 1) {
			const middle = (same + other) / 2;
			if (regimeAt(middle) === now) same = middle;
			else other = middle;
		}
		return { at: other, to: regimeAt(x)! };
	}
	return undefined;
}

/**
 * What would change the regime: for each given, the nearest values at which something else happens.
 * @param setup the arrangement
 * @param given known values by id
 * @returns changes, nearest (as a factor) first; empty when the givens do not settle a regime
 * Source: derived
 * Example: a crate that rests under 100 N "slides once force passes 137.2 N".
 */
export function regimeChanges(setup: Setup, given: Values): Change[] {
	const { known } = checkGivens(setup, given);
	const start = { ...known, ...assumedFor(setup, known) };
	const derived = new Set(setup.relations.map((relation) => relation.gives));
	const regimeOf = (values: Values) => setup.regime(completed(setup, values))?.regime;
	const now = regimeOf(start);
	if (now === undefined) return [];
	const changes: Change[] = [];
	for (const of of setup.quantities) {
		const value = start[of.id];
		if (value === undefined || derived.has(of.id) || of.id === 'gravity') continue;
		const regimeAt = (x: number) => regimeOf({ ...start, [of.id]: x });
		const grid = trialValues(of);
		const sides = [grid.filter((x) => x > value), grid.filter((x) => x < value).reverse()];
		for (const walk of sides) {
			const found = nearest(regimeAt, value, walk);
			if (!found) continue;
			const verb = found.at > value ? 'rises past' : 'falls below';
			const sentence = `It ${found.to} once ${of.id} ${verb} ${shown(found.at, of.unit)}.`;
			changes.push({ id: of.id, at: found.at, from: now, to: found.to, sentence });
		}
	}
	const far = (each: Change) => Math.abs(Math.log(Math.abs(each.at / start[each.id]!) || 1e-9));
	return changes.sort((a, b) => far(a) - far(b));
}
