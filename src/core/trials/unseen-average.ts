import type { Place, StageFit } from './stage-fit.ts';

/** Expansions with more terms than this are summed point by point instead. */
const mostTerms = 4096;
/** Points with less belief than this change nothing in the first seven digits of an average. */
const negligible = 1e-10;

/** The unseen trials of one load: the opening stage cannot tell them apart. */
type Group = { members: number[] };

function groupsOf(places: readonly Place[]): Group[] {
	const groups = new Map<number, Group>();
	places.forEach(({ lnLoad }, j) => {
		const same = groups.get(lnLoad);
		if (same) same.members.push(j);
		else groups.set(lnLoad, { members: [j] });
	});
	return [...groups.values()];
}

const termsIn = (groups: readonly Group[]): number =>
	groups.reduce((terms, { members }) => terms * (members.length + 1), 1);

/** Chances that 0, 1, … of a group did not slip, given each one's chance. */
function countsSticking(
	members: readonly number[],
	sticks: ArrayLike<number>,
	into: Float64Array
): void {
	into.fill(0);
	into[0] = 1;
	members.forEach((j, seen) => {
		const p = sticks[j]!;
		for (let k = seen + 1; k > 0; k -= 1) into[k] = into[k]! * (1 - p) + into[k - 1]! * p;
		into[0]! *= 1 - p;
	});
}

/** Chances that 0, 1, … trials of one load all opened. */
function powersOfOpening(opens: number, into: Float64Array): void {
	into[0] = 1;
	for (let k = 1; k < into.length; k += 1) into[k] = into[k - 1]! * opens;
}

/** Adds weight × the outer product of the groups' vectors to a table of terms, the first group varying slowest. */
function addProduct(table: Float64Array, vectors: readonly Float64Array[], weight: number): void {
	let terms = Float64Array.of(weight);
	for (const vector of vectors) {
		const next = new Float64Array(terms.length * vector.length);
		for (let i = 0; i < terms.length; i += 1)
			for (let k = 0; k < vector.length; k += 1)
				next[i * vector.length + k] = terms[i]! * vector[k]!;
		terms = next;
	}
	for (let i = 0; i < table.length; i += 1) table[i]! += terms[i]!;
}

/** Σ over all terms of the table times the groups' vectors, one group after the other. */
function contract(
	table: Float64Array,
	vectors: readonly Float64Array[],
	scratch: Float64Array
): number {
	scratch.set(table);
	let size = table.length;
	for (let g = vectors.length - 1; g >= 0; g -= 1) {
		const vector = vectors[g]!;
		size /= vector.length;
		for (let i = 0; i < size; i += 1) {
			let sum = 0;
			for (let k = 0; k < vector.length; k += 1)
				sum += scratch[i * vector.length + k]! * vector[k]!;
			scratch[i] = sum;
		}
	}
	return scratch[0]!;
}

/** What the terms of the expansion are at one point of either stage. */
export type UnseenTerms = {
	/** How many; their products over both stages add up to ∏ (1 − P_j Q_j). */
	count: number;
	/** Slip stage's factors, from the chances of not slipping at the places. */
	ofSlips(sticks: ArrayLike<number>): Float64Array;
	/** Opening stage's factors, from the chances of not opening there. */
	ofOpenings(keeps: ArrayLike<number>): Float64Array;
};

/**
 * The expansion of ∏ (1 − P_j Q_j) over unseen trials into terms, each a factor of one stage times one of the other.
 *
 * By counts of identical loads, as in averageOverOpenings. Every factor is at least 0, so nothing cancels.
 *
 * @param places of the unseen trials
 * @returns number of terms, and the factors of either stage at a point
 * Source: derived
 * Example: unseenTerms([]).count → 1
 */
