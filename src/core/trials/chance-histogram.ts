const bins = 400;

/** Belief about a chance, gathered in even bins from 0 to 1. */
export type ChanceHistogram = { mass: Float64Array; mean: number };

/** An empty histogram. */
export const emptyHistogram = (): ChanceHistogram => ({ mass: new Float64Array(bins), mean: 0 });

/**
 * Adds weighted chances, each spread evenly between the chances at the ends of its cell.
 *
 * @param histogram to add to, in place
 * @param share of belief that these chances carry together
 * @param weights of the chances, sum to 1
 * @param chances at the points
 * @param low chances at the cells' lower ends
 * @param high chances at the cells' upper ends
 * Source: derived
 * Example: adding the chance 0.5 with ends 0.4 and 0.6 fills the bins between
 */
export function addChances(
	histogram: ChanceHistogram,
	share: number,
	weights: Float64Array,
	chances: Float64Array,
	low: Float64Array,
	high: Float64Array
): void {
	for (let k = 0; k < weights.length; k += 1) {
		const weight = share * weights[k]!;
		if (weight < 1e-9) continue;
		histogram.mean += weight * chances[k]!;
		const a = Math.min(low[k]!, high[k]!) * bins;
		const b = Math.max(Math.max(low[k]!, high[k]!) * bins, a + 1e-9);
		for (let bin = Math.floor(a); bin < b && bin < bins; bin += 1)
			histogram.mass[bin]! += (weight * (Math.min(b, bin + 1) - Math.max(a, bin))) / (b - a);
	}
}

/**
 * A quantile of the belief about a chance.
 *
 * @param histogram filled
 * @param share 0 to 1
 * @returns chance, 0 to 1, to about half a bin (0.00125)
 * Source: derived
 * Example: histogramQuantile(full, 0.5) → the median chance
 */
export function histogramQuantile({ mass }: ChanceHistogram, share: number): number {
	const total = mass.reduce((a, b) => a + b, 0);
	let below = 0;
	for (let bin = 0; bin < bins; bin += 1) {
		const next = below + mass[bin]! / total;
		if (next >= share && mass[bin]! > 0) return (bin + (share - below) / (next - below)) / bins;
		below = next;
	}
	return 1;
}

/**
 * Belief about the product of two chances that are believed independently.
 *
 * @param one histogram
 * @param other histogram
 * @returns histogram of the product
 * Source: derived
 * Example: the product of two certain chances of 1 is certain
 */
export function productHistogram(one: ChanceHistogram, other: ChanceHistogram): ChanceHistogram {
	const product = emptyHistogram();
	product.mean = one.mean * other.mean;
	for (let i = 0; i < bins; i += 1) {
		if (one.mass[i]! < 1e-9) continue;
		for (let j = 0; j < bins; j += 1) {
			const place = (((i + 0.5) / bins) * ((j + 0.5) / bins) * bins) | 0;
			product.mass[place]! += one.mass[i]! * other.mass[j]!;
		}
	}
	return product;
}
