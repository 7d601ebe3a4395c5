/** A formula as a tree: the one source of a relation's value, its typeset line and its slips. */
export type Expression =
	| { kind: 'number'; value: number }
	| { kind: 'name'; name: string }
	| { kind: 'minus'; of: Expression }
	| { kind: 'binary'; operator: '+' | '-' | '*' | '/' | '^'; left: Expression; right: Expression }
	| { kind: 'call'; name: string; of: Expression[] }
	| { kind: 'when'; left: Expression; right: Expression; yes: Expression; no: Expression }
	| Native;

/** A formula that lives elsewhere in the core: worked out there, written here. */
export type Native = {
	kind: 'native';
	of: Expression[];
	/** NaN where it has no value. */
	value: (...numbers: number[]) => number;
	/** TeX from the TeX of its arguments. */
	write: (...texts: string[]) => string;
};

/** A formula of the core as part of a tree; arguments are quantity ids. */
export function native(names: string[], value: Native['value'], write: Native['write']): Native {
	return { kind: 'native', of: names.map((name) => ({ kind: 'name', name })), value, write };
}

/** Functions a formula may call, with their number of arguments. */
export const functionArity: Record<string, number> = {
	...{ sin: 1, cos: 1, tan: 1, asin: 1, acos: 1, atan: 1, sqrt: 1, exp: 1, ln: 1, abs: 1, sgn: 1 },
	...{ hypot: 2, min: 2, max: 2 }
};

function tokens(text: string): string[] {
	const found = text.match(/\d+(?:\.\d+)?(?:e[+-]?\d+)?|[A-Za-z]\w*|<=|[-+*/^(),]/g) ?? [];
	if (found.join('') !== text.replace(/\s+/g, ''))
		throw new RangeError(`formula "${text}" holds a sign that is not understood`);
	return found;
}

/**
 * Reads a formula written in plain text into a tree.
 * Formula: sums, products, quotients, powers, sin cos tan asin acos atan sqrt exp ln abs sgn hypot
 * min max, `pi`, and `when(a <= b, yes, no)`.
 * @param text the formula, names as quantity ids
 * @returns the tree
 * Errors: RangeError naming the formula when it cannot be read.
 * Source: derived
 * Example: parse('mass*gravity') is a product of two names.
 */
export function parse(text: string): Expression {
	const list = tokens(text);
	let at = 0;
	const fail = () => new RangeError(`formula "${text}" cannot be read near part ${at + 1}`);
	const take = (wanted: string) => {
		if (list[at] !== wanted) throw fail();
		at += 1;
	};
	function sum(): Expression {
		let left = product();
		while (list[at] === '+' || list[at] === '-') {
			const operator = list[at++] as '+' | '-';
			left = { kind: 'binary', operator, left, right: product() };
		}
		return left;
	}
	function product(): Expression {
		let left = signed();
		while (list[at] === '*' || list[at] === '/') {
			const operator = list[at++] as '*' | '/';
			left = { kind: 'binary', operator, left, right: signed() };
		}
		return left;
	}
	function signed(): Expression {
		if (list[at] !== '-') return power();
		at += 1;
		return { kind: 'minus', of: signed() };
	}
	function power(): Expression {
		const left = atom();
		if (list[at] !== '^') return left;
		at += 1;
		return { kind: 'binary', operator: '^', left, right: signed() };
	}
	function call(name: string): Expression {
		take('(');
		const first = sum();
		if (name === 'when') {
			take('<=');
			const right = sum();
			take(',');
			const yes = sum();
			take(',');
			const no = sum();
			take(')');
			return { kind: 'when', left: first, right, yes, no };
		}
		const of = [first];
		while (list[at] === ',') {
			at += 1;
			of.push(sum());
		}
		take(')');
		if (functionArity[name] !== of.length) throw fail();
		return { kind: 'call', name, of };
	}
	function atom(): Expression {
		const part = list[at++];
		if (part === undefined) throw fail();
		if (part === '(') {
			const inner = sum();
			take(')');
			return inner;
		}
		if (/^\d/.test(part)) return { kind: 'number', value: Number(part) };
		if (!/^[A-Za-z]/.test(part)) throw fail();
		if (list[at] === '(') return call(part);
		return { kind: 'name', name: part };
	}
	const tree = sum();
	if (at !== list.length) throw fail();
	return tree;
}
