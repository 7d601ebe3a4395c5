import { add, type Box, type Point, type Segment } from './geometry.ts';
import { onSurface, type HandPose } from './hand-outline.ts';
import { arc } from './paths.ts';
import type { ForcesShown } from './types.ts';

/** Too small an angle, rad, to draw. */
const flat = 5e-4;

/**
 * The slope's line, arc and handle, and the pull's tilt from the plumb line. A flat slope is read
 * at the lip, a round hold's at the fingertip, where it is set.
 */
export function handAngles(
	{ hang, load, contact: state }: ForcesShown,
	pose: HandPose,
	{ lip, scale, reach, frame }: { lip: Point; scale: number; reach: number; frame: Box }
) {
	const round = hang.radius !== undefined;
	const tip = onSurface(pose, -pose.patch / 2);
	const vertex = round ? tip : lip;
	const pivot = round ? tip : pose.contact;
	const uphill = { x: -Math.cos(hang.slope), y: -Math.sin(hang.slope) };
	// A patch shifts the fingertip up-slope: the handle stays at one distance from its middle.
	const slopeEnd = add(pivot, uphill, reach - (round ? (pose.patch / 2) * pose.mm : 0));
	const level: Segment = { from: vertex, to: add(vertex, { x: -1, y: 0 }, 46) };
	const owns: Record<string, Segment> = {
		slope: radial(vertex, Math.PI + hang.slope / 2, 27, 34)
	};
	const slopeArc =
		Math.abs(hang.slope) < flat ? {} : { slopeArc: arc(vertex, 34, Math.PI, Math.PI + hang.slope) };
	const tangent = round || hang.slope < 0 ? { tangent: { from: pivot, to: slopeEnd } } : {};
	const slope = { slopeEnd, level, ...slopeArc, ...tangent };
	if (Math.abs(load.tilt) < flat) return { drawn: slope, owns };

	const radius = Math.min(0.8 * state.force * scale, 0.3 * frame.height);
	const { contact } = pose;
	const up = -Math.PI / 2;
	owns.tilt = radial(contact, up - load.tilt / 2, radius * 0.8, radius);
	const vertical: Segment = { from: contact, to: add(contact, { x: 0, y: -1 }, radius + 8) };
	return { drawn: { ...slope, vertical, tiltArc: arc(contact, radius, up, up - load.tilt) }, owns };
}

/** A short stretch across an angle's arc, for its label to point at. */
function radial(centre: Point, angle: number, from: number, to: number): Segment {
	const way = { x: Math.cos(angle), y: Math.sin(angle) };
	return { from: add(centre, way, from), to: add(centre, way, to) };
}
