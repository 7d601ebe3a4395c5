import { binaryEntropy } from '../statistics/information.ts';
import { predictPairs } from './predict-pairs.ts';
import { negligible, prediction, type Prediction } from './prediction.ts';
import type { Place, StageFit } from './stage-fit.ts';
import { unseenTerms } from './unseen-average.ts';

export type { Prediction };

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

/**
 * Predicts trials from both stages.
 *
 * held P Q, slipped 1 − P, opened P (1 − Q), averaged over the joint belief; expected information
 * H(outcome) − E[h(P) + P h(Q)]. With every cause seen the belief factorises; with unseen causes each pair of points
 * carries the extra weight ∏ (1 − P_j Q_j), expanded into terms that factorise, or summed pair by pair where the
 * terms would be more.
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
	const terms = unseenTerms(unseen);
	const unseenSlips = unseen.map((place) => slip.chances(place));
	const unseenOpens = unseen.map((place) => open.chances(place));
	if (terms.count > open.sum.weights.length / 2)
		return predictPairs({ slip, open, slips, opens, unseenSlips, unseenOpens });
	const s = momentsOf(slip.sum.weights, unseenSlips, terms.count, terms.ofSlips, slips);
	const o = momentsOf(open.sum.weights, unseenOpens, terms.count, terms.ofOpenings, opens);
	const over = (a: Float64Array, b: Float64Array): number =>
		a.reduce((sum, value, t) => sum + value * b[t]!, 0);
	const total = over(s.mass, o.mass);
	return places.map((_, c) =>
		prediction(
			over(s.chance[c]!, o.chance[c]!) / total,
			over(s.chance[c]!, o.mass) / total,
			(over(s.hidden[c]!, o.mass) + over(s.chance[c]!, o.hidden[c]!)) / total
		)
	);
}

/** Sums over one stage's points of belief × factor of each term, alone and × P and × h(P) of each place. */
function momentsOf(
	weights: Float64Array,
	unseen: readonly Float64Array[],
	count: number,
	factors: (chances: ArrayLike<number>) => Float64Array,
	chances: readonly Float64Array[]
) {
	const empty = () => chances.map(() => new Float64Array(count));
	const sums = { mass: new Float64Array(count), chance: empty(), hidden: empty() };
	const here = new Float64Array(unseen.length);
	for (let i = 0; i < weights.length; i += 1) {
		if (weights[i]! < negligible) continue;
		unseen.forEach((values, j) => (here[j] = values[i]!));
		const factor = factors(here);
		for (let t = 0; t < count; t += 1) sums.mass[t]! += weights[i]! * factor[t]!;
		chances.forEach((values, c) => {
			const [p, h] = [values[i]!, binaryEntropy(values[i]!)];
			const [chance, hidden] = [sums.chance[c]!, sums.hidden[c]!];
			for (let t = 0; t < count; t += 1) {
				const share = weights[i]! * factor[t]!;
				chance[t]! += share * p;
				hidden[t]! += share * h;
			}
		});
	}
	return sums;
}
