import type { Values } from '../algebra/evaluate.ts';
import { allOf } from '../statics/block-diagram.ts';
import { along, type Diagram, type DrawnForce } from '../statics/diagram.ts';

/**
 * A ladder with its four or five forces; it leans to the right, the wall stands on the right.
 * @param values geometry and loads
 * @param wall normal force of the wall and friction on it (up positive), N
 * @returns the diagram; undefined when a value is missing
 * Source: derived
 */
export function drawLadder(
	values: Values,
	wall: { normal: number; friction: number }
): Diagram | undefined {
	const v = allOf(values, 'angle', 'weight', 'personWeight', 'centreFraction', 'personFraction');
	if (!v) return undefined;
	const length = values.length ?? 1;
	const place = (part: number) => along(v.angle, part * length);
	const base = { body: 'ladder' };
	const forces: DrawnForce[] = [
		{
			...base,
			kind: 'weight',
			name: 'weight',
			symbol: 'W',
			at: place(v.centreFraction),
			vector: [0, -v.weight]
		},
		{
			...{ ...base, kind: 'weight', name: 'weight of the person', symbol: 'W_p' },
			...{ at: place(v.personFraction), vector: [0, -v.personWeight] }
		},
		{
			...base,
			kind: 'normal',
			name: 'wall',
			symbol: 'N_w',
			at: place(1),
			vector: [-wall.normal, 0]
		},
		{
			...base,
			kind: 'friction',
			name: 'friction at the wall',
			symbol: 'f_w',
			at: place(1),
			vector: [0, wall.friction]
		},
		{
			...{ ...base, kind: 'normal', name: 'floor', symbol: 'N_f', at: [0, 0] },
			vector: [0, v.weight + v.personWeight - wall.friction]
		},
		{
			...base,
			kind: 'friction',
			name: 'friction at the floor',
			symbol: 'f_f',
			at: [0, 0],
			vector: [wall.normal, 0]
		}
	];
	const top = place(1);
	return {
		bodies: [{ id: 'ladder', name: 'ladder', outline: [[0, 0], top] }],
		forces: forces.filter(({ vector }) => vector[0] !== 0 || vector[1] !== 0),
		lines: [
			{ name: 'floor', from: [-0.3 * length, 0], to: [top[0], 0] },
			{ name: 'wall', from: [top[0], 0], to: [top[0], 1.2 * length] }
		],
		rigid: true
	};
}
