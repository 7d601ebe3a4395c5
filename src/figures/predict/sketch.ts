import type { Point } from '#plot/point.ts';

/** How far a sketch reaches up and down from the edge, in halvings and doublings. */
export const sketchReach = 1;
/** One arrow key, and one page key, in the same measure. */
export const sketchStep = 0.05;

/** A margin as a height on the ratio axis: 0 is the edge, 1 twice, −1 half; kept within reach. */
export function heightOf(margin: number): number {
	if (!(margin > 0)) return -sketchReach;
	return Math.min(sketchReach, Math.max(-sketchReach, Math.log2(margin)));
}

/** The margin at a height. */
export const marginAt = (height: number) => 2 ** height;

/** A sketch with one point moved; a first touch starts from a level line. */
export function moved(
	sketch: readonly number[] | undefined,
	count: number,
	at: number,
	margin: number
): number[] {
	const start = sketch?.length === count ? sketch : Array.from({ length: count }, () => 1);
	return start.map((old, index) => (index === at ? marginAt(heightOf(margin)) : old));
}

/** The point of the sketch nearest to a place across. */
export function nearest(places: readonly number[], across: number): number {
	return places.reduce(
		(best, place, at) => (Math.abs(place - across) < Math.abs(places[best]! - across) ? at : best),
		0
	);
}

/** Path through points. */
export const pathThrough = (points: readonly Point[]) =>
	points.map(([x, y], at) => `${at === 0 ? 'M' : 'L'}${x.toFixed(1)} ${y.toFixed(1)}`).join('');

/** Which way a curve goes as a whole: by its ends, with a twentieth either way counted as level. */
export function trend(margins: readonly number[]): 'rises' | 'stays' | 'falls' {
	const [first, last] = [margins[0] ?? 1, margins[margins.length - 1] ?? 1];
	const change = last / first;
	return change > 1.05 ? 'rises' : change < 1 / 1.05 ? 'falls' : 'stays';
}
