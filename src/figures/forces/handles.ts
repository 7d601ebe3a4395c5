import type { ForceUnit, Person } from './types.ts';
import { newtonsPer } from './text.ts';
import type { Point } from './geometry.ts';

/** What a handle may be set to, and by how much a key moves it. */
export type Range = { least: number; most: number; step: number; leap: number };

const degree = Math.PI / 180;

export const slopeRange: Range = {
	least: -15 * degree,
	most: 60 * degree,
	step: degree,
	leap: 5 * degree
};
export const ropeRange: Range = {
	least: -20 * degree,
	most: 30 * degree,
	step: degree,
	leap: 5 * degree
};

/** Up to 95 % of the weight: past the whole of it nothing hangs from the hands. */
export function assistRange(weight: number, unit: ForceUnit): Range {
	const one = newtonsPer(unit);
	const step = unit === 'N' ? 10 : one;
	return { least: 0, most: 0.95 * weight, step, leap: step * 5 };
}

export function kept(value: number, { least, most }: Range): number {
	return Math.min(most, Math.max(least, value));
}

/** The value after a key, on whole steps; undefined for a key that moves no slider. */
export function afterKey(key: string, value: number, range: Range): number | undefined {
	const onStep = (by: number) => {
		const count = value / range.step + by;
		// A value between two steps goes to the next one in the key's direction first.
		const whole = by > 0 ? Math.floor(count + 1e-6) : Math.ceil(count - 1e-6);
		return kept(whole * range.step, range);
	};
	const leap = range.leap / range.step;
	switch (key) {
		case 'ArrowUp':
		case 'ArrowRight':
			return onStep(1);
		case 'ArrowDown':
		case 'ArrowLeft':
			return onStep(-1);
		case 'PageUp':
			return onStep(leap);
		case 'PageDown':
			return onStep(-leap);
		case 'Home':
			return range.least;
		case 'End':
			return range.most;
	}
}

/** Slope of the line from its vertex to a point at its up-slope end, rad. */
export function slopeToward(vertex: Point, end: Point): number {
	return Math.atan2(vertex.y - end.y, vertex.x - end.x);
}

/** Rope force and angle when the tip has been dragged by some px since the rope was as given. */
export function draggedRope(
	start: Pick<Person, 'assistForce' | 'ropeAngle'>,
	moved: Point,
	scale: number,
	weight: number
): { assistForce: number; ropeAngle: number } {
	const out = start.assistForce * Math.sin(start.ropeAngle) + moved.x / scale;
	const up = start.assistForce * Math.cos(start.ropeAngle) - moved.y / scale;
	// Below the centre of mass a rope gives no help.
	if (up <= 0) return { assistForce: 0, ropeAngle: start.ropeAngle };
	const ropeAngle = kept(Math.atan2(out, up), ropeRange);
	// The size along the kept direction, so that the tip stays under the pointer as far as it can.
	const along = out * Math.sin(ropeAngle) + up * Math.cos(ropeAngle);
	return { assistForce: kept(along, assistRange(weight, 'N')), ropeAngle };
}
