import {
	boxToSegment,
	contains,
	crosses,
	nearestInBox,
	nearestOnSegment,
	overlaps,
	pointToSegment,
	segmentsCross,
	type Box,
	type Point,
	type Segment
} from './geometry.ts';
import { besides, everywhere } from './label-places.ts';

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

const apart = 2;
/** A place that costs no more than this is taken without looking further off. */
const wanting = 26;
/** What breaking a hard rule costs. */
const flaw = 1e4;
const rounds = 6;

/**
 * Finds a place for every label: beside its own arrow if there is room, else further off with a
 * leader. Greedy in the order given, then every label may move once more with all others in place.
 * A label that finds no clear place is served first in another round; `clear` says whether all
 * have one in the end.
 * Depends on nothing but its arguments, so that a drawing is the same in a test and on a screen.
 */
export function placeLabels(
	requests: LabelRequest[],
	around: Surroundings
): { places: PlacedLabel[]; clear: boolean } {
	let order = requests;
	let placed = new Map<string, PlacedLabel>();
	let stuck: LabelRequest | undefined;
	for (let round = 0; round < rounds; round++) {
		placed = new Map();
		for (let pass = 0; pass < 2; pass++) {
			stuck = undefined;
			for (const request of order) {
				placed.delete(request.id);
				const { label, cost } = place(request, [...placed.values()], around, round === 0 ? 12 : 5);
				placed.set(request.id, label);
				if (cost >= flaw) stuck ??= request;
			}
		}
		if (!stuck) break;
		order = [stuck, ...order.filter((request) => request !== stuck)];
	}
	return { places: requests.map(({ id }) => placed.get(id)!), clear: !stuck };
}

function place(
	request: LabelRequest,
	others: PlacedLabel[],
	around: Surroundings,
	mesh: number
): { label: PlacedLabel; cost: number } {
	const beside = best(request, besides(request), others, around);
	if (beside.cost <= wanting) return beside;
	const anywhere = best(request, everywhere(request, around.frame, mesh), others, around);
	return anywhere.cost < beside.cost ? anywhere : beside;
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
	const halfDiagonal = Math.sqrt(width * width + height * height) / 2;
	for (const { x, y } of centres) {
		const box = { x: x - width / 2, y: y - height / 2, width, height };
		// Most places are ruled out by how far they are at least.
		if (pointToSegment(x, y, own) - halfDiagonal >= least) continue;
		const distance = boxToSegment(box, own);
		// The tip names an arrow best: its tail is often shared.
		const fromTip = Math.sqrt((x - own.to.x) ** 2 + (y - own.to.y) ** 2);
		let cost = (distance === 0 ? 40 : distance) + 0.08 * fromTip;
		if (cost >= least) continue;
		cost += flaws(box, others, around) * flaw;
		if (cost >= least) continue;
		let nearer = false;
		for (const arrow of around.arrows) {
			if (arrow.id === id) continue;
			const other = boxToSegment(box, arrow.segment);
			if (other === 0) cost += 60;
			if (other <= distance) nearer = true;
		}
		for (const line of around.lines) if (crosses(line, box)) cost += 12;
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
	for (const { box } of others) if (crosses(leader, box)) cost += flaw;
	for (const arrow of around.arrows) {
		if (arrow.id !== id && segmentsCross(leader, arrow.segment)) cost += 25;
	}
	return cost;
}
