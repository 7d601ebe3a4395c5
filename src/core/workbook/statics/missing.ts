import type { Values } from '../algebra/evaluate.ts';
import { planSteps } from './plan.ts';
import { completed } from './run.ts';
import { assumedFor } from './defaults.ts';
import type { Setup } from './types.ts';
import { shown } from './units.ts';

/**
 * Says which givens would settle the question, and what is settled already.
 * @param setup the set-up
 * @param known usable givens
 * @param ask id of the wanted quantity
 * @returns a sentence
 * Source: derived
 */
export function missingSentence(setup: Setup, known: Values, ask: string): string {
	const start = { ...known, ...assumedFor(setup, known, ask) };
	const have = new Set(Object.keys(start));
	const derived = new Set(setup.relations.map((relation) => relation.gives));
	const open = setup.quantities.filter((each) => !have.has(each.id) && each.id !== ask);
	const helps = (ids: string[]) => planSteps(setup, new Set([...have, ...ids]), ask) !== undefined;
	const one = open.filter((each) => helps([each.id]));
	const inputs = open.filter((each) => !derived.has(each.id));
	const pairs = one.length
		? []
		: inputs.flatMap((a, i) => inputs.slice(i + 1).map((b) => [a, b] as const));
	const pair = pairs.find(([a, b]) => helps([a.id, b.id]));
	const wanted = one.length
		? one
				.slice(0, 4)
				.map((each) => `${each.id} (${each.name})`)
				.join(', or ')
		: pair
			? `both ${pair[0].id} (${pair[0].name}) and ${pair[1].id} (${pair[1].name})`
			: inputs
					.slice(0, 4)
					.map((each) => `${each.id} (${each.name})`)
					.join(', ');
	const settled = Object.entries(completed(setup, start))
		.filter(([id]) => !have.has(id))
		.slice(0, 4)
		.map(
			([id, value]) => `${id} = ${shown(value, setup.quantities.find((q) => q.id === id)!.unit)}`
		);
	const rest = settled.length ? ` Already settled: ${settled.join(', ')}.` : '';
	if (wanted === '') return `Not enough is given to find ${ask}.${rest}`;
	return `Not enough is given to find ${ask}. Give ${wanted}.${rest}`;
}
