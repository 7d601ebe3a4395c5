import { requireAllowed } from '../units/allowed-range.ts';
import type { Measured } from './measured.ts';

/**
 * Finds the area of one fingertip's print by counting the squares of squared paper.
 * area = (full + cut/2) · side²/pads, spread = side² √(cut/12 + pads²)/pads
 * @param o.full squares wholly inside the prints, whole number, 0 or more
 * @param o.cut squares partly inside, whole number, 0 or more
 * @param o.side of one square, m, above 0
 * @param o.pads prints counted together, 1 to 10 (default 1)
 * @returns area of one pad, m², and its spread from the counting
 * Valid for: prints of many squares: a rounded print touches more than it fills, so the rule reads
 * about one square a print too much, which is in the spread. Ink that runs and a finger that rolls
 * are not.
 * @throws RangeError for a field outside its range, or no square at all
 * Source: common practice; spread derived
 * Example: 200 full and 60 cut squares of 1 mm: 230 mm², spread 2.4 mm².
 */
export function areaFromSquares(o: {
	full: number;
	cut: number;
	side: number;
	pads?: number;
}): Measured {
	const { full, cut, side, pads = 1 } = o;
	requireAllowed('full', full, { min: 0, whole: true });
	requireAllowed('cut', cut, { min: full === 0 ? 1 : 0, whole: true });
	requireAllowed('side', side, { above: 0, unit: 'm' });
	requireAllowed('pads', pads, { min: 1, max: 10, whole: true });
	const square = (side * side) / pads;
	// What is covered of a cut square lies evenly between nothing and all of it.
	return { value: (full + cut / 2) * square, spread: square * Math.sqrt(cut / 12 + pads * pads) };
}
