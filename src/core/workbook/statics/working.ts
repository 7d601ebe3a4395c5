import type { Values } from '../algebra/evaluate.ts';
import { numberTex } from '../algebra/number-text.ts';
import { typeset } from '../algebra/typeset.ts';
import type { Answer, Setup, Step } from './types.ts';
import { unitInTex } from './units.ts';

/** One line of a working: why it holds, in symbols, and with the numbers in (both TeX). */
export type WorkingLine = { gives: string; why: string; symbols: string; numbers: string };

/** TeX writers of one set-up: a quantity's symbol, and its value with unit. */
function writers(setup: Setup, values: Values) {
	const find = (id: string) => setup.quantities.find((each) => each.id === id)!;
	const symbol = (id: string) => find(id).symbol;
	const valued = (id: string, digits = 4) => {
		const [{ unit }, value] = [find(id), values[id] ?? NaN];
		if (unit === 'rad') return `${numberTex((value * 180) / Math.PI, digits)}^\\circ`;
		const tex = unitInTex(unit);
		return tex ? `${numberTex(value, digits)}\\,${tex}` : numberTex(value, digits);
	};
	return { symbol, valued };
}

function lineOf(setup: Setup, step: Step, values: Values): WorkingLine[] {
	const { symbol, valued } = writers(setup, values);
	const { gives, relation } = step;
	const equation = `${symbol(relation.gives)}=${typeset(relation.formula, symbol)}`;
	const result = `${symbol(gives)}=${valued(gives)}`;
	const { why } = relation;
	if (step.kind === 'forward') {
		const inserted = typeset(relation.formula, valued, '\\cdot ');
		return [
			{ gives, why, symbols: equation, numbers: `${symbol(gives)}=${inserted}=${valued(gives)}` }
		];
	}
	const keepUnknown = (id: string) => (id === gives ? symbol(id) : valued(id));
	if (step.kind === 'isolate') {
		const formula = step.formulas?.[0];
		const inserted = formula
			? `${symbol(gives)}=${typeset(formula, valued, '\\cdot ')}=${valued(gives)}`
			: `${valued(relation.gives)}=${typeset(relation.formula, keepUnknown, '\\cdot ')}\\;\\Rightarrow\\;${result}`;
		const turned = formula
			? `${equation}\\;\\Rightarrow\\;${symbol(gives)}=${typeset(formula, symbol)}`
			: equation;
		return [{ gives, why, symbols: turned, numbers: inserted }];
	}
	const inner = step.inner.map((each): WorkingLine => {
		const { formula, gives: id, why: reason } = each.relation;
		const symbols = `${symbol(id)}=${typeset(formula, symbol)}`;
		const known = new Set([gives, ...step.inner.map((other) => other.gives)]);
		const open = (name: string) => (known.has(name) ? symbol(name) : valued(name));
		return {
			gives: id,
			why: reason,
			symbols,
			numbers: `${symbol(id)}=${typeset(formula, open, '\\cdot ')}`
		};
	});
	const check = `${valued(relation.gives)}=${typeset(relation.formula, valued, '\\cdot ')}\\;\\Rightarrow\\;${result}`;
	return [
		...inner,
		{
			gives,
			why: `${why} The ${symbolText(setup, gives)} is found by trial: both sides must agree.`,
			symbols: equation,
			numbers: check
		}
	];
}

function symbolText(setup: Setup, id: string): string {
	return setup.quantities.find((each) => each.id === id)!.name;
}

/**
 * The way to an answer, line by line, from the same equations that gave it.
 * @param setup the arrangement
 * @param answer what `solveSetup` returned
 * @param which index of the solution to write out
 * @returns lines of TeX; none when there is no solution
 * Source: derived
 */
export function workingLines(setup: Setup, answer: Answer, which = 0): WorkingLine[] {
	const values = answer.values[which];
	if (!values || answer.solutions.length === 0) return [];
	return answer.steps.flatMap((step) => lineOf(setup, step, values));
}
