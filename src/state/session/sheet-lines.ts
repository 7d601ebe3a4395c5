import type { Plan, RopeSide } from '#core/trials/plan/types.ts';
import type { Trial } from '#storage/codecs/notebook/records.ts';

/** One line of the sheet: what the plan asks for. */
export type SheetLine = {
	order: number;
	kind: Trial['kind'];
	gripId: string;
	/** null: the trial before decides. */
	loadKg: number | null;
	ropeSide: RopeSide | null;
	block: number | null;
};

/** First number of warm-ups that nobody planned: room for a hundred before the first trial. */
const FIRST_LOOSE_WARM_UP = -99;

/** The plan's lines with their numbers: warm-ups end at 0, trials count from 1. */
export function plannedLines(plan: Plan): SheetLine[] {
	const warmUps = plan.trials.filter(({ number }) => number === null).length;
	let rung = 0;
	return plan.trials.map(({ number, kind, grip, load, ropeSide, block }) => ({
		order: number ?? ++rung - warmUps,
		kind,
		gripId: grip,
		loadKg: load,
		ropeSide,
		block
	}));
}

/** Planned lines after the last that was done, from the one that was passed to, if any. */
export function linesToCome(
	lines: readonly SheetLine[],
	trials: readonly Pick<Trial, 'order'>[],
	from: number | null = null
): readonly SheetLine[] {
	const last = trials.at(-1)?.order ?? -Infinity;
	return lines.filter(({ order }) => order > last && order >= (from ?? -Infinity));
}

/** The number of a trial beyond or without a plan. */
export function looseOrder(
	trials: readonly Pick<Trial, 'order'>[],
	kind: Trial['kind'],
	planned: number
): number {
	const orders = trials.map(({ order }) => order);
	if (kind === 'warm-up') {
		const before = orders.filter((order) => order <= 0);
		return before.length === 0 ? FIRST_LOOSE_WARM_UP : Math.min(0, Math.floor(before.at(-1)!) + 1);
	}
	return Math.max(planned, 0, ...orders.slice(-1).map(Math.floor)) + 1;
}

/** How a line's number is written: warm-ups by their place, trials by their number. */
export function orderText(order: number, kind: Trial['kind'], warmUpPlace: number): string {
	return kind === 'warm-up' && order <= 0 ? `w${warmUpPlace}` : String(order);
}
