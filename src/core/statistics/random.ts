import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { normalQuantile } from './normal-quantile.ts';

/** A stream of chance that always runs the same from the same seed. */
export type Random = {
	/** A number from 0 (included) to 1 (left out), every one equally likely. */
	uniform(): number;
	/** A standard normal number. */
	normal(): number;
	/** A whole number from 0 to size − 1. */
	below(size: number): number;
	/** A shuffled copy; every order equally likely. */
	shuffle<Item>(items: readonly Item[]): Item[];
};

/**
 * A seeded stream of random numbers: the same seed always gives the same plan or simulation.
 *
 * Uniform numbers from xoroshiro128+ with 53 bits; normal ones by inverting Φ; shuffles by Fisher and Yates.
 *
 * @param seed whole number, −2³¹ to 2³¹ − 1
 * @returns the stream; it moves on with every call
 * @throws RangeError when the seed is not a whole number
 * Source: blackmanVigna2021
 * Example: seededRandom(7).uniform() equals seededRandom(7).uniform()
 */
export function seededRandom(seed: number): Random {
	if (!Number.isInteger(seed)) throw new RangeError(`seed: ${seed} is not a whole number`);
	const generator = xoroshiro128plus(seed);
	const uniform = (): number => uniformFloat64(generator);
	const below = (size: number): number => Math.floor(uniform() * size);
	return {
		uniform,
		below,
		normal: () => normalQuantile(uniform() + 2 ** -54),
		shuffle: (items) => {
			const order = [...items];
			for (let k = order.length - 1; k > 0; k -= 1) {
				const other = below(k + 1);
				[order[k], order[other]] = [order[other]!, order[k]!];
			}
			return order;
		}
	};
}
