import { loadAtNetMass } from '#core/mechanics/load-at-net-mass.ts';
import { slipMarginOf, slipProbe } from '#core/mechanisms/slip-probe.ts';
import { scaledLaw } from '#core/search/law-of.ts';
import type { MechanismRow } from '#reference/types.ts';
import { writeLink } from '#storage/codecs/link.ts';
import type { Setup } from '#storage/codecs/setup.ts';
import { setupOfHang, strayFields } from '../setup/of-hang.ts';
import { hangOf } from '../setup/to-hang.ts';
import type { BoardBase } from './board-base.ts';
import { ownCurve, ownHang } from './board-curve.ts';
import type { Values } from './board-values.ts';

/** Explore's curve may differ from the board's by this share and still be called the same. */
const sameWithin = 2e-3;

/**
 * The query that opens a mechanism in Explore with the very curve of the board, its ratio scaled so
 * that it passes through the person's own point.
 * @returns the query; 'board only' where no hang can hold the mechanism, 'out of reach' where Explore's
 * fields do not take these numbers
 */
export function exploreQuery(
	row: MechanismRow,
	base: BoardBase,
	values: Values
): { query: string } | 'board only' | 'out of reach' {
	const hang = ownHang(row, base, values);
	if (!hang) return 'board only';
	const { netMass, contact, range } = base;
	const curve = ownCurve(row, base, values);
	const scale = contact.slipMargin / curve(netMass);
	if (!(scale > 0 && scale < Infinity)) return 'out of reach';
	const setup: Setup = setupOfHang({ ...hang, friction: scaledLaw(hang.friction, scale) }, netMass);
	if (strayFields(setup).length > 0) return 'out of reach';
	const opened = hangOf(setup);
	const probe = slipProbe(opened);
	const loads = [0, 0.2, 0.4, 0.6, 0.8, 1].map((s) => range.from + (range.to - range.from) * s);
	const same = loads.every((load) => {
		const there = slipMarginOf(probe(loadAtNetMass(load, opened)));
		const here = curve(load) * scale;
		return there === here || Math.abs(there / here - 1) < sameWithin;
	});
	return same ? { query: writeLink(setup) } : 'out of reach';
}
