import type { Values } from '../algebra/evaluate.ts';
import { assumedFor } from './defaults.ts';
import { planSteps } from './plan.ts';
import { completed } from './run.ts';
import type { Answer, Setup, Step } from './types.ts';

/**
 * A quantity that no equation of rest fixes, because friction takes up the difference: every value
 * between two others will do. Without the upper one there is no upper end.
 * @param setup the arrangement
 * @param known usable givens
 * @param ask id of the asked quantity
 * @returns the answer's parts; undefined where the arrangement has no such stretch, or a bound stays open
 * Source: derived
 * Example: shoes of any coefficient from tan ψ upwards hold legs that press at ψ from the normal.
 */
export function stretchOf(
	setup: Setup,
	known: Values,
	ask: string
): Omit<Answer, 'warnings' | 'setup'> | undefined {
	const bounds = setup.stretches?.[ask];
	const of = setup.quantities.find((each) => each.id === ask);
	if (!bounds || !of) return undefined;
	const assumed = assumedFor(setup, known, ask);
	const values = completed(setup, { ...known, ...assumed });
	const from = values[bounds.from];
	const to = bounds.to === undefined ? Infinity : values[bounds.to];
	if (from === undefined || to === undefined) return undefined;
	// A bound past every limit (a wedge that no push drives in) leaves the stretch open.
	const upTo = to > 0 ? to : Infinity;
	const value = Math.max(from, of.min);
	const have = new Set(Object.keys({ ...known, ...assumed }));
	const ways = [bounds.from, ...(bounds.to === undefined ? [] : [bounds.to])].map(
		(id) => planSteps(setup, have, id) ?? []
	);
	const steps = [
		...new Map(ways.flat().map((step): [string, Step] => [step.gives, step])).values()
	];
	return {
		...{ regime: 'rests', because: bounds.because, assumed, steps },
		solutions: [{ value, unit: of.unit, upTo }],
		values: [{ ...values, [ask]: value }]
	};
}
