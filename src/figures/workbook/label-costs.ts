import { boxesOverlap, boxInside, lineEntersBox, type Box, type Frame } from '#plot/box.ts';
import { aroundPoint } from '#plot/label-candidates.ts';
import type { Point } from '#plot/point.ts';
import type { PlacedForce } from './free-body.ts';

/** A place that a label could take, and what is wrong with it whatever the other labels do. */
export type Place = { box: Box; leader: [Point, Point] | undefined; cost: number };

/** What a label keeps clear of. */
export type Ground = {
	frame: Frame;
	/** Words that stand already. */
	boxes: readonly Box[];
	arrows: readonly [Point, Point][];
	/** Lines that a label may cross where it must. */
	faint: readonly (readonly Point[])[];
};

/** A label farther than this from its arrow is joined to it by a thin line, px. */
const farOff = 11;

const along = ({ from, to }: PlacedForce, share: number): Point => [
	from[0] + (to[0] - from[0]) * share,
	from[1] + (to[1] - from[1]) * share
];

const edgeOf = (box: Box, [x, y]: Point): Point => [
	Math.max(box.cx - box.width / 2, Math.min(x, box.cx + box.width / 2)),
	Math.max(box.cy - box.height / 2, Math.min(y, box.cy + box.height / 2))
];

const distance = (a: Point, b: Point) => Math.hypot(a[0] - b[0], a[1] - b[1]);

/** The nearest pair of points of a box and an arrow. */
function nearest(box: Box, force: PlacedForce): [Point, Point] {
	const pairs = [0.1, 0.25, 0.4, 0.55, 0.7, 0.85, 1].map((share): [Point, Point] => {
		const point = along(force, share);
		return [edgeOf(box, point), point];
	});
	return pairs.reduce((best, each) => (distance(...each) < distance(...best) ? each : best));
}

const grown = (box: Box, by: number): Box => ({
	...box,
	width: box.width + 2 * by,
	height: box.height + 2 * by
});

/** How much two straight pieces cross, ends that only touch left aside. */
function crosses([a, b]: [Point, Point], [c, d]: [Point, Point]): boolean {
	const side = (p: Point, q: Point, r: Point) =>
		(q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0]);
	return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
}

/** Places by an arrow, cheapest first: near its tip, clear of arrows and lines, with no long leader. */
export function placesFor(
	force: PlacedForce,
	size: { width: number; height: number },
	ground: Ground,
	most = 90
): Place[] {
	const own = ground.arrows.find(([from]) => from === force.from);
	const others = ground.arrows.filter((each) => each !== own);
	const boxes = [4, 12, 24, 38, 54].flatMap((gap) =>
		[1, 0.8, 0.6, 0.4, 0.2].flatMap((share) =>
			aroundPoint(along(force, share), size, gap).map((box) => ({ box, share }))
		)
	);
	const places = boxes.flatMap(({ box, share }): Place[] => {
		if (!boxInside(box, ground.frame)) return [];
		if (ground.boxes.some((other) => boxesOverlap(grown(box, 2), other))) return [];
		const pair = nearest(box, force);
		const far = distance(...pair);
		const leader = far > farOff ? pair : undefined;
		let cost = far * 0.6 + (1 - share) * 8;
		for (const arrow of ground.arrows) if (lineEntersBox(arrow, grown(box, 1))) cost += 90;
		for (const line of ground.faint) if (lineEntersBox(line, grown(box, 1))) cost += 9;
		for (const other of others) {
			const near = distance(...nearest(box, { ...force, from: other[0], to: other[1] }));
			if (near < far) cost += 14;
			if (leader && crosses(leader, other)) cost += 30;
		}
		return [{ box, leader, cost: leader ? cost + 10 : cost }];
	});
	if (places.length) return places.sort((a, b) => a.cost - b.cost).slice(0, most);
	// No room at all: better a label over something than none.
	return [{ box: pulledInside(boxes[0]!.box, ground.frame), leader: undefined, cost: 500 }];
}

function pulledInside(box: Box, { left, right, top, bottom }: Frame): Box {
	const [w, h] = [box.width / 2, box.height / 2];
	return {
		...box,
		cx: Math.max(left + w, Math.min(box.cx, right - w)),
		cy: Math.max(top + h, Math.min(box.cy, bottom - h))
	};
}

/** What is wrong with two labels beside each other. */
export function quarrel(a: Place, b: Place): number {
	let cost = boxesOverlap(grown(a.box, 1), b.box) ? 1000 : 0;
	if (a.leader && lineEntersBox(a.leader, b.box)) cost += 60;
	if (b.leader && lineEntersBox(b.leader, a.box)) cost += 60;
	if (a.leader && b.leader && crosses(a.leader, b.leader)) cost += 30;
	return cost;
}
