import type { OpeningLimit } from '#core/trials/opening-limit.ts';
import type { SlipLimit } from '#core/trials/slip-limit.ts';
import { massText, type MassUnit } from '#core/units/mass-text.ts';

/** A limit as far as the trials reach, kg; null: outside, where nothing was tried. */
export type Reach = {
	from: number;
	to: number;
	q05: number | null;
	q50: number | null;
	q95: number | null;
	/** Beyond which end its middle lies, where it lies outside. */
	beyond: 'below' | 'above' | null;
};

/** An opening limit cut to the stretch that was tried: never further. */
export function openingReach(
	limit: OpeningLimit,
	{ from, to }: { from: number; to: number }
): Reach {
	const { q05, q50, q95 } = limit.quantiles;
	const inside = (load: number) => (load >= from && load <= to ? load : null);
	return {
		...{ from, to, q05: inside(q05), q50: inside(q50), q95: inside(q95) },
		beyond: q50 > to ? 'above' : q50 < from ? 'below' : null
	};
}

export function slipReach(limit: SlipLimit): Reach {
	const { from, to, quantiles, chanceBelow, chanceAbove } = limit;
	const beyond = chanceAbove > 0.5 ? 'above' : chanceBelow > 0.5 ? 'below' : null;
	// A middle that is neither inside nor beyond one end belongs to no side.
	return { from, to, ...quantiles, beyond };
}

/** The lower of the two readings of stopped trials: the one that caps use. */
export function lowerReading(one: OpeningLimit, other: OpeningLimit): OpeningLimit {
	return other.quantiles.q50 < one.quantiles.q50 ? other : one;
}

/** Where a limit lies, in words: never a number beyond what was tried. */
export function reachWords(reach: Reach, unit: MassUnit): string {
	const { q05, q50, q95, from, to, beyond } = reach;
	const mass = (load: number) => massText(load, unit);
	if (q50 === null) {
		if (beyond === 'above') return `somewhere above ${mass(to)}: not tried here`;
		if (beyond === 'below') return `somewhere below ${mass(from)}: not tried here`;
		return `can’t tell yet within ${mass(from)} to ${mass(to)}`;
	}
	const low = q05 === null ? `below ${mass(from)}` : mass(q05);
	const high = q95 === null ? `above ${mass(to)}` : mass(q95);
	return `near ${mass(q50)} (likely ${low} to ${high})`;
}
