import { binaryEntropy, entropy } from '../statistics/information.ts';
import type { Place, StageFit } from './stage-fit.ts';

/** How a trial is expected to end, and what it would teach. */
export type Prediction = {
	/** Expected information about all unknowns, nats. */
	information: number;
	chanceHeld: number;
	chanceSlipped: number;
	chanceOpened: number;
};

/** Points with less belief than this change no printed digit of a sum over pairs of points. */
const negligible = 1e-12;

/** Averages over one stage: of the chance P and of h(P). */
type Averages = { stays: number; hidden: number };

function averages(weights: ArrayLike<number>, chances: ArrayLike<number>): Averages {
	let stays = 0;
	let hidden = 0;
	for (let k = 0; k < weights.length; k += 1) {
		stays += weights[k]! * chances[k]!;
		hidden += weights[k]! * binaryEntropy(chances[k]!);
	}
	return { stays, hidden };
}

function prediction(held: number, stays: number, hidden: number): Prediction {
	const [chanceSlipped, chanceOpened] = [Math.max(0, 1 - stays), Math.max(0, stays - held)];
	return {
		information: Math.max(0, entropy([held, chanceSlipped, chanceOpened]) - hidden),
		chanceHeld: held,
		chanceSlipped,
		chanceOpened
	};
}

/**
 * Predicts trials from both stages.
 *
 * held P Q, slipped 1 − P, opened P (1 − Q), averaged over the joint belief; expected information
 * H(outcome) − E[h(P) + P h(Q)]. With every cause seen the belief factorises; with unseen causes each pair of points
 * carries the extra weight ∏ (1 − P_j Q_j).
 *
 * @param slip slip stage, fitted to the trials whose cause was seen
 * @param open opening stage, likewise
 * @param unseen places of the trials whose cause was not seen
 * @param places to predict
 * @returns one prediction a place; chances sum to 1, information in nats
 * Source: lindley1956, definition 2
 * Example: predictTogether(slip, open, [], [place])[0]!.chanceHeld → 0 to 1
 */
export function predictTogether(
	slip: StageFit,
	open: StageFit,
	unseen: readonly Place[],
	places: readonly Place[]
): Prediction[] {
	const slips = places.map((place) => slip.chances(place));
	const opens = places.map((place) => open.chances(place));
	if (unseen.length === 0) {
		return places.map((_, c) => {
			const s = averages(slip.sum.weights, slips[c]!);
			const o = averages(open.sum.weights, opens[c]!);
			return prediction(s.stays * o.stays, s.stays, s.hidden + s.stays * o.hidden);
		});
	}
	const unseenSlips = unseen.map((place) => slip.chances(place));
	const unseenOpens = unseen.map((place) => open.chances(place));
	const kept = [...open.sum.weights.keys()].filter((k) => open.sum.weights[k]! > negligible);
	const pick = (values: ArrayLike<number>): Float64Array =>
		Float64Array.from(kept, (k) => values[k]!);
	const openWeights = pick(open.sum.weights);
	const openChances = opens.map(pick);
	const openHidden = openChances.map((chances) => chances.map(binaryEntropy));
	const openUnseen = unseenOpens.map(pick);
	const row = new Float64Array(kept.length);
	const sums = places.map(() => ({ held: 0, stays: 0, hidden: 0 }));
	let total = 0;
	for (let i = 0; i < slip.sum.weights.length; i += 1) {
		if (slip.sum.weights[i]! < negligible) continue;
		let mass = 0;
		for (let k = 0; k < row.length; k += 1) {
			let weight = slip.sum.weights[i]! * openWeights[k]!;
			for (let j = 0; j < unseen.length; j += 1)
				weight *= 1 - unseenSlips[j]![i]! * openUnseen[j]![k]!;
			row[k] = weight;
			mass += weight;
		}
		total += mass;
		places.forEach((_, c) => {
			const stays = slips[c]![i]!;
			let held = 0;
			let hidden = 0;
			const [chances, left] = [openChances[c]!, openHidden[c]!];
			for (let k = 0; k < row.length; k += 1) {
				held += row[k]! * chances[k]!;
				hidden += row[k]! * left[k]!;
			}
			sums[c]!.held += stays * held;
			sums[c]!.stays += stays * mass;
			sums[c]!.hidden += mass * binaryEntropy(stays) + stays * hidden;
		});
	}
	return sums.map(({ held, stays, hidden }) =>
		prediction(held / total, stays / total, hidden / total)
	);
}
