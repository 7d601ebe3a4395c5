import type { Expression } from '../algebra/expression.ts';
import { changedOnce } from '../algebra/tree.ts';
import type { Mutation } from './mutation.ts';

/** Wrong signs, parts left out, factors forgotten, fractions turned over. */
export function sumSlips(tree: Expression): Mutation[] {
	const signs = changedOnce(tree, (node) => {
		if (node.kind === 'minus') return [node.of];
		if (node.kind !== 'binary') return [];
		if (node.operator === '+') return [{ ...node, operator: '-' }];
		return node.operator === '-' ? [{ ...node, operator: '+' }] : [];
	});
	const parts = changedOnce(tree, (node) =>
		node.kind === 'binary' && (node.operator === '+' || node.operator === '-')
			? [node.left, node.right]
			: []
	);
	const factors = changedOnce(tree, (node) => {
		if (node.kind !== 'binary') return [];
		const { operator, left, right } = node;
		if (operator === '*' && left.kind === 'number') return [right];
		if ((operator === '*' || operator === '/') && right.kind === 'number') return [left];
		return operator === '^' && right.kind === 'number' ? [left] : [];
	});
	const turned = changedOnce(tree, (node) =>
		node.kind === 'binary' && node.operator === '/' && node.right.kind !== 'number'
			? [{ ...node, operator: '*' }]
			: []
	);
	const top: Expression[] =
		tree.kind === 'binary' && tree.operator === '/'
			? [{ ...tree, left: tree.right, right: tree.left }]
			: [];
	return [
		...signs.map((formula) => ({
			slip: 'sign',
			words: 'one part has the wrong sign',
			rank: 1,
			formula
		})),
		...parts.map((formula) => ({
			slip: 'part-left-out',
			words: 'one part was left out',
			rank: 3,
			formula
		})),
		...factors.map((formula) => ({
			slip: 'factor-left-out',
			words: 'a factor or power was left out',
			rank: 2,
			formula
		})),
		...turned.map((formula) => ({
			slip: 'multiplied-for-divided',
			words: 'it was multiplied where it should be divided',
			rank: 3,
			formula
		})),
		...top.map((formula) => ({
			slip: 'upside-down',
			words: 'the fraction was turned upside down',
			rank: 2,
			formula
		}))
	];
}
