import { openingReach, slipReach } from '#figures/limits/limit-words.ts';
import { readable } from '#figures/limits/story-words.ts';
import type { GripRows, LimitRow } from '#figures/limits/two-limits.ts';
import type { GripFound } from '#state/limits/limits.svelte.ts';
import { curveLoads } from '#state/limits/options.ts';

/** Both limits of a grip for the picture and the words: each only as far as the trials reach. */
export function gripRows(name: string, { of, ranges, limits }: GripFound): GripRows {
	const stretch = curveLoads(of);
	const stopped = of.trials.some(({ outcome }) => outcome === 'stopped');
	const { leftOut, opened } = limits.opening;
	const lower = opened.quantiles.q50 < leftOut.quantiles.q50 ? 'opened' : 'leftOut';
	const caps = (reading: string) => (reading === lower ? ' (for caps)' : '');
	const opening: LimitRow[] = stopped
		? [
				{
					id: 'opening left-out',
					kind: 'opening',
					label: `fingers open half the time: stopped left out${caps('leftOut')}`,
					reach: openingReach(leftOut, stretch)
				},
				{
					id: 'opening opened',
					kind: 'opening',
					label: `fingers open half the time: stopped counted in${caps('opened')}`,
					reach: openingReach(opened, stretch)
				}
			]
		: [
				{
					id: 'opening',
					kind: 'opening',
					label: 'fingers open half the time',
					reach: openingReach(leftOut, stretch)
				}
			];
	return { id: of.pick.gripId, grip: name, rows: [slipRow({ of, ranges, limits }), ...opening] };
}

function slipRow({ ranges, limits }: GripFound): LimitRow {
	const falls = ranges.best.startsWith('falls');
	const row = { id: 'slip', kind: 'slip' as const };
	if (!limits.slip || !(falls || ranges.best.startsWith('rises')))
		return {
			...row,
			label: 'slips half the time',
			reach: undefined,
			words: 'slipping shows no clear link with load'
		};
	return {
		...row,
		label: `slips half the time, more often ${falls ? 'above' : 'below'}${readable(ranges) ? '' : ' – can’t tell yet'}`,
		reach: slipReach(limits.slip),
		faint: !readable(ranges)
	};
}
