import type { Body, Diagram, DrawnForce, Vector } from '#core/workbook/statics/diagram.ts';
import type { Point } from '#plot/point.ts';

/** A force with its arrow's tail and tip on the drawing, px. */
export type PlacedForce = { force: DrawnForce; from: Point; to: Point };

export type BodyPicture = {
	body: Body;
	width: number;
	height: number;
	/** px per newton, the same for all bodies of a diagram. */
	scale: number;
	outline: Point[];
	/** Other bodies, and the surfaces and ropes, for orientation. */
	others: Point[][];
	lines: [Point, Point][];
	forces: PlacedForce[];
};

const width = 420;
/** Longest arrow and longest side of a body, px. */
const longestArrow = 104;
const longestBody = 150;
const margin = { x: 62, top: 30, bottom: 46 };
/** Arrows on one line stand this far apart, px. */
const apart = 9;

/** Moves arrows that would lie on each other to stand side by side. */
function spread(forces: PlacedForce[]): PlacedForce[] {
	const placed: PlacedForce[] = [];
	for (const next of forces) {
		let { from, to } = next;
		for (let turn = 0; turn < 4; turn += 1) {
			if (!placed.some((other) => coincide(other, { from, to }))) break;
			const size = Math.hypot(to[0] - from[0], to[1] - from[1]) || 1;
			// To the same side of the drawing whichever way the arrow points.
			const upright = Math.abs(to[1] - from[1]) >= Math.abs(to[0] - from[0]);
			const way = (upright ? to[1] > from[1] : to[0] > from[0]) ? 1 : -1;
			const off: Vector = [
				(-(to[1] - from[1]) / size) * apart * -way,
				((to[0] - from[0]) / size) * apart * -way
			];
			from = [from[0] + off[0], from[1] + off[1]];
			to = [to[0] + off[0], to[1] + off[1]];
		}
		placed.push({ ...next, from, to });
	}
	return placed;
}

function coincide(a: { from: Point; to: Point }, b: { from: Point; to: Point }): boolean {
	const [ux, uy] = [a.to[0] - a.from[0], a.to[1] - a.from[1]];
	const size = Math.hypot(ux, uy) || 1;
	const [vx, vy] = [b.to[0] - b.from[0], b.to[1] - b.from[1]];
	const across = (p: Point) => ((p[0] - a.from[0]) * -uy + (p[1] - a.from[1]) * ux) / size;
	const along = (p: Point) => ((p[0] - a.from[0]) * ux + (p[1] - a.from[1]) * uy) / size;
	const parallel = Math.abs(ux * vy - uy * vx) < 0.05 * size * (Math.hypot(vx, vy) || 1);
	if (!parallel || Math.abs(across(b.from)) > apart * 0.7) return false;
	const [low, high] = [along(b.from), along(b.to)].sort((p, q) => p - q) as [number, number];
	return high > 2 && low < size - 2;
}

/**
 * Forces that press on a body from two sides along one line: their arrows would cover each other
 * inside the body, so they are drawn from outside, with the tip where they press.
 */
function fromOutside(forces: DrawnForce[]): Set<DrawnForce> {
	const pressing = forces.filter(({ kind }) => kind !== 'weight');
	const meets = (a: DrawnForce, b: DrawnForce) => {
		const [dx, dy] = [b.at[0] - a.at[0], b.at[1] - a.at[1]];
		const size = Math.hypot(...a.vector) * Math.hypot(dx, dy);
		const towards = dx * a.vector[0] + dy * a.vector[1];
		return towards > 0.999 * size && size > 0;
	};
	return new Set(
		pressing.filter((a) => pressing.some((b) => a !== b && meets(a, b) && meets(b, a)))
	);
}

/**
 * Draws each body by itself with the forces on it, all to one force scale; the other bodies and the
 * surfaces are there for orientation.
 */
export function bodyPictures(diagram: Diagram): BodyPicture[] {
	const sizes = diagram.forces.map(({ vector }) => Math.hypot(...vector));
	const largest = Math.max(...sizes, 0);
	const scale = largest > 0 ? longestArrow / largest : 0;
	return diagram.bodies.map((body) => pictureOf(diagram, body, scale, largest));
}

function pictureOf(diagram: Diagram, body: Body, scale: number, largest: number): BodyPicture {
	const own = diagram.forces.filter(
		(each) => each.body === body.id && Math.hypot(...each.vector) > 1e-9 * largest
	);
	const outside = fromOutside(own);
	/** Shares of its vector at which a force's tail and tip stand from its place. */
	const ends = (force: DrawnForce) => (outside.has(force) ? [-1, 0] : [0, 1]) as [number, number];
	const xs = body.outline.map(([x]) => x);
	const ys = body.outline.map(([, y]) => y);
	const reach = Math.max(
		Math.max(...xs) - Math.min(...xs),
		Math.max(...ys) - Math.min(...ys),
		1e-9
	);
	const room = width - 2 * margin.x;
	// In px about the world's origin; y is turned over at the end.
	let zoom = longestBody / reach;
	const spanAt = (z: number, axis: 0 | 1) => {
		const places = [
			...body.outline.map((p) => p[axis] * z),
			...own.flatMap((force) =>
				ends(force).map((share) => force.at[axis] * z + share * force.vector[axis] * scale)
			)
		];
		return [Math.min(...places), Math.max(...places)] as const;
	};
	for (let turn = 0; turn < 12; turn += 1) {
		const [low, high] = spanAt(zoom, 0);
		if (high - low <= room) break;
		zoom *= 0.85;
	}
	const [left, right] = spanAt(zoom, 0);
	const [low, high] = spanAt(zoom, 1);
	const height = Math.max(200, high - low + margin.top + margin.bottom);
	const middle = (left + right) / 2;
	const base = height - margin.bottom - (height - margin.top - margin.bottom - (high - low)) / 2;
	const at = ([x, y]: Vector): Point => [x * zoom - middle + width / 2, base - (y * zoom - low)];
	const forces = own.map((force): PlacedForce => {
		const place = at(force.at);
		const [from, to] = ends(force).map((share): Point => [
			place[0] + share * force.vector[0] * scale,
			place[1] - share * force.vector[1] * scale
		]) as [Point, Point];
		return { force, from, to };
	});
	return {
		...{ body, width, height, scale },
		outline: body.outline.map(at),
		others: diagram.bodies.filter((each) => each !== body).map((each) => each.outline.map(at)),
		lines: diagram.lines.map(({ from, to }) => [at(from), at(to)]),
		forces: spread(forces)
	};
}
