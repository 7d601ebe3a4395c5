import type { Interval } from '#core/types.ts';
import { massText, type MassUnit } from '#core/units/mass-text.ts';

/** What trials say of one limit, kg. */
export type Band = {
	kind: 'slip' | 'opening';
	above: boolean;
	from: number;
	to: number;
	middle: number;
};

/** Where the model has the same edge, kg; the one nearest to the trials' limit. */
export function modelEdge(window: readonly Interval[], band: Band): number | undefined {
	const limit = band.kind === 'slip' ? 'slip' : 'strength';
	const edges = window.flatMap(({ from, to, lowerLimit, upperLimit }) => [
		// A slip edge below holds when heavier, one above when lighter: only the same kind compares.
		...(lowerLimit === limit && !(band.kind === 'slip' && band.above) ? [from] : []),
		...(upperLimit === limit && (band.kind === 'opening' || band.above) ? [to] : [])
	]);
	return edges.sort((a, b) => Math.abs(a - band.middle) - Math.abs(b - band.middle))[0];
}

/** How the model and the trials stand to one another, and which assumption would have to change. */
export function bandWords(
	window: readonly Interval[],
	band: Band,
	unit: MassUnit
): { agrees: boolean; text: string } {
	const edge = modelEdge(window, band);
	const trials = `${massText(band.from, unit)} to ${massText(band.to, unit)}`;
	const limit = band.kind === 'slip' ? 'slip' : 'strength';
	if (edge === undefined)
		return {
			agrees: false,
			text: `The model has no ${limit} edge of this kind here; your trials put it at ${trials}. ${missing(band)}`
		};
	const at = massText(edge, unit);
	if (edge >= band.from && edge <= band.to)
		return { agrees: true, text: `The model’s ${limit} edge, ${at}, lies within ${trials}.` };
	const higher = edge > band.to;
	return {
		agrees: false,
		text: `The model’s ${limit} edge, ${at}, lies ${higher ? 'above' : 'below'} what your trials say, ${trials}. ${changes(band, higher)}`
	};
}

function missing({ kind, above }: Band): string {
	if (kind === 'opening')
		return 'For both to be true, slipping must come first at every load, or the strength set here is far off.';
	return above
		? 'A friction coefficient that does not fall with load cannot slip only when heavier: another law of friction, or a rope that leans, would have to be true.'
		: 'A friction coefficient that does not rise with load cannot slip only when lighter: another law of friction, a rope that leans, or a push against the wall would have to be true.';
}

function changes({ kind, above }: Band, modelHigher: boolean): string {
	if (kind === 'opening')
		return modelHigher
			? 'One of these would have to change: less strength on the flat edge, a longer hold, or fingers that are weaker in this grip and on this slope than on the edge where they were measured.'
			: 'One of these would have to change: more strength on the flat edge, a shorter hold, or fingers that lie better in this grip than on the edge where they were measured.';
	const moreFriction = modelHigher !== above;
	return moreFriction
		? 'One of these would have to change: more friction at these loads, a gentler slope, a smaller patch where friction rises with pressure, or a rope that leads more toward the wall.'
		: 'One of these would have to change: less friction at these loads, a steeper slope, a larger patch where friction rises with pressure, or a rope that leads more away from the wall.';
}
