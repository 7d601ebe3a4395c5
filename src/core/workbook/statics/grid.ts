import type { Quantity } from './types.ts';

/**
 * Trial values across a quantity's range, close enough to part its zeros.
 * @param of the quantity; angles are spaced evenly, all else by equal factors on either side of 0
 * @returns rising values inside the range
 * Source: derived
 * Example: an angle from 0 to 90° gets 721 values, an eighth of a degree apart.
 */
export function trialValues(of: Quantity): number[] {
	const inRange = (x: number) => x >= of.min && x <= of.max && !(of.open && x === of.min);
	if (of.whole) return Array.from({ length: of.max - of.min + 1 }, (_, i) => of.min + i);
	if (of.unit === 'rad' && Number.isFinite(of.max - of.min)) {
		const count = Math.ceil((of.max - of.min) / (Math.PI / 1440));
		const span = of.max - of.min;
		return Array.from({ length: count + 1 }, (_, i) => of.min + (span * i) / count).filter(inRange);
	}
	const top = Math.min(of.max, 1e10);
	const sizes: number[] = [];
	for (let x = 1e-7; x < top; x *= 10 ** (1 / 24)) sizes.push(x);
	sizes.push(top);
	if (of.min > 0) sizes.push(of.min);
	const below = of.min < 0 ? sizes.map((x) => -x) : [];
	return [...new Set([...below, 0, ...sizes])].filter(inRange).sort((a, b) => a - b);
}

/** Whether a value lies in a quantity's range, rounding allowed for. */
export function isInRange(of: Quantity, value: number): boolean {
	const slack = 1e-12 * Math.max(1, Math.abs(value));
	if (Number.isNaN(value) || !Number.isFinite(value)) return false;
	if (of.open && value <= of.min) return false;
	if (of.whole && Math.abs(value - Math.round(value)) > 1e-9) return false;
	return value >= of.min - slack && value <= of.max + slack;
}

/**
 * Whether a stretch of values is all that a quantity can be.
 * @param of the quantity
 * @param from lower end, its unit
 * @param upTo upper end, its unit
 * Source: derived
 */
export function isWholeRange(of: Quantity, from: number, upTo: number): boolean {
	const grid = trialValues(of);
	const slack = 1e-6 * Math.max(1, Math.abs(upTo - from));
	return from <= grid[0]! + slack && upTo >= grid.at(-1)! - slack;
}
