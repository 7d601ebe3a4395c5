/**
 * Points and weights that integrate a smooth function over a stretch almost exactly.
 *
 * ∫ f ≈ Σ w_k f(x_k), x_k the roots of the Legendre polynomial of degree n mapped onto [from, to];
 * exact for polynomials up to degree 2n − 1. Roots by Newton's method from cos(π(k − ¼)/(n + ½)).
 *
 * @param n number of points, 1 to 400
 * @param from lower end, any unit
 * @param to upper end, same unit
 * @returns points inside the stretch, ascending, and their positive weights
 * Source: abramowitzStegun1964, 25.4.29 and 25.4.30
 * Example: gaussLegendre(1, 0, 2) → { points: [1], weights: [2] }
 */
export function gaussLegendre(
	n: number,
	from: number,
	to: number
): { points: number[]; weights: number[] } {
	const points: number[] = [];
	const weights: number[] = [];
	const half = (to - from) / 2;
	for (let k = n; k >= 1; k -= 1) {
		let x = Math.cos((Math.PI * (k - 0.25)) / (n + 0.5));
		let slope = 1;
		for (let round = 0; round < 100; round += 1) {
			let last = 1;
			let value = x;
			for (let degree = 2; degree <= n; degree += 1)
				[last, value] = [value, ((2 * degree - 1) * x * value - (degree - 1) * last) / degree];
			slope = n === 1 ? 1 : (n * (x * value - last)) / (x * x - 1);
			const step = value / slope;
			x -= step;
			if (Math.abs(step) < 1e-15) break;
		}
		points.push(from + half * (1 + x));
		weights.push((2 * half) / ((1 - x * x) * slope * slope));
	}
	return { points, weights };
}
