import type { LineDensity } from './line-density.ts';

/**
 * Walks one line of a lattice from near its top both ways until the density falls below a floor.
 *
 * @param density with its outer unknowns already fixed
 * @param first place to start, a whole number of steps
 * @param step distance between places, the innermost unknown's unit
 * @param floor lowest log density to keep, told the line's top
 * @param keep takes each kept place, ascending, with its log density
 * @returns log density at the line's top
 * Source: derived
 * Example: walkLine(standardNormal, 0, 0.7, () => -5, keep) keeps −4 to 4
 */
export function walkLine(
	density: LineDensity,
	first: number,
	step: number,
	floor: (top: number) => number,
	keep: (place: number, value: number) => void
): number {
	let top = first;
	let here = density.at(first * step);
	const above = density.at((first + 1) * step);
	const direction = above > here ? 1 : -1;
	if (direction === 1) [top, here] = [first + 1, above];
	for (let tried = 0; tried < 4000; tried += 1) {
		const next = density.at((top + direction) * step);
		if (!(next > here)) break;
		top += direction;
		here = next;
	}
	if (!(here >= floor(here))) return here;
	const down: number[] = [];
	for (let place = top - 1; place > top - 4000; place -= 1) {
		const value = density.at(place * step);
		if (!(value >= floor(here))) break;
		down.push(value);
	}
	for (let k = down.length - 1; k >= 0; k -= 1) keep(top - 1 - k, down[k]!);
	keep(top, here);
	for (let place = top + 1; place < top + 4000; place += 1) {
		const value = density.at(place * step);
		if (!(value >= floor(here))) break;
		keep(place, value);
	}
	return here;
}
