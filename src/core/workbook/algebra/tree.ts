import type { Expression } from './expression.ts';

/** The direct parts of a formula, in reading order. */
export function partsOf(tree: Expression): Expression[] {
	switch (tree.kind) {
		case 'minus':
			return [tree.of];
		case 'binary':
			return [tree.left, tree.right];
		case 'call':
		case 'native':
			return tree.of;
		case 'when':
			return [tree.left, tree.right, tree.yes, tree.no];
		default:
			return [];
	}
}

/** The same formula with other parts; the parts come in the order of `partsOf`. */
export function withParts(tree: Expression, parts: Expression[]): Expression {
	const part = (index: number) => parts[index]!;
	switch (tree.kind) {
		case 'minus':
			return { ...tree, of: part(0) };
		case 'binary':
			return { ...tree, left: part(0), right: part(1) };
		case 'call':
		case 'native':
			return { ...tree, of: parts };
		case 'when':
			return { ...tree, left: part(0), right: part(1), yes: part(2), no: part(3) };
		default:
			return tree;
	}
}

/** Quantity ids a formula uses, each once; `pi` is a number, not a quantity. */
export function namesIn(tree: Expression): string[] {
	const found = new Set<string>();
	const visit = (node: Expression) => {
		if (node.kind === 'name' && node.name !== 'pi') found.add(node.name);
		partsOf(node).forEach(visit);
	};
	visit(tree);
	return [...found];
}

/** Whether a formula may stay level while a quantity in it changes. */
export function isBranched(tree: Expression): boolean {
	const here =
		tree.kind === 'when' ||
		tree.kind === 'native' ||
		(tree.kind === 'call' && ['min', 'max', 'sgn'].includes(tree.name));
	return here || partsOf(tree).some(isBranched);
}

/** How often a quantity stands in a formula. */
export function timesIn(tree: Expression, name: string): number {
	const here = tree.kind === 'name' && tree.name === name ? 1 : 0;
	return partsOf(tree).reduce((sum, part) => sum + timesIn(part, name), here);
}

/**
 * Every version of a formula in which one node is changed.
 * @param tree the formula
 * @param change gives the versions of one node (none when the change does not apply there)
 * @returns the changed formulas, each differing from the given one at a single node
 * Source: derived
 * Example: swapping sin for cos in 'a*sin(x) + b*sin(y)' gives two formulas.
 */
export function changedOnce(
	tree: Expression,
	change: (node: Expression) => Expression[]
): Expression[] {
	const parts = partsOf(tree);
	const below = parts.flatMap((part, index) =>
		changedOnce(part, change).map((changed) =>
			withParts(
				tree,
				parts.map((other, at) => (at === index ? changed : other))
			)
		)
	);
	return [...change(tree), ...below];
}

/** A formula with every node passed through a change, from the leaves up. */
export function changedThroughout(
	tree: Expression,
	change: (node: Expression) => Expression
): Expression {
	return change(
		withParts(
			tree,
			partsOf(tree).map((part) => changedThroughout(part, change))
		)
	);
}
