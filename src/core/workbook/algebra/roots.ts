/** Where a function is zero: single places, or stretches on which it is zero throughout. */
export type Roots = { at: number[]; along: [number, number][] };

/** Closes in on a change of sign between a and b; returns the place, good to the last bits. */
function bisect(f: (x: number) => number, a: number, b: number): number {
	let [low, high] = [a, b];
	const sign = Math.sign(f(low));
	for (let turn = 0; turn < 200; turn += 1) {
		const middle = (low + high) / 2;
		if (middle === low || middle === high) break;
		const value = f(middle);
		if (value === 0) return middle;
		if (Math.sign(value) === sign) low = middle;
		else high = middle;
	}
	return Math.abs(f(low)) <= Math.abs(f(high)) ? low : high;
}

/** The last place, going from `inside` towards `outside`, at which the function is still zero. */
function edge(isZero: (x: number) => boolean, inside: number, outside: number): number {
	let [yes, no] = [inside, outside];
	for (let turn = 0; turn < 100; turn += 1) {
		const middle = (yes + no) / 2;
		if (middle === yes || middle === no) break;
		if (isZero(middle)) yes = middle;
		else no = middle;
	}
	return yes;
}

/** Least size of f between a and c by golden section, for a zero that is touched, not crossed. */
function dip(f: (x: number) => number, a: number, c: number): number {
	const golden = (Math.sqrt(5) - 1) / 2;
	let [low, high] = [a, c];
	for (let turn = 0; turn < 90; turn += 1) {
		const x1 = high - golden * (high - low);
		const x2 = low + golden * (high - low);
		if (Math.abs(f(x1)) <= Math.abs(f(x2))) high = x2;
		else low = x1;
	}
	return (low + high) / 2;
}

/**
 * All zeros of a function over a grid of trial places.
 * Formula: changes of sign are bisected, dips are followed to their floor, runs of zeros are kept
 * as stretches; a jump through zero is no zero and is left out.
 * @param f the function, scaled so that 1 is large; NaN where it has no value
 * @param grid trial places in rising order, close enough to separate the zeros
 * @param tolerance size below which f counts as zero
 * @returns places and stretches, rising
 * Source: derived
 * Example: roots((x) => x * x - 4, [-3, -1, 0, 1, 3], 1e-12) is at -2 and 2.
 */
export function roots(f: (x: number) => number, grid: number[], tolerance: number): Roots {
	const at: number[] = [];
	const along: [number, number][] = [];
	const values = grid.map(f);
	const isZero = (value: number | undefined) => value !== undefined && Math.abs(value) <= tolerance;
	const keep = (x: number) => {
		const close = at.some((y) => Math.abs(x - y) <= 1e-9 * Math.max(Math.abs(x), 1e-9));
		if (!close && isZero(f(x))) at.push(x);
	};
	for (let index = 0; index < grid.length; index += 1) {
		const [x, value] = [grid[index]!, values[index]!];
		if (isZero(value)) {
			let last = index;
			while (isZero(values[last + 1])) last += 1;
			const holds = (place: number) => isZero(f(place));
			const [before, after] = [grid[index - 1], grid[last + 1]];
			if (last > index + 1)
				along.push([
					before === undefined ? x : edge(holds, x, before),
					after === undefined ? grid[last]! : edge(holds, grid[last]!, after)
				]);
			else for (let each = index; each <= last; each += 1) keep(grid[each]!);
			index = last;
			continue;
		}
		const next = values[index + 1];
		if (next !== undefined && !isZero(next) && value * next < 0)
			keep(bisect(f, x, grid[index + 1]!));
		const after = values[index + 2];
		if (
			next !== undefined &&
			after !== undefined &&
			value * next > 0 &&
			next * after > 0 &&
			// Less than rounding is no dip.
			Math.abs(next) < Math.abs(value) * (1 - 1e-9) &&
			Math.abs(next) <= Math.abs(after)
		) {
			const bottom = dip(f, x, grid[index + 2]!);
			if (f(bottom) * value < 0) {
				keep(bisect(f, x, bottom));
				keep(bisect(f, bottom, grid[index + 2]!));
			} else keep(bottom);
		}
	}
	return { at: at.sort((a, b) => a - b), along };
}
