import type { Values } from '../algebra/evaluate.ts';
import type { Setup } from './types.ts';

/** Values taken because they were not given; a default may point to another given. */
export function defaultsFor(setup: Setup, known: ReadonlySet<string>, given: Values): Values {
	const taken: Values = {};
	for (const each of setup.quantities) {
		if (known.has(each.id) || each.default === undefined) continue;
		const value = typeof each.default === 'number' ? each.default : given[each.default];
		if (value !== undefined) taken[each.id] = value;
	}
	return taken;
}
