import type { Point } from './geometry.ts';
import { brokenLimb, polygon, polyline, smooth } from './paths.ts';

/** How the hand and the hold are drawn; lengths in mm on the hold, px on the screen. */
export type HandPose = {
	/** Middle of the contact patch, px. */
	contact: Point;
	/** Slope of the surface there, rad. */
	slope: number;
	/** px per mm. */
	mm: number;
	/** Radius of the hold, mm; flat when absent. */
	radius?: number;
	/** Length of the patch, from its end at the fingertip, mm. */
	patch: number;
	padLength: number;
	padDepth: number;
	fingers: number;
	/** How far the hold reaches up-slope of the contact, px, and where its underside lies. */
	upslope: number;
	wallX: number;
	underside: number;
};

/** The place `along` mm down the surface from the contact and `above` mm off it. */
export function onSurface(pose: HandPose, along: number, above = 0): Point {
	const { contact, slope, mm, radius } = pose;
	let u = along;
	let v = above;
	if (radius !== undefined) {
		const turned = along / radius;
		u = (radius + above) * Math.sin(turned);
		v = (radius + above) * Math.cos(turned) - radius;
	}
	return {
		x: contact.x + mm * (u * Math.cos(slope) + v * Math.sin(slope)),
		y: contact.y + mm * (u * Math.sin(slope) - v * Math.cos(slope))
	};
}

/** Sideways distance of one finger from the next, in a shallow oblique view, mm. */
const behind = { x: 1.55, y: -1.3 };

/** The hold in section, with its far edge, and the front edge's end (the lip). */
export function holdOutline(pose: HandPose) {
	const { mm, radius, slope, wallX } = pose;
	const end = pose.padLength - pose.patch / 2 - 1.2;
	const flatStart = -pose.upslope / mm;
	// A round hold is drawn no further back than where it would turn under itself.
	const start =
		radius === undefined ? flatStart : Math.max(flatStart, -radius * Math.max(0.2, slope + 1.2));
	const surface: Point[] = [];
	// An incut edge has a back, close behind the fingertips.
	const stop = Math.min(7, Math.max(0, -slope * 25));
	const back = -pose.patch / 2 - 1.4;
	const first = stop > 0 ? back : start;
	const steps = radius === undefined ? 1 : 24;
	for (let i = 0; i <= steps; i++)
		surface.push(onSurface(pose, first + ((end - first) * i) / steps));
	// A bump stands on the hold's shelf: what falls below that is left out.
	while (surface.length > 2 && surface[0]!.y > pose.underside - 5 * mm) surface.shift();
	const inner = surface[0]!;
	const lip = surface[surface.length - 1]!;
	const top = inner.y - stop * mm;
	const front = [
		{ x: wallX, y: top },
		...(stop > 0 ? [{ x: inner.x, y: top }] : []),
		...surface,
		{ x: lip.x, y: Math.max(lip.y + 4 * mm, pose.underside) }
	];
	const depth = { x: behind.x * mm * 4.4, y: behind.y * mm * 4.4 };
	const far = front.map(({ x, y }) => ({ x: x + depth.x, y: y + depth.y }));
	const below = front[front.length - 1]!;
	return {
		lip,
		path: polygon([...front, { x: wallX, y: below.y }]),
		far: polygon([...front, ...far.reverse()]),
		ridge: polyline([lip, { x: lip.x + depth.x, y: lip.y + depth.y }])
	};
}

/** The fingers, farthest first: end segment on the hold, and the start of the middle one. */
export function fingerOutlines(pose: HandPose, pull: number, floor: number) {
	const { patch, padLength, padDepth, slope, mm } = pose;
	const tip = -patch / 2;
	const joint = padLength + tip;
	const thick = 2 * padDepth + 1.5;
	const flat: HandPose = { ...pose, radius: undefined };
	const outlines: string[][] = [];
	const nails: string[] = [];
	for (let finger = pose.fingers - 1; finger >= 0; finger--) {
		const shift = { x: behind.x * mm * finger, y: behind.y * mm * finger };
		const on = (along: number, above: number) => {
			const { x, y } = onSurface(flat, along, above);
			return { x: x + shift.x, y: y + shift.y };
		};
		const skin = (along: number, above: number) => {
			const { x, y } = onSurface(pose, along, above);
			return { x: x + shift.x, y: y + shift.y };
		};
		const end = smooth([
			skin(tip + 0.9, 0),
			skin(tip + patch * 0.5, 0),
			skin(tip + patch, 0.1),
			on(Math.max(tip + patch + 1, joint - 3), 0.9),
			on(joint, padDepth - 4.9),
			on(joint + 2, padDepth),
			on(joint, padDepth + 5.4),
			on(joint - 7, thick + 0.1),
			on(tip + 8, thick),
			on(tip + 2.6, thick * 0.9),
			on(tip + 0.2, thick * 0.62),
			on(tip - 0.2, thick * 0.28)
		]);
		// The middle segment points half-way between the hold's surface and the pull.
		const hang = Math.PI / 2 - pull;
		const way = slope + 0.55 * Math.max(0.3, hang - slope);
		const knuckle = on(joint, padDepth);
		const reach = Math.min(
			17 * mm,
			Math.max(7 * mm, (floor - knuckle.y) / Math.max(0.2, Math.sin(way)))
		);
		const next = { x: knuckle.x + reach * Math.cos(way), y: knuckle.y + reach * Math.sin(way) };
		outlines.push([end, brokenLimb(knuckle, next, 5.1 * mm, 5.7 * mm)]);
		nails.push(
			polyline([
				on(tip + 1.2, thick * 0.8),
				on(tip + 3.4, thick * 0.72),
				on(tip + 9.5, thick * 0.9)
			])
		);
	}
	return { outlines, nails };
}
