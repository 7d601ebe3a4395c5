import { evaluateHang, loadAtNetMass, type Hang } from '#core/index.ts';
import { hangOnAxis } from '#core/region/hang-on-axis.ts';
import type { RegionAxis } from '#core/types.ts';
import type { Lines, Point } from './baseline.ts';

type Options = { axis: RegionAxis; from: number; to: number; load: { from: number; to: number } };

/** Looks along this many directions for the true edge, and along many where that finds none near. */
const directions = 16;
const manyDirections = 1440;
const near = 3e-3;
const smallest = 1e-13;
const largest = 0.1;

/** Worst distance to the true edge, at the points a method gives and midway between them. */
export type EdgeError = { atPoints: number; between: number };

/**
 * Measures lines of the plot against the true edge, which is found by bisection of single hangs
 * along rays. Points nearer than `frame` to the plot's frame are not edges and are left out.
 */
export function edgeError(
	hang: Hang,
	lines: Lines,
	o: Options,
	{ frame, midway }: { frame: number; midway: boolean }
): EdgeError {
	let atPoints = 0;
	let between = 0;
	const inside = ({ x, y }: Point) => x > frame && x < 1 - frame && y > frame && y < 1 - frame;
	for (const line of lines) {
		line.forEach((point, i) => {
			if (!inside(point)) return;
			atPoints = Math.max(atPoints, distance(hang, point, o));
			const next = midway ? line[i + 1] : undefined;
			if (!next || !inside(next)) return;
			const middle = { x: (point.x + next.x) / 2, y: (point.y + next.y) / 2 };
			between = Math.max(between, distance(hang, middle, o));
		});
	}
	return { atPoints, between };
}

/** A thin wedge between two edges may lie between sixteen rays, so what looks far is looked at again. */
function distance(hang: Hang, point: Point, o: Options): number {
	const first = distanceAlong(directions, hang, point, o);
	return first > near ? distanceAlong(manyDirections, hang, point, o) : first;
}

function distanceAlong(rays: number, hang: Hang, point: Point, o: Options): number {
	const here = holds(hang, point, o);
	for (let far = smallest; far <= largest; far *= 10) {
		let nearest = Infinity;
		for (let i = 0; i < rays; i++) {
			const angle = (2 * Math.PI * i) / rays;
			const at = (length: number) => ({
				x: point.x + length * Math.cos(angle),
				y: point.y + length * Math.sin(angle)
			});
			if (holds(hang, at(far), o) === here) continue;
			let low = 0;
			let high = far;
			while (high - low > 1e-2 * high && high > smallest) {
				const middle = (low + high) / 2;
				if (holds(hang, at(middle), o) === here) low = middle;
				else high = middle;
			}
			nearest = Math.min(nearest, high);
		}
		if (nearest < Infinity) return nearest;
	}
	return largest;
}

function holds(hang: Hang, { x, y }: Point, o: Options): boolean {
	const there = hangOnAxis(hang, o.axis, o.from + (o.to - o.from) * x, hang.hangingMass);
	if (!there) return false;
	const netMass = o.load.from + (o.load.to - o.load.from) * y;
	const { slipMargin, strengthMargin } = evaluateHang(there, loadAtNetMass(netMass, there));
	return slipMargin >= 1 && strengthMargin >= 1;
}
