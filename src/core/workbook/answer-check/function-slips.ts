import type { Expression } from '../algebra/expression.ts';
import { changedOnce, changedThroughout } from '../algebra/tree.ts';
import { number, type Mutation } from './mutation.ts';

function functionFor(tree: Expression, from: string, to: string): Expression[] {
	return changedOnce(tree, (node) =>
		node.kind === 'call' && node.name === from ? [{ ...node, name: to }] : []
	);
}

const swaps: [string, string, string, string, number][] = [
	['sin', 'cos', 'cosine-for-sine', 'the cosine was taken for the sine', 1],
	['cos', 'sin', 'sine-for-cosine', 'the sine was taken for the cosine', 1],
	['sin', 'tan', 'tangent-for-sine', 'the tangent was taken for the sine', 1],
	['tan', 'sin', 'sine-for-tangent', 'the sine was taken for the tangent', 1],
	['tan', 'cos', 'cosine-for-tangent', 'the cosine was taken for the tangent', 2],
	['atan', 'asin', 'sine-for-tangent', 'the inverse sine was taken for the inverse tangent', 1],
	['asin', 'atan', 'tangent-for-sine', 'the inverse tangent was taken for the inverse sine', 1],
	['min', 'max', 'later-first', 'the later of two events was taken for the first', 3]
];

/** Wrong functions, inverses not taken, angles in the wrong unit or left out. */
export function functionSlips(tree: Expression): Mutation[] {
	const named = swaps.flatMap(([from, to, slip, words, rank]) =>
		functionFor(tree, from, to).map((formula) => ({ slip, words, rank, formula }))
	);
	const bothSwapped = changedThroughout(tree, (node) =>
		node.kind === 'call' && (node.name === 'sin' || node.name === 'cos')
			? { ...node, name: node.name === 'sin' ? 'cos' : 'sin' }
			: node
	);
	const inverse = changedOnce(tree, (node) =>
		node.kind === 'call' && ['asin', 'acos', 'atan'].includes(node.name) ? [node.of[0]!] : []
	);
	const upright = changedOnce(tree, (node) =>
		node.kind === 'call' && node.name === 'tan'
			? [{ kind: 'binary', operator: '/', left: number(1), right: node }]
			: []
	);
	const flat = changedOnce(tree, (node) =>
		node.kind === 'call' && node.name === 'cos' ? [number(1)] : []
	);
	const rooted = changedOnce(tree, (node) =>
		node.kind === 'call' && node.name === 'sqrt' ? [node.of[0]!] : []
	);
	return [
		...named,
		{
			slip: 'sine-and-cosine-swapped',
			words: 'sine and cosine were swapped',
			rank: 1,
			formula: bothSwapped
		},
		...inverse.map((formula) => ({
			slip: 'inverse-not-taken',
			words: 'the inverse function was not taken',
			rank: 1,
			formula
		})),
		...upright.map((formula) => ({
			slip: 'tangent-upside-down',
			words: 'the tangent was turned upside down',
			rank: 2,
			formula
		})),
		...flat.map((formula) => ({
			slip: 'normal-taken-as-weight',
			words: 'the cosine was left out, so that the normal force became the weight',
			rank: 1,
			formula
		})),
		...rooted.map((formula) => ({
			slip: 'root-not-taken',
			words: 'the root was not taken',
			rank: 3,
			formula
		}))
	];
}