export function unseenTerms(places: readonly Place[]): UnseenTerms {
	const groups = groupsOf(places);
	const count = termsIn(groups);
	const filled = (fill: Fill) => (chances: ArrayLike<number>) => {
		const vectors = groups.map(({ members }) => new Float64Array(members.length + 1));
		const table = new Float64Array(count);
		fill(groups, chances, vectors);
		addProduct(table, vectors, 1);
		return table;
	};
	return { count, ofSlips: filled(sticking), ofOpenings: filled(opening) };
}

type Fill = (groups: readonly Group[], chances: ArrayLike<number>, vectors: Float64Array[]) => void;

function averageOver(
	fit: StageFit,
	places: readonly Place[],
	own: Fill,
	others: Fill
): (chances: Float64Array) => number {
	const { weights } = fit.sum;
	const ours = places.map((place) => fit.chances(place));
	const kept = [...weights.keys()].filter((k) => weights[k]! > negligible);
	const groups = groupsOf(places);
	if (termsIn(groups) > mostTerms) return pointByPoint(ours, kept, weights);
	const empty = (): Float64Array[] =>
		groups.map(({ members }) => new Float64Array(members.length + 1));
	const table = new Float64Array(termsIn(groups));
	const vectors = empty();
	const here = new Float64Array(places.length);
	for (const k of kept) {
		ours.forEach((chance, j) => (here[j] = chance[k]!));
		own(groups, here, vectors);
		addProduct(table, vectors, weights[k]!);
	}
	const scratch = new Float64Array(table.length);
	return (chances) => {
		others(groups, chances, vectors);
		return Math.log(contract(table, vectors, scratch));
	};
}

function pointByPoint(
	ours: readonly Float64Array[],
	kept: readonly number[],
	weights: Float64Array
): (chances: Float64Array) => number {
	const rows = kept.map((k) => ({
		weight: weights[k]!,
		chances: ours.map((chance) => chance[k]!)
	}));
	return (chances) => {
		let sum = 0;
		for (const row of rows) {
			let product = row.weight;
			for (let j = 0; j < chances.length; j += 1) product *= 1 - row.chances[j]! * chances[j]!;
			sum += product;
		}
		return Math.log(sum);
	};
}

function sticking(
	groups: readonly Group[],
	chances: ArrayLike<number>,
	vectors: Float64Array[]
): void {
	groups.forEach(({ members }, g) => countsSticking(members, chances, vectors[g]!));
}

function opening(
	groups: readonly Group[],
	chances: ArrayLike<number>,
	vectors: Float64Array[]
): void {
	groups.forEach(({ members }, g) => powersOfOpening(1 - chances[members[0]!]!, vectors[g]!));
}

/**
 * Averages the likelihood of failures of unseen cause over the opening stage.
 *
 * One such failure has likelihood 1 − P Q = (1 − P) + P (1 − Q). Multiplied out, the terms depend on the opening stage
 * only through how many trials of each load did not slip, so identical loads are expanded by counts: 2^m terms for m
 * different loads. Beyond 4096 terms the product is summed over the stage's points instead, which is the same sum.
 *
 * @param open opening stage, fitted to the trials whose cause was seen
 * @param places of the unseen trials
 * @returns natural log of the average, for given chances of not slipping at those places
 * Source: derived
 * Example: averageOverOpenings(open, [])(new Float64Array()) → 0
 */
export function averageOverOpenings(
	open: StageFit,
	places: readonly Place[]
): (sticks: Float64Array) => number {
	return averageOver(open, places, opening, sticking);
}

/**
 * Averages the likelihood of failures of unseen cause over the slip stage; the same expansion the other way round.
 *
 * @param slip slip stage, fitted to the trials whose cause was seen
 * @param places of the unseen trials
 * @returns natural log of the average, for given chances of not opening at those places
 * Source: derived
 * Example: averageOverSlips(slip, [])(new Float64Array()) → 0
 */
export function averageOverSlips(
	slip: StageFit,
	places: readonly Place[]
): (keeps: Float64Array) => number {
	return averageOver(slip, places, sticking, opening);
}
