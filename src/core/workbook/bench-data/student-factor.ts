/** Share of Student's distribution within ±t, from its elementary finite sums. */
function within(t: number, freedom: number): number {
	const angle = Math.atan(t / Math.sqrt(freedom));
	const [sine, cosine] = [Math.sin(angle), Math.cos(angle)];
	if (freedom % 2 === 1) {
		let term = cosine;
		let total = freedom > 1 ? term : 0;
		for (let k = 3; k <= freedom - 2; k += 2) total += term *= (cosine * cosine * (k - 1)) / k;
		return (2 / Math.PI) * (angle + sine * total);
	}
	let term = 1;
	let total = 1;
	for (let k = 2; k <= freedom - 2; k += 2) total += term *= (cosine * cosine * (k - 1)) / k;
	return sine * total;
}

/**
 * How many standard errors make a range that covers the true value in 95 of 100 cases.
 * @param freedom pairs minus estimates, a whole number of at least 1
 * @returns Student's factor (12.71 for 1, 2.776 for 4, 1.96 for very many)
 * Valid for: errors that spread evenly about the law.
 * Errors: RangeError unless freedom is a whole number above 0.
 * Source: abramowitzStegun1964, formulas 26.7.3 and 26.7.4
 * Example: studentFactor(4) is 2.776445.
 */
export function studentFactor(freedom: number): number {
	if (!Number.isInteger(freedom) || freedom < 1)
		throw new RangeError(`freedom = ${freedom} must be a whole number of at least 1`);
	let [low, high] = [0, 1000];
	for (let turn = 0; turn < 100; turn += 1) {
		const middle = (low + high) / 2;
		if (within(middle, freedom) < 0.95) low = middle;
		else high = middle;
	}
	return (low + high) / 2;
}
