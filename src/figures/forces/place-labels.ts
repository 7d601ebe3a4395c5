import {
	boxToSegment,
	contains,
	crosses,
	middle,
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

/**
 * Finds a place for every label: beside its own arrow if there is room, else further off with a
 * leader. Greedy in the order given, then every label may move once more with all others in place.
 * A label that finds no clear place is served first in another round; `clear` says whether all
 * have one in the end.
 * Depends on nothing but its arguments, so that a drawing is the same in a test and on a screen.
 */
export function placeLabels(
	requests: LabelRequest[],
	around: Surroundings,
	rounds = 2
): { places: PlacedLabel[]; clear: boolean } {
	let order = requests;
	let placed = new Map<string, PlacedLabel>();
	let clear = false;
	// How often a label found no place: those go first, and are worth a search in small steps.
	const hard = new Map<string, number>();
	const hardness = ({ id }: LabelRequest) => hard.get(id) ?? 0;
	for (let round = 0; round < rounds; round++) {
		placed = new Map();
		for (let pass = 0; pass < 2; pass++) {
			clear = true;
			for (const request of order) {
				placed.delete(request.id);
				const { label, cost } = place(
					request,
					[...placed.values()],
					around,
					hard.has(request.id) ? 5 : 12
				);
				placed.set(request.id, label);
				if (cost >= flaw) {
					clear = false;
					hard.set(request.id, hardness(request) + 1 + round);
				}
			}
		}
		if (clear) break;
		order = [...requests].sort((a, b) => hardness(b) - hardness(a));
	}
	return { places: requests.map(({ id }) => placed.get(id)!), clear };
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
			const found = bestLeader(box, request, others, around);
			leader = found.leader;
			cost += 16 + found.cost;
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

/** To the nearest point of the arrow's outer part, or else to its tip or well up its shaft. */
function bestLeader(
	box: Box,
	{ id, own }: LabelRequest,
	others: PlacedLabel[],
	around: Surroundings
): { leader: Segment; cost: number } {
	const nearest = nearestOnSegment(own, middle(box), 0.4);
	const ends = [nearest, own.to, nearestOnSegment(own, own.from, 0.7)];
	let found = { leader: { from: nearest, to: nearest }, cost: Infinity };
	for (const [i, to] of ends.entries()) {
		const leader = { from: nearestInBox(box, to), to };
		const cost = 6 * i + leaderFlaws(leader, id, others, around);
		if (cost < found.cost) found = { leader, cost };
		if (cost === 0) break;
	}
	return found;
}

function leaderFlaws(leader: Segment, id: string, others: PlacedLabel[], around: Surroundings) {
	let cost = 0;
	for (const { box } of others) if (crosses(leader, box)) cost += flaw;
	for (const arrow of around.arrows) {
		if (arrow.id !== id && segmentsCross(leader, arrow.segment)) cost += 25;
	}
	return cost;
}
