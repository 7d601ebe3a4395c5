import { holdingRegion } from '#core/region/holding-region.ts';
import type { Writing } from './types.ts';

/** The slope at which a plumb hang of this set-up starts to slip: the break of its region. */
export function slipSlope({ hang, range }: Pick<Writing, 'hang' | 'range'>): number {
	const { breaks } = holdingRegion(hang, {
		axis: 'slope',
		from: 0,
		to: Math.PI / 3,
		columns: 2,
		load: range
	});
	const [slope] = breaks;
	if (slope === undefined) throw new RangeError('slope: no break of the region was found');
	return slope;
}
