import type { Box, Point } from './geometry.ts';
import { newtonsPer, textWidth } from './text.ts';
import type { ForceUnit, ScaleBar } from './types.ts';

/**
 * Force scale, px per newton: the largest step of a series of ten a decade at which every
 * arrow stays in the room. Steps, so that an arrow grows with its force instead of always filling
 * the frame.
 */
export function fitScale(vectors: { tail: Point; force: Point }[], room: Box): number {
	let most = Infinity;
	for (const { tail, force } of vectors) {
		const across = force.x > 0 ? room.x + room.width - tail.x : tail.x - room.x;
		const along = force.y > 0 ? tail.y - room.y : room.y + room.height - tail.y;
		if (force.x !== 0) most = Math.min(most, across / Math.abs(force.x));
		if (force.y !== 0) most = Math.min(most, along / Math.abs(force.y));
	}
	if (!Number.isFinite(most) || most <= 0) return 0.1;
	return stepAtMost(most);
}

/** The largest step of the series that is not above a value. */
export function stepAtMost(most: number): number {
	return 10 ** (Math.floor(10 * Math.log10(most) + 1e-9) / 10);
}

/** The longest bar of 1, 2 or 5 times a power of ten that is no longer than `longest` px. */
export function scaleBar(
	scale: number,
	unit: ForceUnit,
	at: Point,
	longest: number,
	fontSize: number
): ScaleBar {
	const most = longest / (scale * newtonsPer(unit));
	const power = 10 ** Math.floor(Math.log10(most) + 1e-9);
	const count = ([5, 2, 1].find((step) => step * power <= most * (1 + 1e-9)) ?? 1) * power;
	const newtons = count * newtonsPer(unit);
	const length = newtons * scale;
	const text = `${Number(count.toPrecision(1))} ${unit}`;
	const height = fontSize * 1.2;
	return {
		segment: { from: at, to: { x: at.x + length, y: at.y } },
		text,
		newtons,
		box: {
			x: at.x,
			y: at.y - height + 4,
			width: length + 5 + textWidth(text, fontSize),
			height
		}
	};
}
