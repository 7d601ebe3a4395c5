import { contactAt, type Contact } from '../strength/contact-at.ts';
import { tiltHold, type PreparedHang } from '../strength/prepare-hang.ts';
import type { Range } from './types.ts';

/**
 * Finds the slope at which a go's slip margin has a wanted value.
 * Root of gap = factor · μ(p) N − margin · Q over the slope; with N′ = −Q and Q′ = N,
 * gap′ = −factor · (μ + dμ/d ln p) Q − margin · N, so that where μN rises with N there is one root
 * @param prepared a flat hang with a fixed patch; its hang's slope is set to the root
 * @param vertical load on all hands, N
 * @param horizontal load on all hands, N, positive away from the wall
 * @param margin wanted slip margin, above 0
 * @param factor by which the ratio of this go differs from the law's, above 0
 * @param range slopes to look in, rad
 * @param contact a record to work with
 * @returns the slope, rad, or NaN when there is none in the range
 * Valid for: laws whose friction limit rises with the normal force, as all five do.
 * Source: derived.
 * Example: constant 0.64, plumb, margin 1: atan 0.64 = 0.569313 rad.
 */
export function solveSlope(
	prepared: PreparedHang,
	vertical: number,
	horizontal: number,
	margin: number,
	factor: number,
	range: Range,
	contact: Contact
): number {
	const { formula, law } = prepared;
	const gapAt = (slope: number) => {
		tiltHold(prepared, slope);
		contactAt(prepared, vertical, horizontal, contact);
		return factor * contact.frictionLimit - margin * contact.tangential;
	};
	if (gapAt(range.from) < 0 || gapAt(range.to) > 0) return NaN;
	let low = range.from;
	let high = range.to;
	let slope = (low + high) / 2;
	for (let step = 0; step < 100; step++) {
		const gap = gapAt(slope);
		if (gap > 0) low = slope;
		else high = slope;
		let next = (low + high) / 2;
		if (!contact.leadsOff) {
			const strongest = contact.ratio + formula.ratioSlope(law, contact.pressure);
			const rate = factor * strongest * contact.tangential + margin * contact.normal;
			const newton = slope + gap / rate;
			if (newton > low && newton < high) next = newton;
		}
		const moved = Math.abs(next - slope);
		slope = next;
		if (moved <= 1e-14) break;
	}
	tiltHold(prepared, slope);
	return slope;
}
