import type { Refusal } from './run.ts';
import type { Setup } from './types.ts';
import { shown } from './units.ts';

/**
 * Says which quantity makes an arrangement impossible, and why.
 * @param setup the arrangement
 * @param refusal what `runSteps` turned down
 * @returns a sentence
 * Source: derived
 * Example: "No angle gives a footDistance of 8 m: with the other givens it lies between 0 m and 5 m."
 */
export function refusalSentence(setup: Setup, refusal: Refusal): string {
	const { id, value, values, reach } = refusal;
	const of = setup.quantities.find((each) => each.id === id)!;
	if (reach) {
		const target = setup.quantities.find((each) => each.id === reach.id)!;
		const wanted = shown(values[reach.id] ?? NaN, target.unit);
		const start = `No ${of.name} (${id}) gives ${reach.id} (${target.name}) = ${wanted}`;
		if (reach.low > reach.high) return `${start}: the formula has no value here.`;
		if (reach.high - reach.low <= 1e-9 * Math.abs(reach.high))
			return `${start}: ${id} cancels, and ${reach.id} is ${shown(reach.low, target.unit)} whatever it is.`;
		const high =
			reach.high > 1e9 ? 'without an upper end' : `up to ${shown(reach.high, target.unit)}`;
		return `${start}: with the other givens it goes from ${shown(reach.low, target.unit)} ${high}.`;
	}
	if (!Number.isFinite(value))
		return `These givens leave the ${of.name} (${id}) without a finite value.`;
	const bound = value < of.min || (of.open && value === of.min) ? of.min : of.max;
	const word = bound === of.min ? (of.open ? 'not above' : 'below') : 'above';
	return `These givens would make the ${of.name} (${id}) ${shown(value, of.unit)}, ${word} ${shown(bound, of.unit)}: impossible here.`;
}
