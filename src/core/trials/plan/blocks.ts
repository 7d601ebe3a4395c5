import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { withChecks } from './check-load.ts';
import { shuffled } from './shuffle.ts';
import { tangleOf } from './tangle.ts';
import type { Condition, PlannedTrial, Tangle } from './types.ts';

/** What a correlation with order must stay under. */
export const TANGLE_LIMIT = 0.1;
const SHUFFLES = 200;
/** Where the limit is promised, the search goes on until it is met, and gives up only here. */
const MOST_SHUFFLES = 20_000;

export type Row = Omit<PlannedTrial, 'number' | 'order'>;

/**
 * Shuffles conditions within blocks and keeps the shuffle least tangled with order.
 *
 * Every block holds each condition once. Of 200 seeded shuffles, those with |correlation| of load
 * and of rope side with order under 0.1 are preferred, and among them the one least tangled
 * within any single grip; failing that, the least tangled overall. The limit is promised for two or
 * more blocks of at least four conditions: there the search goes on past 200 until it is met.
 *
 * @param conditions what each block holds, one or more
 * @param blocks number of blocks, whole, 1 or more
 * @param seed whole number
 * @param check the hang repeated at start, middle and end, or null
 * @returns rows in order (checks included), their tangle, how many shuffles were looked at, and
 * whether the limit is promised
 * Valid for: sessions analysed with order as a straight trend
 * Source: derived
 * Example: four conditions, two blocks → eight rows, |load| and |ropeSide| under 0.1
 */
export function shuffledBlocks(
	conditions: readonly Condition[],
	blocks: number,
	seed: number,
	check: Condition | null
): { rows: Row[]; tangle: Tangle; shuffles: number; promised: boolean } {
	const promised = blocks >= 2 && conditions.length >= 4;
	const random = xoroshiro128plus(seed);
	let best: { rows: Row[]; tangle: Tangle } | undefined;
	let shuffles = 0;
	const unmet = () => promised && !(best && worst(best.tangle) < TANGLE_LIMIT);
	while (shuffles < SHUFFLES || (unmet() && shuffles < MOST_SHUFFLES)) {
		shuffles++;
		const tests = Array.from({ length: blocks }, (_, block): Row[] =>
			shuffled(conditions, random).map((condition) => ({
				kind: 'test',
				block: block + 1,
				...condition
			}))
		).flat();
		const rows = withChecks(tests, check);
		const tangle = tangleOf(rows);
		if (!best || isLessTangled(tangle, best.tangle)) best = { rows, tangle };
	}
	return { ...best!, shuffles, promised };
}

/** The larger of the two correlations over the whole plan. */
export function worst(tangle: Pick<Tangle, 'load' | 'ropeSide'>): number {
	return Math.max(Math.abs(tangle.load), Math.abs(tangle.ropeSide));
}

function isLessTangled(one: Tangle, other: Tangle): boolean {
	const within = [one, other].map((tangle) => worst(tangle) < TANGLE_LIMIT);
	if (within[0] !== within[1]) return within[0]!;
	if (!within[0]) return worst(one) < worst(other);
	return Math.max(...one.grips.map(worst)) < Math.max(...other.grips.map(worst));
}
