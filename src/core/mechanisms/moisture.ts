import { requireAllowed } from '../units/allowed-range.ts';

/**
 * Finds the friction ratio at a skin moisture: low when dry, high in between, low again when wet.
 * μ(w) = dry + peak · exp(−(w − w₀)²/(2 s²))
 * @param moisture w, on any scale of the person's own
 * @param o.dry ratio far from the best moisture, 0 or more
 * @param o.peak gain at the best moisture, 0 or more
 * @param o.best moisture w₀ of the greatest ratio
 * @param o.width s of the bell, above 0
 * @returns ratio
 * Sign: none by load; moisture that drifts within a session looks like an effect of order.
 * Valid for: the shape; its height (1 to 4 times dry) is assumed.
 * @throws RangeError for a field outside its range
 * Source: andre2009
 * Example: at the best moisture the ratio is dry + peak.
 */
export function moistureRatio(
	moisture: number,
	o: { dry: number; peak: number; best: number; width: number }
): number {
	requireAllowed('moisture', moisture, {});
	requireAllowed('dry', o.dry, { min: 0 });
	requireAllowed('peak', o.peak, { min: 0 });
	requireAllowed('best', o.best, {});
	requireAllowed('width', o.width, { above: 0 });
	const away = (moisture - o.best) / o.width;
	return o.dry + o.peak * Math.exp(-(away * away) / 2);
}
