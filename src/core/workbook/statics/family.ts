import type { Values } from '../algebra/evaluate.ts';
import { regimeChanges, type Change } from './changes.ts';
import { assumedFor } from './defaults.ts';
import type { Diagram } from './diagram.ts';
import { checkGivens } from './givens.ts';
import { planSteps } from './plan.ts';
import { completed } from './run.ts';
import { solveSetup } from './solve-setup.ts';
import type { Answer, Quantity, Setup } from './types.ts';
import { workingLines, type WorkingLine } from './working.ts';

/** A quantity of a family, with the arrangements that have it. */
export type FamilyQuantity = Quantity & { arrangements: number[] };

/**
 * A family of problems: what can be given and asked, and how it is solved.
 * Values are in SI and radians. Where a family has several arrangements, the quantity
 * `arrangement` picks one; without it the first that has all the names is taken.
 */
export type Family = {
	id: string;
	title: string;
	quantities: FamilyQuantity[];
	setups: Setup[];
	/** Solves for any quantity from enough of the others. */
	solve: (given: Values, ask: string) => Answer;
	/** The way to the answer (or to a further solution) as lines of TeX. */
	working: (given: Values, ask: string, which?: number) => WorkingLine[];
	/** Free-body diagram of the state that the givens (and the answer to `ask`) describe. */
	diagram: (given: Values, ask?: string) => Diagram | undefined;
	/** What would change the regime. */
	changes: (given: Values) => Change[];
};

/**
 * Picks the arrangement of a family that a set of names belongs to.
 * @param setups the family's arrangements
 * @param given givens, perhaps with `arrangement`
 * @param ask the asked quantity, if any
 * @returns the arrangement, and a warning where the choice was not clear
 * Source: derived
 */
export function chooseSetup(
	setups: Setup[],
	given: Values,
	ask?: string
): { setup: Setup; warnings: string[] } {
	const warnings: string[] = [];
	const wanted = given.arrangement;
	const chosen = setups.find((each) => each.number === wanted);
	if (chosen) return { setup: chosen, warnings };
	if (wanted !== undefined)
		warnings.push(
			`arrangement = ${wanted} is none of ${setups.map((each) => each.number).join(', ')}.`
		);
	const names = Object.keys(given).filter((id) => id !== 'arrangement');
	const has = (setup: Setup, id: string) => setup.quantities.some((each) => each.id === id);
	const asked = setups.filter((setup) => ask === undefined || has(setup, ask));
	const fitting = asked.filter((setup) => names.every((id) => has(setup, id)));
	const solvable = (setup: Setup) => {
		const own = names.filter((id) => has(setup, id) && id !== ask);
		const known = Object.fromEntries(own.map((id) => [id, given[id]!]));
		const more = Object.keys(assumedFor(setup, known, ask));
		const ids = new Set([...own, ...more]);
		return ask !== undefined && planSteps(setup, ids, ask) !== undefined;
	};
	const best = fitting.find(solvable) ?? fitting[0];
	if (best) return { setup: best, warnings };
	const overlap = (setup: Setup) => names.filter((id) => has(setup, id)).length;
	const ranked = [...(asked.length ? asked : setups)].sort((a, b) => overlap(b) - overlap(a));
	return { setup: ranked[0]!, warnings };
}

function quantitiesOf(setups: Setup[]): FamilyQuantity[] {
	const found = new Map<string, FamilyQuantity>();
	for (const setup of setups)
		for (const each of setup.quantities) {
			const known = found.get(each.id);
			if (known) known.arrangements.push(setup.number);
			else found.set(each.id, { ...each, arrangements: [setup.number] });
		}
	return [...found.values()];
}

/**
 * Makes a family from its arrangements.
 * @param id short name in links
 * @param title heading
 * @param setups arrangements, the plainest first
 * @returns the family
 * Source: derived
 */
export function makeFamily(id: string, title: string, setups: Setup[]): Family {
	const solve = (given: Values, ask: string): Answer => {
		const { setup, warnings } = chooseSetup(setups, given, ask);
		const answer = solveSetup(setup, given, ask);
		return { ...answer, warnings: [...warnings, ...answer.warnings] };
	};
	const setupOf = (answer: Answer) => setups.find((each) => each.id === answer.setup)!;
	return {
		...{ id, title, setups, solve },
		quantities: quantitiesOf(setups),
		working(given, ask, which = 0) {
			const answer = solve(given, ask);
			return workingLines(setupOf(answer), answer, which);
		},
		diagram(given, ask) {
			const { setup } = chooseSetup(setups, given, ask);
			const { known } = checkGivens(setup, given);
			const from = ask === undefined ? known : (solveSetup(setup, given, ask).values[0] ?? known);
			const more = assumedFor(setup, from);
			return setup.diagram(completed(setup, { ...from, ...more }));
		},
		changes: (given) => regimeChanges(chooseSetup(setups, given).setup, given)
	};
}
