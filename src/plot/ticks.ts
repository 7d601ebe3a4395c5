import { ticks } from 'd3';

/** Round values between two ends, about as many as asked for. */
export function linearTicks(from: number, to: number, count: number): number[] {
	return ticks(from, to, Math.max(1, Math.floor(count)));
}

/**
 * Values for a ratio axis, each the same factor from the next and always passing through 1:
 * powers of √2, or of 2, 4, … when those would be more than `most`.
 */
export function ratioTicks(from: number, to: number, most: number): number[] {
	const steps = (every: number) => {
		const first = Math.ceil((2 * Math.log2(from)) / every - 1e-9);
		const last = Math.floor((2 * Math.log2(to)) / every + 1e-9);
		return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => (first + i) * every);
	};
	let every = 1;
	while (steps(every).length > Math.max(1, most)) every *= 2;
	return steps(every).map((half) => 2 ** (half / 2));
}

/**
 * The shortest ratio axis that shows given values: ends on powers of √2, holds at least 0.7 to 1.4,
 * and never reaches past `limit` or below 1/`limit`, so that a curve that runs off is cut there.
 */
export function ratioDomain(values: Iterable<number>, limit = 2 ** 1.5): [number, number] {
	let [low, high] = [Math.SQRT1_2, Math.SQRT2];
	for (const value of values) {
		if (Number.isNaN(value)) continue;
		low = Math.min(low, value);
		high = Math.max(high, value);
	}
	const down = 2 ** (Math.floor(2 * Math.log2(Math.max(low, 1 / limit)) + 1e-9) / 2);
	const up = 2 ** (Math.ceil(2 * Math.log2(Math.min(high, limit)) - 1e-9) / 2);
	return [down, up];
}
