/** Nodes to a row's weight: a polynomial of one degree less passes through them. */
const order = 8;
/** Distance between nodes, probits: a whole number of the cells of the table of ln P. */
const spacing = 1 / 16;

/**
 * Coefficients of the Lagrange polynomials of the nodes −3.5, −2.5 … 3.5, by node, then by power.
 */
const lagrange = Array.from({ length: order }, (_, node) => {
	const own = node - (order - 1) / 2;
	let powers = Float64Array.of(1);
	for (let other = 0; other < order; other += 1) {
		if (other === node) continue;
		const at = other - (order - 1) / 2;
		const next = new Float64Array(powers.length + 1);
		powers.forEach((c, m) => {
			next[m + 1]! += c / (own - at);
			next[m]! -= (c * at) / (own - at);
		});
		powers = next;
	}
	return powers;
});

/** Weighted nodes that stand for many rows: place of the first, then one weight every `spacing`. */
export type MergedRows = { from: number; spacing: number; weights: Float64Array };

/**
 * Merges many predictors into few evenly spaced ones, for sums Σ n f(x) of a smooth f.
 *
 * f(x) is replaced by the polynomial of degree 7 through the eight nodes about x, spaced a sixteenth of a probit, so each
 * row becomes eight weights. The error a row is at most 1.1e-3 h⁸ |f⁽⁸⁾|; the zeros of λ + (1 − 2λ) Φ lie far enough off
 * the real line that for its logarithm this stays below 1e-9 up to λ = 0.05.
 *
 * @param places predictors, probits
 * @param counts one a place; a place whose count is 0 is passed over
 * @param most nodes to allow
 * @returns nodes and weights; undefined where the places are so far apart that more nodes would be needed
 * Source: derived; interpolation error abramowitzStegun1964, 25.2.3
 * Example: mergeRows([0], [1], 100)!.weights.reduce((sum, w) => sum + w) → 1
 */
export function mergeRows(
	places: Float64Array,
	counts: Float64Array,
	most: number
): MergedRows | undefined {
	let [low, high] = [Infinity, -Infinity];
	for (let k = 0; k < places.length; k += 1) {
		if (counts[k] === 0) continue;
		if (places[k]! < low) low = places[k]!;
		if (places[k]! > high) high = places[k]!;
	}
	if (!(high >= low)) return { from: 0, spacing, weights: new Float64Array(0) };
	const first = Math.floor(low / spacing);
	const cells = Math.floor(high / spacing) - first + 1;
	if (!(cells + order <= most)) return undefined;
	const moments = new Float64Array(cells * order);
	for (let k = 0; k < places.length; k += 1) {
		let power = counts[k]!;
		if (power === 0) continue;
		const place = places[k]! / spacing - first;
		const cell = Math.min(cells - 1, Math.max(0, Math.floor(place)));
		const off = place - cell - 0.5;
		const at = cell * order;
		for (let m = 0; m < order; m += 1) {
			moments[at + m]! += power;
			power *= off;
		}
	}
	const weights = new Float64Array(cells + order - 1);
	for (let cell = 0; cell < cells; cell += 1) {
		for (let node = 0; node < order; node += 1) {
			const powers = lagrange[node]!;
			let sum = 0;
			for (let m = 0; m < order; m += 1) sum += powers[m]! * moments[cell * order + m]!;
			weights[cell + node]! += sum;
		}
	}
	return { from: (first - order / 2 + 1) * spacing, spacing, weights };
}
