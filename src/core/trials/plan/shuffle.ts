import { uniformInt } from 'pure-rand/distribution/uniformInt';
import type { RandomGenerator } from 'pure-rand/types/RandomGenerator';

/**
 * Shuffles a list, every order equally likely (Fisher–Yates, downward form).
 *
 * @param items any list; it is left as it is
 * @param random seeded generator; it moves on
 * @returns a new list
 * Source: durstenfeld1964
 * Example: shuffled([1, 2, 3], xoroshiro128plus(1)) → the three numbers in some order
 */
export function shuffled<Item>(items: readonly Item[], random: RandomGenerator): Item[] {
	const result = [...items];
	for (let last = result.length - 1; last > 0; last--) {
		const other = uniformInt(random, 0, last);
		[result[last], result[other]] = [result[other]!, result[last]!];
	}
	return result;
}
