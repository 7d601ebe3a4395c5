import type { Quantity } from '#core/workbook/statics/types.ts';
import { writeProblem } from './link.ts';
import { textOf } from './typed.ts';

/** The query of a link to a problem whose givens are in SI and radians. */
export function problemLink(
	quantities: readonly Pick<Quantity, 'id' | 'unit'>[],
	given: Record<string, number>,
	ask: string
): string {
	const texts: Record<string, string> = {};
	for (const [id, value] of Object.entries(given)) {
		const of = quantities.find((each) => each.id === id);
		if (of) texts[id] = textOf(value, of.unit);
	}
	return writeProblem({ arrangement: given.arrangement ?? 1, ask, texts });
}
