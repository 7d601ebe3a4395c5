import type { Expression } from '../algebra/expression.ts';
import { changedOnce, changedThroughout } from '../algebra/tree.ts';
import { number, type Mutation } from './mutation.ts';

const name = (id: string): Expression => ({ kind: 'name', name: id });
const renamed = (from: string, to: string) => (node: Expression) =>
	node.kind === 'name' && node.name === from ? name(to) : node;

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
