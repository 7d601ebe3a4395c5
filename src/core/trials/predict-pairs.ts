import { binaryEntropy } from '../statistics/information.ts';
import { negligible, prediction, type Prediction } from './prediction.ts';
import type { StageFit } from './stage-fit.ts';

/**
 * Predicts trials from both stages where many causes were not seen, pair of points by pair of points.
 *
 * Each pair carries the extra weight ∏ (1 − P_j Q_j); its cost grows with the product of the points.
 *
 * @param o both stages, and their chances at the places to predict and at the unseen trials' places
 * @returns one prediction a place, as predictTogether
 * Source: derived
 * Example: with no unseen trials the result is that of predictTogether
 */
export function predictPairs(o: {
	slip: StageFit;
	open: StageFit;
	slips: readonly Float64Array[];
	opens: readonly Float64Array[];
	unseenSlips: readonly Float64Array[];
	unseenOpens: readonly Float64Array[];
}): Prediction[] {
	const { slip, open, slips, opens, unseenSlips, unseenOpens } = o;
	const kept = [...open.sum.weights.keys()].filter((k) => open.sum.weights[k]! > negligible);
	const pick = (values: ArrayLike<number>): Float64Array =>
		Float64Array.from(kept, (k) => values[k]!);
	const openWeights = pick(open.sum.weights);
	const openChances = opens.map(pick);
	const openHidden = openChances.map((chances) => chances.map(binaryEntropy));
	const openUnseen = unseenOpens.map(pick);
	const row = new Float64Array(kept.length);
	const sums = slips.map(() => ({ held: 0, stays: 0, hidden: 0 }));
	let total = 0;
	for (let i = 0; i < slip.sum.weights.length; i += 1) {
		if (slip.sum.weights[i]! < negligible) continue;
		let mass = 0;
		for (let k = 0; k < row.length; k += 1) {
			let weight = slip.sum.weights[i]! * openWeights[k]!;
			for (let j = 0; j < unseenSlips.length; j += 1)
				weight *= 1 - unseenSlips[j]![i]! * openUnseen[j]![k]!;
			row[k] = weight;
			mass += weight;
		}
		total += mass;
		slips.forEach((chances, c) => {
			const stays = chances[i]!;
			let held = 0;
			let hidden = 0;
			const [keeps, left] = [openChances[c]!, openHidden[c]!];
			for (let k = 0; k < row.length; k += 1) {
				held += row[k]! * keeps[k]!;
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
