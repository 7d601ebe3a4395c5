import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

/**
 * Deals out orders of a few conditions to people, so that over the room each order comes equally often.
 * All orders of the conditions, shuffled anew for every full round of people
 * @param people how many, whole number, 1 to 1000
 * @param conditions how many conditions, whole number, 1 to 4
 * @param seed whole number that fixes the shuffle
 * @returns for each person the conditions' numbers, counted from 0, in the order to do them
 * Sign: no two orders come more than once oftener than one another.
 * @throws RangeError for a number outside its range
 * Source: durstenfeld1964, for the shuffle.
 * Example: six people and three conditions: each of the six orders once.
 */
export function balancedOrders(people: number, conditions: number, seed: number): number[][] {
	const limits = { people: [1, 1000], conditions: [1, 4], seed: [0, 2 ** 31 - 1] } as const;
	for (const [field, value] of Object.entries({ people, conditions, seed })) {
		const [least, most] = limits[field as keyof typeof limits];
		if (!(Number.isInteger(value) && value >= least && value <= most)) {
			throw new RangeError(
				`${field} must be a whole number at least ${least} and at most ${most}, but is ${value}`
			);
		}
	}
	const random = xoroshiro128plus(seed);
	const dealt: number[][] = [];
	while (dealt.length < people) {
		const round = ordersOf(Array.from({ length: conditions }, (_, at) => at));
		for (let last = round.length - 1; last > 0; last--) {
			const other = uniformInt(random, 0, last);
			[round[last], round[other]] = [round[other]!, round[last]!];
		}
		dealt.push(...round);
	}
	return dealt.slice(0, people);
}

function ordersOf(items: readonly number[]): number[][] {
	if (items.length <= 1) return [[...items]];
	return items.flatMap((first) =>
		ordersOf(items.filter((item) => item !== first)).map((rest) => [first, ...rest])
	);
}
