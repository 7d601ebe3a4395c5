import type { Expression } from './expression.ts';

/** Numbers by quantity id, SI and radians. */
export type Values = Record<string, number>;

/** A formula made ready to be worked out many times. */
export type Evaluator = (values: Values) => number;

const oneArgument: Record<string, (x: number) => number> = {
	...{ sin: Math.sin, cos: Math.cos, tan: Math.tan, asin: Math.asin, acos: Math.acos },
	...{ atan: Math.atan, sqrt: Math.sqrt, exp: Math.exp, ln: Math.log, abs: Math.abs },
	sgn: Math.sign
};
const twoArguments: Record<string, (x: number, y: number) => number> = {
	...{ hypot: Math.hypot, min: Math.min, max: Math.max }
};

/**
 * Turns a formula into a function of the quantities' values.
 * @param tree the formula
 * @returns a function of values by id; NaN where a value is missing or the formula has none
 * Errors: RangeError on an unknown function.
 * Source: derived
 * Example: compile(parse('mass*gravity'))({ mass: 2, gravity: 10 }) is 20.
 */
export function compile(tree: Expression): Evaluator {
	switch (tree.kind) {
		case 'number': {
			const { value } = tree;
			return () => value;
		}
		case 'name': {
			const { name } = tree;
			return name === 'pi' ? () => Math.PI : (values) => values[name] ?? NaN;
		}
		case 'minus': {
			const of = compile(tree.of);
			return (values) => -of(values);
		}
		case 'when': {
			const [left, right, yes, no] = [tree.left, tree.right, tree.yes, tree.no].map(compile);
			return (values) => {
				const [a, b] = [left!(values), right!(values)];
				if (Number.isNaN(a) || Number.isNaN(b)) return NaN;
				// A force at its limit still holds; the allowance only covers rounding.
				return a <= b + 1e-12 * Math.abs(b) ? yes!(values) : no!(values);
			};
		}
		case 'native': {
			const of = tree.of.map(compile);
			const { value } = tree;
			return (values) => {
				const numbers = of.map((each) => each(values));
				return numbers.some(Number.isNaN) ? NaN : value(...numbers);
			};
		}
		case 'call': {
			const [a, b] = tree.of.map(compile);
			const one = oneArgument[tree.name];
			if (one) return (values) => one(a!(values));
			const two = twoArguments[tree.name];
			if (two) return (values) => two(a!(values), b!(values));
			throw new RangeError(`function "${tree.name}" is not known`);
		}
		case 'binary':
			return compileBinary(tree.operator, compile(tree.left), compile(tree.right));
	}
}

function compileBinary(operator: string, left: Evaluator, right: Evaluator): Evaluator {
	if (operator === '+') return (values) => left(values) + right(values);
	if (operator === '-') return (values) => left(values) - right(values);
	if (operator === '*') return (values) => left(values) * right(values);
	if (operator === '/') return (values) => left(values) / right(values);
	return (values) => left(values) ** right(values);
}
