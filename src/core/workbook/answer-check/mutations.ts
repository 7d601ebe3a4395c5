import type { Expression } from '../algebra/expression.ts';
import { changedOnce, changedThroughout } from '../algebra/tree.ts';

/** One wrong version of a formula, and what was done wrong. */
export type Mutation = { slip: string; words: string; formula: Expression; rank: number };

const name = (id: string): Expression => ({ kind: 'name', name: id });
const number = (value: number): Expression => ({ kind: 'number', value });
const renamed = (from: string, to: string) => (node: Expression) =>
	node.kind === 'name' && node.name === from ? name(to) : node;

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

/** Names mixed up: static and kinetic, normal force and weight, mass and weight, friction at rest. */
export function nameSlips(tree: Expression, has: (id: string) => boolean): Mutation[] {
	const swap = (from: string, to: string, slip: string, words: string): Mutation[] => {
		if (!has(from) || !has(to)) return [];
		return [{ slip, words, rank: 1, formula: changedThroughout(tree, renamed(from, to)) }];
	};
	const rest = changedOnce(tree, (node) =>
		node.kind === 'when' ? [node.no, node.right, node.yes] : []
	).map((formula, index) => ({
		...(index < 2
			? {
					slip: 'friction-at-its-limit-at-rest',
					words: 'friction was taken as μN although the body rests'
				}
			: {
					slip: 'friction-as-push',
					words: 'friction was taken as large as the push although the body slides'
				}),
		...{ rank: 1, formula }
	}));
	const noGravity = has('gravity')
		? changedThroughout(tree, (node) =>
				node.kind === 'name' && node.name === 'gravity' ? number(1) : node
			)
		: tree;
	return [
		...swap(
			'muStatic',
			'muKinetic',
			'kinetic-for-static',
			'the kinetic coefficient was taken for the static one'
		),
		...swap(
			'muKinetic',
			'muStatic',
			'static-for-kinetic',
			'the static coefficient was taken for the kinetic one'
		),
		...swap(
			'slidingFriction',
			'frictionLimit',
			'static-for-kinetic',
			'static friction at its limit was taken for kinetic friction'
		),
		...swap(
			'frictionLimit',
			'slidingFriction',
			'kinetic-for-static',
			'kinetic friction was taken for the static limit'
		),
		...swap(
			'normal',
			'weight',
			'normal-taken-as-weight',
			'the normal force was taken as the weight'
		),
		...swap('mass', 'weight', 'weight-for-mass', 'the weight was taken for the mass'),
		...rest,
		{
			slip: 'mass-for-weight',
			words: 'g was left out: a mass was taken for a weight',
			rank: 1,
			formula: noGravity
		}
	];
}

/** Numbers rounded too early: e and π. */
export function roundingSlips(tree: Expression): Mutation[] {
	const rounded = (value: number): Expression =>
		changedThroughout(tree, (node) =>
			node.kind === 'call' && node.name === 'exp'
				? { kind: 'binary', operator: '^', left: number(value), right: node.of[0]! }
				: node
		);
	const pi = (value: number): Expression =>
		changedThroughout(tree, (node) =>
			node.kind === 'name' && node.name === 'pi' ? number(value) : node
		);
	return [
		...[2.718, 2.72, 2.7].map((value) => ({
			slip: 'e-rounded',
			words: `e was taken as ${value}`,
			rank: 2,
			formula: rounded(value)
		})),
		...[3.14, 3].map((value) => ({
			slip: 'pi-rounded',
			words: `π was taken as ${value}`,
			rank: 2,
			formula: pi(value)
		}))
	];
}
