import { add, type Point, type Segment } from './geometry.ts';
import { leadsOff } from './hand-words.ts';
import { fitScale, stepAtMost } from './scale.ts';
import type { Box } from './geometry.ts';
import type { Contact } from './types.ts';

/** Directions at the contact, px of the screen: off the hold, and up its slope. */
export function directions(slope: number) {
	return {
		off: { x: Math.sin(slope), y: -Math.cos(slope) },
		uphill: { x: -Math.cos(slope), y: -Math.sin(slope) }
	};
}

/** On which side of the normal friction is called for: 1 up the slope, −1 down. */
function sideOf({ tangential }: Contact): 1 | -1 {
	return tangential < 0 ? -1 : 1;
}

/** Force scale of the hand's part: everything in the room, and no tip under the slope's handle. */
export function handScale(
	contact: Point,
	forces: Record<'force' | 'normal' | 'friction', Point>,
	state: Contact,
	room: Box,
	reach: number
): number {
	const { uphill } = directions(state.meanSlope);
	const most = state.frictionLimit * sideOf(state);
	const limit = { x: uphill.x * most, y: -uphill.y * most };
	const corner = { x: forces.normal.x + limit.x, y: forces.normal.y + limit.y };
	const scale = fitScale(
		[...Object.values(forces), limit, corner].map((force) => ({ tail: contact, force })),
		room
	);
	const near = [state.tangential, most].filter((size) => Math.abs(size * scale - reach) < 17);
	// Both tips short of the handle then, at a smaller step.
	return near.length === 0 ? scale : stepAtMost((reach - 17) / Math.max(...near));
}

/**
 * The friction cone about the normal, as the triangle from the contact to the height of N: half as
 * wide there as friction may reach, so that the force's tip lies on its base or beyond it. With it
 * the same length laid along the surface.
 */
export function frictionCone(contact: Point, state: Contact, scale: number) {
	if (leadsOff(state) || state.frictionLimit <= 0) return {};
	const { off, uphill } = directions(state.meanSlope);
	const top = add(contact, off, state.normal * scale);
	const reach = state.frictionLimit * scale;
	const cone: [Point, Point, Point] = [contact, add(top, uphill, reach), add(top, uphill, -reach)];
	const end = add(contact, uphill, reach * sideOf(state));
	const line: Segment = { from: add(contact, off, -7), to: add(end, off, -7) };
	const tick: Segment = { from: add(end, off, -12), to: add(end, off, 7) };
	return { cone, limit: { line, tick } };
}
