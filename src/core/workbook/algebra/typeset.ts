import type { Expression } from './expression.ts';
import { numberTex } from './number-text.ts';

const strength = { '+': 1, '-': 1, '*': 2, '/': 4, '^': 3 };
const functions: Record<string, string> = {
	...{ sin: '\\sin', cos: '\\cos', tan: '\\tan', asin: '\\arcsin', acos: '\\arccos' },
	...{ atan: '\\arctan', ln: '\\ln', min: '\\min', max: '\\max', sgn: '\\operatorname{sgn}' }
};

/** How tightly a node binds; a fraction, a root and a call need no brackets. */
function bindingOf(tree: Expression): number {
	if (tree.kind === 'minus') return 1;
	return tree.kind === 'binary' ? strength[tree.operator] : 4;
}

/** A lone letter (with its index) needs no brackets before its square. */
const squared = (tex: string) =>
	/^[A-Za-z](_\w|_\{[^{}]*\})?$/.test(tex) ? `{${tex}}^2` : `\\left(${tex}\\right)^2`;

/**
 * A formula as TeX.
 * @param tree the formula
 * @param name gives the TeX of a quantity: its symbol, or its number with unit
 * @param times sign between factors: a thin space for symbols, \cdot for numbers
 * @returns TeX for KaTeX
 * Source: derived
 * Example: typeset(parse('mass*gravity'), (id) => (id === 'mass' ? 'm' : 'g')) is 'm\\,g'.
 */
export function typeset(
	tree: Expression,
	name: (id: string) => string,
	times: '\\,' | '\\cdot ' = '\\,'
): string {
	const write = (node: Expression): string => typeset(node, name, times);
	const bracketed = (node: Expression, least: number) => {
		const text = write(node);
		return bindingOf(node) < least || (least > 1 && text.startsWith('-'))
			? `\\left(${text}\\right)`
			: text;
	};
	switch (tree.kind) {
		case 'number':
			return numberTex(tree.value, 10);
		case 'name':
			return tree.name === 'pi' ? '\\pi' : name(tree.name);
		case 'minus':
			return `-${bracketed(tree.of, 2)}`;
		case 'when': {
			const [a, b, yes, no] = [tree.left, tree.right, tree.yes, tree.no].map(write);
			return `\\begin{cases}${yes} & ${a}\\le ${b}\\\\ ${no} & ${a}>${b}\\end{cases}`;
		}
		case 'native':
			return tree.write(...tree.of.map(write));
		case 'call': {
			const [a, b] = tree.of.map(write);
			if (tree.name === 'sqrt') return `\\sqrt{${a}}`;
			if (tree.name === 'abs') return `\\left|${a}\\right|`;
			if (tree.name === 'exp') return `e^{${a}}`;
			if (tree.name === 'hypot') return `\\sqrt{${squared(a!)}+${squared(b!)}}`;
			const sign = functions[tree.name] ?? `\\operatorname{${tree.name}}`;
			if (b !== undefined) return `${sign}\\left(${a},\\,${b}\\right)`;
			return tree.of[0]!.kind === 'name' && !a!.startsWith('-')
				? `${sign} ${a}`
				: `${sign}\\left(${a}\\right)`;
		}
		case 'binary': {
			const { operator, left, right } = tree;
			if (operator === '/') return `\\frac{${write(left)}}{${write(right)}}`;
			if (operator === '^') return `${bracketed(left, 5)}^{${write(right)}}`;
			const rank = strength[operator];
			const between = operator === '*' ? times : operator;
			const second = bracketed(right, operator === '+' ? 1 : 2);
			const closed =
				operator === '+' && second.startsWith('-') ? `\\left(${second}\\right)` : second;
			return `${bracketed(left, rank)}${between}${closed}`;
		}
	}
}
