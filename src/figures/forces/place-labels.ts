import {
	boxToSegment,
	contains,
	crosses,
	nearestInBox,
	nearestOnSegment,
	overlaps,
	segmentsCross,
	type Box,
	type Point,
	type Segment
} from './geometry.ts';

export type LabelRequest = {
	id: string;
	width: number;
	height: number;
	/** What the label names: an arrow from tail to tip, or the chord of an angle's arc. */
	own: Segment;
};

export type PlacedLabel = { id: string; box: Box; leader?: Segment };

export type Surroundings = {
	/** No label leaves it. */
	frame: Box;
	/** Arrow heads, handles, titles, scale bars: never covered. */
	blocked: Box[];
	/** Every arrow; a label nearer to another arrow than to its own gets a leader. */
	arrows: { id: string; segment: Segment }[];
	/** Lines that a label had better not cross. */
	lines: Segment[];
};

const gap = 4;
const apart = 2;
const wanting = 26;
const directions = Array.from({ length: 12 }, (_, i) => ({
	x: Math.cos((i * Math.PI) / 6),
	y: Math.sin((i * Math.PI) / 6)
}));

/**
 * Finds a place for every label: beside its own arrow if there is room, else further off with a
 * leader. Greedy in the order given, then every label may move once more with all others in place.
 * Depends on nothing but its arguments, so that a drawing is the same in a test and on a screen.
 */
export function placeLabels(requests: LabelRequest[], around: Surroundings): PlacedLabel[] {
	const placed = new Map<string, PlacedLabel>();
	for (let pass = 0; pass < 2; pass++) {
		for (const request of requests) {
			placed.delete(request.id);
			placed.set(request.id, place(request, [...placed.values()], around));
		}
	}
	return requests.map(({ id }) => placed.get(id)!);
}

function place(request: LabelRequest, others: PlacedLabel[], around: Surroundings): PlacedLabel {
	const beside = best(request, besides(request), others, around);
	if (beside.cost <= wanting) return beside.label;
	const anywhere = best(request, everywhere(request, around.frame), others, around);
	return anywhere.cost < beside.cost ? anywhere.label : beside.label;
}

function best(
	request: LabelRequest,
	centres: Point[],
	others: PlacedLabel[],
	around: Surroundings
): { label: PlacedLabel; cost: number } {
	let label: PlacedLabel | undefined;
	let least = Infinity;
	const { id, width, height, own } = request;
	for (const { x, y } of centres) {
		const box = { x: x - width / 2, y: y - height / 2, width, height };
		let cost = flaws(box, others, around) * 1e4;
		if (cost >= least) continue;
		const distance = boxToSegment(box, own);
		cost += distance === 0 ? 40 : distance;
		// The tip names an arrow best: its tail is often shared.
		cost += 0.08 * Math.hypot(x - own.to.x, y - own.to.y);
		let nearer = false;
		for (const arrow of around.arrows) {
			if (arrow.id === id) continue;
			const other = boxToSegment(box, arrow.segment);
			if (other === 0) cost += 60;
			if (other <= distance) nearer = true;
		}
		for (const line of around.lines) if (crosses(line, box)) cost += 9;
		if (cost >= least) continue;
		let leader: Segment | undefined;
		if (nearer || distance > 14) {
			leader = leaderBetween(box, own);
			cost += 16 + leaderFlaws(leader, id, others, around);
		}
		if (cost < least) {
			least = cost;
			label = leader ? { id, box, leader } : { id, box };
		}
	}
	return { label: label!, cost: least };
}

/** How many hard rules a box breaks. */
function flaws(box: Box, others: PlacedLabel[], { frame, blocked }: Surroundings): number {
	let count = contains(frame, box) ? 0 : 3;
	for (const block of blocked) if (overlaps(box, block, 1)) count++;
	for (const other of others) {
		if (overlaps(box, other.box, apart)) count += 2;
		if (other.leader && crosses(other.leader, box)) count++;
	}
	return count;
}

function leaderBetween(box: Box, own: Segment): Segment {
	const middle = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
	const to = nearestOnSegment(own, middle, 0.4);
	return { from: nearestInBox(box, to), to };
}

function leaderFlaws(leader: Segment, id: string, others: PlacedLabel[], around: Surroundings) {
	let cost = 0;
	for (const { box } of others) if (crosses(leader, box)) cost += 1e4;
	for (const arrow of around.arrows) {
		if (arrow.id !== id && segmentsCross(leader, arrow.segment)) cost += 25;
	}
	return cost;
}

/** Around the tip, then along both sides of the shaft. */
function besides({ own, width, height }: LabelRequest): Point[] {
	const centres: Point[] = [];
	const { from, to } = own;
	const at = (point: Point, way: Point, distance: number) =>
		centres.push({
			x: point.x + way.x * (distance + width / 2),
			y: point.y + way.y * (distance + height / 2)
		});
	for (const distance of [gap + 3, gap + 9]) {
		for (const way of directions) at(to, way, distance);
	}
	const length = Math.hypot(to.x - from.x, to.y - from.y);
	if (length < 1) return centres;
	const across = { x: -(to.y - from.y) / length, y: (to.x - from.x) / length };
	for (const share of [0.9, 0.75, 0.6, 0.45, 0.3]) {
		const point = { x: from.x + (to.x - from.x) * share, y: from.y + (to.y - from.y) * share };
		for (const side of [1, -1]) {
			for (const distance of [gap, gap + 6]) {
				// A box clears a line at the support of its corner, not at its half width.
				const clear =
					distance + (Math.abs(across.x) * width) / 2 + (Math.abs(across.y) * height) / 2;
				centres.push({
					x: point.x + across.x * clear * side,
					y: point.y + across.y * clear * side
				});
			}
		}
	}
	return centres;
}

function everywhere({ width, height }: LabelRequest, frame: Box): Point[] {
	const centres: Point[] = [];
	const columns = Math.max(1, Math.floor((frame.width - width) / 9));
	const rows = Math.max(1, Math.floor((frame.height - height) / 8));
	for (let i = 0; i <= columns; i++) {
		for (let j = 0; j <= rows; j++) {
			centres.push({
				x: frame.x + width / 2 + ((frame.width - width) * i) / columns,
				y: frame.y + height / 2 + ((frame.height - height) * j) / rows
			});
		}
	}
	return centres;
}
