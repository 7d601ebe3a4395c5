import { requireAllowed } from '../units/allowed-range.ts';
import { roundingSpread, type Measured } from './measured.ts';

export type RopeSide = 'plumb' | 'away from the wall' | 'toward the wall';

/**
 * Finds the lean of a rope in the hang from its offset beside a plumb line.
 * lean = atan(offset/length) with the length along the plumb line, asin with it along the rope
 * @param o.offset level distance of the rope from the plumb line, m, positive where the rope leads
 * away from the wall on its way up
 * @param o.length from where rope and plumb line meet to where the offset is read, m, above 0
 * @param o.along which line the length was measured along (default 'plumb')
 * @param o.step resolution of the tape, m, 0 or more (default 0.001)
 * @returns lean, rad, positive away from the wall; its spread from the tape; and the side, 'plumb'
 * where the offset is less than the tape can tell
 * Valid for: a straight rope, read at the body, in the hang, at that load: the angle changes with assist.
 * @throws RangeError for a field outside its range
 * Source: derived.
 * Example: 0.1 m over 1 m of plumb line: 5.71°.
 */
export function leanFromPlumbLine(o: {
	offset: number;
	length: number;
	along?: 'plumb' | 'rope';
	step?: number;
}): Measured & { side: RopeSide } {
	const { offset, length, along = 'plumb', step = 0.001 } = o;
	requireAllowed('length', length, { above: 0, unit: 'm' });
	requireAllowed('step', step, { min: 0, unit: 'm' });
	const reach = along === 'rope' ? { above: -length, below: length } : {};
	requireAllowed('offset', offset, { ...reach, unit: 'm' });
	const plumb = along === 'rope' ? Math.sqrt(length * length - offset * offset) : length;
	const tape = roundingSpread(step);
	// Slopes of the angle with offset and with length.
	const byOffset = along === 'rope' ? 1 / plumb : length / (length * length + offset * offset);
	const byLength = byOffset * (offset / length);
	const tells = Math.abs(offset) > step;
	return {
		value: Math.atan2(offset, plumb),
		spread: tape * Math.hypot(byOffset, byLength),
		side: !tells ? 'plumb' : offset > 0 ? 'away from the wall' : 'toward the wall'
	};
}
