import type { Values } from '../algebra/evaluate.ts';
import { allOf } from '../statics/block-diagram.ts';
import { along, type Diagram } from '../statics/diagram.ts';

/** Load and wedge while the wedge is about to go in; the wedge moves to the right, thin end first. */
export function drawWedge(values: Values): Diagram | undefined {
	const v = allOf(
		...([values, 'load', 'wedgeWeight', 'wedgeAngle', 'muFace', 'muFloor', 'muGuide'] as const),
		...(['faceForceUp', 'guideForceUp', 'floorForceUp', 'driveForce'] as const)
	);
	if (!v || v.faceForceUp < 0) return undefined;
	const face = Math.PI / 2 - v.wedgeAngle;
	const slip = -v.wedgeAngle;
	const [normal, rub] = [along(face, v.faceForceUp), along(slip, v.muFace * v.faceForceUp)];
	const rise = 2 * Math.tan(v.wedgeAngle);
	const middle: [number, number] = [0, rise / 2];
	const opposite = ([x, y]: [number, number]): [number, number] => [-x, -y];
	return {
		bodies: [
			{
				id: 'load',
				name: 'load',
				outline: [
					[-0.5, rise * 0.75],
					[0.5, rise * 0.25],
					[0.5, 1.5],
					[-0.5, 1.5]
				]
			},
			{
				id: 'wedge',
				name: 'wedge',
				outline: [
					[-1, 0],
					[1, 0],
					[-1, rise]
				]
			}
		],
		lines: [
			{ name: 'floor', from: [-2, 0], to: [2, 0] },
			{ name: 'guide', from: [0.5, 0.5], to: [0.5, 2] }
		],
		forces: [
			{ body: 'load', kind: 'weight', name: 'load', symbol: 'W', at: [0, 1], vector: [0, -v.load] },
			{
				body: 'load',
				kind: 'normal',
				name: 'slanted face',
				symbol: 'N_1',
				at: middle,
				vector: normal
			},
			{
				body: 'load',
				kind: 'friction',
				name: 'friction on the face',
				symbol: 'f_1',
				at: middle,
				vector: rub
			},
			{
				body: 'load',
				kind: 'normal',
				name: 'guide',
				symbol: 'G',
				at: [0.5, 1],
				vector: [-v.guideForceUp, 0]
			},
			{
				body: 'load',
				kind: 'friction',
				name: 'friction at the guide',
				symbol: 'f_3',
				at: [0.5, 1],
				vector: [0, -v.muGuide * v.guideForceUp]
			},
			{
				body: 'wedge',
				kind: 'weight',
				name: 'weight of the wedge',
				symbol: 'W_w',
				at: [-0.3, rise / 3],
				vector: [0, -v.wedgeWeight]
			},
			{
				body: 'wedge',
				kind: 'normal',
				name: 'slanted face',
				symbol: 'N_1',
				at: middle,
				vector: opposite(normal)
			},
			{
				body: 'wedge',
				kind: 'friction',
				name: 'friction on the face',
				symbol: 'f_1',
				at: middle,
				vector: opposite(rub)
			},
			{
				body: 'wedge',
				kind: 'normal',
				name: 'floor',
				symbol: 'N_2',
				at: [0, 0],
				vector: [0, v.floorForceUp]
			},
			{
				body: 'wedge',
				kind: 'friction',
				name: 'friction on the floor',
				symbol: 'f_2',
				at: [0, 0],
				vector: [-v.muFloor * v.floorForceUp, 0]
			},
			{
				body: 'wedge',
				kind: 'push',
				name: 'push',
				symbol: 'P',
				at: [-1, rise / 4],
				vector: [v.driveForce, 0]
			}
		]
	};
}
