import type { Values } from '../algebra/evaluate.ts';
import { allOf, drawBlock } from '../statics/block-diagram.ts';
import type { Diagram } from '../statics/diagram.ts';
import * as q from '../statics/quantities.ts';
import type { Quantity, Setup, Verdict } from '../statics/types.ts';

/** Quantities shared by the two arrangements of stacked blocks. */
export const stackedQuantities: Quantity[] = [
	q.mass('massTop', 'mass of the upper block', 'm_1'),
	q.mass('massBottom', 'mass of the lower block', 'm_2'),
	q.coefficient('muTop', 'friction coefficient between the blocks', '\\mu_1', {
		default: 'muFloor'
	}),
	q.coefficient('muFloor', 'friction coefficient on the floor', '\\mu_2', { default: 'muTop' }),
	...[q.gravity, q.force('force', 'push', 'P')],
	q.force('jointLimit', 'greatest friction between the blocks', 'f_{1,max}'),
	q.force('floorLimit', 'greatest friction on the floor', 'f_{2,max}'),
	q.force('togetherForce', 'greatest push at which they stay together', 'P_t'),
	q.force('jointFriction', 'friction between the blocks', 'f_1'),
	q.force('floorFriction', 'friction on the floor', 'f_2'),
	q.acceleration('accelerationTop', 'acceleration of the upper block', 'a_1'),
	q.acceleration('accelerationBottom', 'acceleration of the lower block', 'a_2')
];

/** Whether stacked blocks rest, move as one, or slip on each other. */
export function judgeStack(values: Values): Verdict | undefined {
	const v = allOf(
		values,
		'force',
		'togetherForce',
		'floorLimit',
		'accelerationTop',
		'accelerationBottom'
	);
	if (!v) return undefined;
	if (Math.abs(v.force - v.togetherForce) <= 1e-9 * v.togetherForce)
		return { regime: 'about to slip', because: 'The blocks are about to slip on each other.' };
	const [top, bottom] = [v.accelerationTop > 1e-12, v.accelerationBottom > 1e-12];
	if (!top && !bottom) return { regime: 'rests', because: 'The floor holds both.' };
	if (v.force < v.togetherForce)
		return {
			regime: 'slides together',
			because: 'Friction between the blocks keeps them together.'
		};
	if (!bottom)
		return {
			regime: 'slides, lower block rests',
			because: 'The floor can hold more than the upper block drags along.'
		};
	return { regime: 'slides apart', because: 'The push outruns the friction between the blocks.' };
}

/** Free-body diagram of two stacked blocks; `pushed` says which one the push acts on. */
export function drawStack(pushed: 'top' | 'bottom'): Setup['diagram'] {
	return (values): Diagram | undefined => {
		const v = allOf(
			...([values, 'massTop', 'massBottom', 'gravity', 'force', 'jointFriction'] as const),
			...(['floorFriction', 'accelerationTop', 'accelerationBottom'] as const)
		);
		if (!v) return undefined;
		const [upper, lower] = [v.massTop * v.gravity, v.massBottom * v.gravity];
		const push = { kind: 'push' as const, name: 'push', symbol: 'P', angle: 0, size: v.force };
		const carries = pushed === 'top' ? -1 : 1;
		const top = drawBlock({
			...{ id: 'top', name: 'upper block', at: [0, 0.6], slope: 0, weight: upper, normal: upper },
			friction: carries * v.jointFriction,
			...{
				others: pushed === 'top' ? [push] : [],
				mass: v.massTop,
				acceleration: v.accelerationTop
			}
		});
		const bottom = drawBlock({
			...{ id: 'bottom', name: 'lower block', at: [0, 0], slope: 0, width: 1.6, weight: lower },
			...{ normal: upper + lower, friction: -v.floorFriction },
			...{ mass: v.massBottom, acceleration: v.accelerationBottom },
			others: [
				{
					kind: 'normal',
					name: 'from the upper block',
					symbol: 'N_1',
					angle: -Math.PI / 2,
					size: upper
				},
				{
					...{ kind: 'friction', name: 'between the blocks', symbol: 'f_1' },
					...{ angle: carries === -1 ? 0 : Math.PI, size: v.jointFriction }
				},
				...(pushed === 'bottom' ? [push] : [])
			]
		});
		return {
			bodies: [bottom.body, top.body],
			forces: [...bottom.forces, ...top.forces],
			lines: [{ name: 'floor', from: [-2, 0], to: [2, 0] }]
		};
	};
}

export const stackedPractice: Setup['practice'] = {
	given: {
		...{ massTop: [1, 8, 0.5], massBottom: [2, 12, 0.5], force: [5, 120, 5] },
		...{ muTop: [0.3, 0.6, 0.05], muFloor: [0.05, 0.25, 0.02] }
	},
	ask: ['togetherForce', 'accelerationTop', 'jointFriction']
};
