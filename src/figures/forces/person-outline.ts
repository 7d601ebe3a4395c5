import type { Point } from './geometry.ts';
import { limb, smooth } from './paths.ts';

/** Where the centre of mass lies below the hands with the arms raised, m; a person of 1.75 m. */
export const handsToCentre = 1.09;
/** From the hands to the tips of the hanging feet, m. */
export const handsToFeet = 2.24;

/** Side view of trunk and legs: metres below the hands, metres in front of the body's axis. */
const trunk: [below: number, front: number][] = [
	[0.6, 0.055],
	[0.7, 0.07],
	[0.84, 0.115],
	[1.0, 0.098],
	[1.12, 0.1],
	[1.24, 0.095],
	[1.42, 0.09],
	[1.6, 0.064],
	[1.68, 0.062],
	[1.85, 0.046],
	[2.02, 0.034],
	[2.1, 0.05],
	[2.2, 0.075],
	[2.24, 0.06],
	[2.18, 0.005],
	[2.1, -0.045],
	[2.02, -0.042],
	[1.82, -0.076],
	[1.68, -0.054],
	[1.58, -0.062],
	[1.4, -0.088],
	[1.26, -0.128],
	[1.16, -0.128],
	[1.03, -0.075],
	[0.86, -0.115],
	[0.74, -0.1],
	[0.62, -0.045]
];
const head: [number, number][] = [
	[0.385, 0.03],
	[0.41, 0.095],
	[0.49, 0.122],
	[0.58, 0.105],
	[0.622, 0.06],
	[0.6, -0.02],
	[0.53, -0.068],
	[0.44, -0.05]
];

/** Outlines of a straight body hanging from `hold`, `tilt` from the plumb line, `metre` px a metre. */
export function personOutline(hold: Point, tilt: number, metre: number) {
	const down = { x: Math.sin(tilt), y: Math.cos(tilt) };
	const on = ([below, front]: [number, number]): Point => ({
		x: hold.x + metre * (below * down.x - front * down.y),
		y: hold.y + metre * (below * down.y + front * down.x)
	});
	const between = (from: [number, number], to: [number, number], a: number, b: number) =>
		limb(on(from), on(to), a * metre, b * metre);
	return {
		body: [smooth(trunk.map(on)), smooth(head.map(on))],
		arm: [
			between([0.74, -0.015], [0.39, -0.01], 0.058, 0.042),
			between([0.39, -0.01], [0.11, 0], 0.045, 0.028),
			between([0.12, 0], [0.03, 0.01], 0.034, 0.026)
		],
		centre: on([handsToCentre, 0])
	};
}
