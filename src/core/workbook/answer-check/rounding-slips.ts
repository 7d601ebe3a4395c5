import type { Expression } from '../algebra/expression.ts';
import { changedThroughout } from '../algebra/tree.ts';
import { number, type Mutation } from './mutation.ts';

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
