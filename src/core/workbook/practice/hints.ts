import { isBranched } from '../algebra/tree.ts';
import type { Answer, Setup } from '../statics/types.ts';
import { workingLines } from '../statics/working.ts';

/** One step of help: words, and from some point on a line of TeX. */
export type Hint = { words: string; tex?: string };

/**
 * Help in steps, each giving away a little more: the drawing, the question of what happens, each
 * equation in turn, and last the numbers.
 * @param setup the arrangement
 * @param answer its solution
 * @returns hints in the order to show them; the last one shows the answer
 * Source: derived
 */
export function hintsFor(setup: Setup, answer: Answer): Hint[] {
	const values = answer.values[0];
	if (!values) return [];
	const drawn = setup.diagram(values);
	const names = [...new Set(drawn?.forces.map((each) => each.name) ?? [])];
	const draw: Hint[] = names.length
		? [{ words: `Draw each body by itself. These forces act: ${names.join(', ')}.` }]
		: [];
	const undecided = answer.steps.some((step) => isBranched(step.relation.formula));
	const decide: Hint[] = undecided
		? [
				{
					words:
						'Do not suppose what happens: compare what rest would need with what friction can give.'
				}
			]
		: [];
	const lines = workingLines(setup, answer);
	const equations = lines.map(({ why, symbols }): Hint => ({ words: why, tex: symbols }));
	const last = lines.at(-1);
	const numbers: Hint[] = last ? [{ words: 'With the numbers put in:', tex: last.numbers }] : [];
	return [...draw, ...decide, ...equations, ...numbers];
}
