import type { Expression } from './expression.ts';
import { timesIn } from './tree.ts';

const number = (value: number): Expression => ({ kind: 'number', value });
const pi: Expression = { kind: 'name', name: 'pi' };
const minus = (of: Expression): Expression => ({ kind: 'minus', of });
const call = (name: string, of: Expression): Expression => ({ kind: 'call', name, of: [of] });
const binary = (
	operator: '+' | '-' | '*' | '/' | '^',
	left: Expression,
	right: Expression
): Expression => ({ kind: 'binary', operator, left, right });

/** Undoes one function: every argument, within a turn, that gives `result`. */
function undoCall(name: string, result: Expression): Expression[] | undefined {
	switch (name) {
		case 'sin':
			return [call('asin', result), binary('-', pi, call('asin', result))];
		case 'cos':
			return [call('acos', result), minus(call('acos', result))];
		case 'tan':
			return [call('atan', result), binary('+', call('atan', result), pi)];
		case 'asin':
			return [call('sin', result)];
		case 'acos':
			return [call('cos', result)];
		case 'atan':
			return [call('tan', result)];
		case 'sqrt':
			return [binary('^', result, number(2))];
		case 'exp':
			return [call('ln', result)];
		case 'ln':
			return [call('exp', result)];
		case 'abs':
			return [result, minus(result)];
		default:
			return undefined;
	}
}

/** Undoes one sum, product, quotient or power; `first` says that the unknown stands on the left. */
function undoBinary(
	node: Extract<Expression, { kind: 'binary' }>,
	first: boolean,
	result: Expression
): Expression[] | undefined {
	const { operator, left, right } = node;
	switch (operator) {
		case '+':
			return [binary('-', result, first ? right : left)];
		case '-':
			return [first ? binary('+', result, right) : binary('-', left, result)];
		case '*':
			return [binary('/', result, first ? right : left)];
		case '/':
			return [first ? binary('*', result, right) : binary('/', left, result)];
		case '^': {
			if (!first) return [binary('/', call('ln', result), call('ln', left))];
			if (right.kind !== 'number') return undefined;
			if (right.value === 2) return [call('sqrt', result), minus(call('sqrt', result))];
			return [binary('^', result, number(1 / right.value))];
		}
	}
}

/**
 * Rearranges `target = formula` for a quantity that stands in the formula once.
 * @param formula the right-hand side
 * @param target id of the left-hand side
 * @param unknown id of the wanted quantity
 * @returns formulas for the unknown, one a branch (two for a sine, a square …);
 * undefined when it cannot be taken out by itself
 * Source: derived
 * Example: isolate(parse('mass*gravity'), 'weight', 'mass') is [weight / gravity].
 */
export function isolate(
	formula: Expression,
	target: string,
	unknown: string
): Expression[] | undefined {
	if (timesIn(formula, unknown) !== 1) return undefined;
	const descend = (node: Expression, result: Expression): Expression[] | undefined => {
		if (node.kind === 'name') return [result];
		let undone: Expression[] | undefined;
		let next: Expression | undefined;
		if (node.kind === 'minus') [undone, next] = [[minus(result)], node.of];
		else if (node.kind === 'call' && node.of.length === 1)
			[undone, next] = [undoCall(node.name, result), node.of[0]];
		else if (node.kind === 'binary') {
			const first = timesIn(node.left, unknown) === 1;
			[undone, next] = [undoBinary(node, first, result), first ? node.left : node.right];
		}
		if (!undone || !next) return undefined;
		const branches = undone.map((branch) => descend(next, branch));
		return branches.every((branch) => branch !== undefined) ? branches.flat() : undefined;
	};
	return descend(formula, { kind: 'name', name: target });
}
